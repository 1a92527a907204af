import { cosDegrees, RADIAN, sinDegrees, tanDegrees } from './elementary.ts'
import type { FormulaInput, Values } from './formula.ts'

/**
 * The three cutters of a seat as lines in its section: height = feed setting + radius × tan(angle), angles from the head plane.
 * The finished surface is the lowest of the three: throat line inside, seat line in the middle, top line outside. A cutter fed
 * by f along the axis lowers its line by f, and an edge between two lines moves on the radius by f ÷ (difference of tangents).
 * Where the throat bore is larger than the inside edge worked out here, the bore is the edge; where the insert is smaller than
 * the outside edge, the seat runs out of it. Both are for the rules to compare. Runout and eccentricity are not in this model.
 */
export const TOP: FormulaInput = { kind: 'angle', says: 'angle of the top cutter, measured from the head plane', least: 0, most: 50 }
export const SEAT: FormulaInput = { kind: 'angle', says: 'seat angle, measured from the head plane', least: 15, most: 60 }
export const THROAT: FormulaInput = { kind: 'angle', says: 'angle of the throat cutter, measured from the head plane', least: 30, most: 80 }

/** Where two cutters stand nearer than this, their edge is drawn out so far that a hair of feed moves it a long way: no answer. */
const APART = 10

/** Difference of two tangents, and its change with each angle in degrees. */
export interface Slope {
  readonly value: number
  readonly steep: number
  readonly flat: number
}

/** tan(steep) − tan(flat): axial feed per unit of radius that the edge between the two cutters moves. */
export function slopeBetween(steep: number, flat: number): Slope {
  const [cosSteep, cosFlat] = [cosDegrees(steep), cosDegrees(flat)]
  return {
    value: tanDegrees(steep) - tanDegrees(flat),
    steep: RADIAN / (cosSteep * cosSteep),
    flat: -RADIAN / (cosFlat * cosFlat),
  }
}

/** 1 ÷ cos of the seat angle, and its change with the angle in degrees: radial to along-the-face. */
export function alongFace(seat: number): { readonly value: number; readonly angle: number } {
  const cosine = cosDegrees(seat)
  return { value: 1 / cosine, angle: (sinDegrees(seat) * RADIAN) / (cosine * cosine) }
}

/** Why the top cutter can't narrow this seat, or undefined. */
export function topTooSteep(x: Values<'top-angle' | 'seat-angle'>): string | undefined {
  return x['seat-angle'] - x['top-angle'] < APART
    ? `“top-angle” must be flatter than “seat-angle” by at least ${String(APART)}°.`
    : undefined
}

/** Why the throat cutter can't narrow this seat, or undefined. */
export function throatTooFlat(x: Values<'seat-angle' | 'throat-angle'>): string | undefined {
  return x['throat-angle'] - x['seat-angle'] < APART
    ? `“throat-angle” must be steeper than “seat-angle” by at least ${String(APART)}°.`
    : undefined
}
