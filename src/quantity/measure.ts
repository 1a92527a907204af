/**
 * The kinds of physical quantity that the trade measures, and the unit in which each is kept.
 * Every length is in mm, every force in N, and so on: SI units, chosen so that no conversion factor
 * stands inside a formula (N/mm² is MPa). What the person typed is kept beside the value.
 */
export const KEPT_UNIT = {
  length: 'mm',
  force: 'N',
  stiffness: 'N/mm',
  torque: 'N m',
  pressure: 'kPa',
  angle: 'deg',
  temperature: 'degC',
  volume: 'cm^3',
  area: 'mm^2',
  stress: 'MPa',
  flow: 'L/min',
  mass: 'kg',
  ratio: '',
  count: '',
} as const

export type QuantityKind = keyof typeof KEPT_UNIT

/** How the standard uncertainty of a value came about. */
export type UncertaintyFrom = 'instrument' | 'typed resolution' | 'stated' | 'propagated' | 'exact'

/** One value with its doubt. `value` and `u` are in the kept unit of its kind; u is a standard uncertainty (k = 1). */
export interface Measure {
  readonly value: number
  readonly u: number
}

/** A quantity as it was read from what somebody wrote. */
export interface ReadQuantity extends Measure {
  readonly kind: QuantityKind
  /** Exactly as typed, trimmed: "12 thou". */
  readonly typed: string
  /** Unit as understood: "thou", "in", "mm", "lb" … */
  readonly unit: string
  /** The smallest step that the typed figure shows, in the kept unit: "12 thou" 0.0254, "1.700 in" 0.0254. */
  readonly resolution: number
  readonly uFrom: UncertaintyFrom
  /** Things worth saying back: "no unit typed: read as inches". */
  readonly notes: readonly string[]
}
