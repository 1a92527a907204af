import type { LeafTrace, Why } from './condition.ts'
import type { RuleAnswer } from './outcome.ts'

export type Disposition = 'reuse' | 'recondition' | 'replace' | 'undetermined'

/** How sure the ground is that a verdict stands on, firmest first. */
export const GROUNDS = ['maker', 'card', 'shop', 'published', 'common practice', 'from memory, adopted by the shop', 'from memory'] as const
export type Ground = (typeof GROUNDS)[number]

/** One rule's part in a verdict. */
export interface Step {
  readonly rule: string
  readonly outcome: RuleAnswer
  readonly kind: 'condemns' | 'restores' | 'check' | 'advises' | 'promise'
  readonly facts: readonly LeafTrace[]
  readonly sources: readonly string[]
  /** Kept although not met, since a reading lies close to the limit. */
  readonly near?: true
}

/** Something that would settle a verdict and is not known. */
export interface OpenQuestion {
  readonly part: string
  readonly at: string
  readonly fact: string
  readonly why: Why
  /** Rules that wait for it, condemning rules first. */
  readonly rules: readonly string[]
  /** For "too close to call": instruments that would read it better, best first. */
  readonly better?: readonly string[]
}

/** What must turn out while a recondition is done. Words are rendered from the rule; figures stand here. */
export interface Provided {
  readonly rule: string
  readonly index: number
  readonly fact?: string
  readonly value?: readonly number[]
  readonly limit?: { readonly id: string; readonly value: number }
}

export interface Verdict {
  readonly part: string
  readonly at: string
  readonly disposition: Disposition
  /** Which verdict counts for the order form: the part's own, or the set's. */
  readonly governing: 'part' | 'set'
  /** The set-level subject that governs, when one does. */
  readonly set?: string
  readonly steps: readonly Step[]
  readonly open: readonly OpenQuestion[]
  readonly provided: readonly Provided[]
  /** "rocker:true-running@3E": what this verdict opened. */
  readonly opens: readonly string[]
  /** How far it has come: required checks passed, open and in all; condemning rules met. */
  readonly tally: { readonly checks: number; readonly passed: number; readonly openChecks: number; readonly condemned: number }
  readonly weakestSource: Ground
  /** Set when the two interpreters disagreed: both answers by rule, and the part is left undetermined. */
  readonly disagreement?: readonly { readonly rule: string; readonly first: RuleAnswer; readonly second: RuleAnswer }[]
}
