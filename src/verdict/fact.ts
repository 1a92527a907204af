import type { QuantityKind, UncertaintyFrom } from '../quantity/measure.ts'

/** Met, not met, or not known: the three answers of every comparison, condition and rule. */
export type { Answer } from '../quantity/compare.ts'

/** A fact by its full address: "valve:margin@3E". */
export type FactKey = `${string}:${string}@${string}`
export const factKey = (part: string, name: string, at: string): FactKey => `${part}:${name}@${at}`

/** Where a known fact comes from. */
export type Origin = 'finding' | 'looked over' | 'build' | 'engine sheet' | 'card' | 'computed' | 'counted' | 'position'

/** One reading of a quantity: value and standard uncertainty in kept units, and the interval that the shop's confidence spans. */
export interface Reading {
  readonly value: number
  readonly u: number
  readonly lo: number
  readonly hi: number
  /** True when no instrument that the shop has would read it better. */
  readonly best: boolean
}

/** Who saw it, when and with what; people only as commitments. Present on findings. */
export interface Observed {
  readonly typed: readonly string[]
  readonly uFrom?: UncertaintyFrom
  readonly instrument?: string
  readonly by?: string
  readonly observedAt?: string
  readonly note?: string
}

export interface KnownQuantity {
  readonly state: 'known'
  readonly form: 'quantity'
  readonly kind: QuantityKind
  readonly readings: readonly Reading[]
  /** True when fewer readings were taken than the property asks for: what is not measured may be worse. */
  readonly incomplete?: true
  readonly origin: Origin
  readonly observed?: Observed
  /** For a computed fact: the formula and the facts and limits that went in. */
  readonly formula?: string
  readonly inputs?: readonly string[]
}

export interface KnownTerm {
  readonly state: 'known'
  readonly form: 'term'
  readonly terms: readonly (string | boolean)[]
  readonly origin: Origin
  readonly observed?: Observed
  /** The procedure that answered it, when nobody named it singly. */
  readonly procedure?: string
}

export interface Missing {
  readonly state: 'missing'
  readonly why: 'missing' | 'not measured' | 'limit not adopted' | 'no limit' | 'out of range'
  /** The observations that would make it known: itself, or the inputs of its formula. */
  readonly needs: readonly FactKey[]
  readonly says?: string
}

/** Derived from the engine's or the part's kind alone, never typed in. */
export interface NotApplicable {
  readonly state: 'not applicable'
}

export type Fact = KnownQuantity | KnownTerm | Missing | NotApplicable

export type LimitFrom = 'maker' | 'card' | 'shop' | 'trade'

/** A limit as it stands for one part at one position of one shop's job. */
export interface StandingLimit {
  readonly state: 'known'
  /** "valve:margin-min" */
  readonly id: string
  readonly kind: QuantityKind
  readonly value: number
  readonly typed: string
  readonly from: LimitFrom
  /** The sheet or card that gives it: "QL-6P", "QL-6P casting QP-1", "springs card K-2". */
  readonly sheet?: string
  readonly whenTooClose: 'measure' | 'safe-side'
  /** Trade defaults only. */
  readonly provenance?: 'published' | 'common practice' | 'from memory'
  readonly source?: string
  /** Commitment to the name of who adopted a remembered figure or set the shop's own. */
  readonly adoptedBy?: string
}

export type LimitFact = StandingLimit | Missing
