import type { ReadQuantity } from '../quantity/measure.ts'
import type { Engine } from '../rulebook/schema/engine.ts'

/** One finding as it stands after reading: at one position, in kept units, what was typed beside it. */
export interface EnteredFinding {
  readonly part: string
  readonly at: string
  readonly property: string
  readonly value: EnteredValue
  readonly instrument?: string
  /** Commitment to the observer's name, and to the note. */
  readonly by?: string
  readonly observedAt?: string
  readonly note?: string
  /** The procedure that stands behind it, when the finding was "looked over, nothing found". */
  readonly procedure?: string
}

export type EnteredValue =
  | { readonly form: 'quantity'; readonly readings: readonly ReadQuantity[] }
  | { readonly form: 'term'; readonly term: string | boolean; readonly typed: string }
  | { readonly form: 'not measured' }

/** How a group on the sheet was understood: "all exhaust" → 1E, 2E … */
export interface ShownExpansion {
  readonly part: string
  readonly said: string
  readonly positions: readonly string[]
}

/** A sheet that has been read without fault; the judge works on this alone. */
export interface EnteredSheet {
  readonly job: string
  readonly stage: 'received' | 'returned'
  readonly engine: Engine
  readonly casting?: string
  /** Build choices by property of part "job". */
  readonly build: ReadonlyMap<string, EnteredValue>
  readonly findings: readonly EnteredFinding[]
  readonly expansions: readonly ShownExpansion[]
  /** Things worth saying back: units assumed, uncertainty taken from the typed figure. */
  readonly notes: readonly string[]
}
