import type { Rule } from '../rulebook/schema/rule.ts'
import type { Compiled } from './condition.ts'

/** What a rule does when it is met. */
export type RuleKind = 'condemns' | 'restores' | 'check' | 'advises' | 'promise'
/** A rule with its conditions compiled for the first interpreter. */
export interface CompiledRule {
  readonly rule: Rule
  readonly kind: RuleKind
  /** The part whose facts the rule reads by bare names: its class, "job" for job rules. */
  readonly part: string
  readonly appliesWhen?: Compiled
  readonly wakes?: Compiled
  readonly when: Compiled
  /** Bare facts of its own part that its `when` names: one of them entered wakes a dormant rule. */
  readonly ownFacts: readonly string[]
  /** Rules that may open it: their ids. */
  readonly openers: readonly string[]
}
