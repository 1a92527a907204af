import { compile, type Literals } from './condition.ts'
import { leavesOf } from './condition-leaves.ts'
import type { CompiledRule } from './compiled-rule.ts'
import type { Rule } from '../rulebook/schema/rule.ts'

/** A line of `provided` on the work order that returned work is checked against. */
export interface Promised {
  readonly part: string
  readonly at: string
  readonly rule: string
  readonly index: number
}

/** The id under which a promised line stands in a trace: "valve.tip-reground/1" is the first line of that rule. */
export const promiseId = (rule: string, index: number): string => `${rule}/${index + 1}`

/** What must turn out, by a restoring rule. */
export const linesOf = (rule: Rule) => ('restores' in rule.then ? rule.then.provided : [])

/**
 * The lines of a restoring rule as rules of their own, for the sheet of the returned work: met is accepted, not met sends the
 * part's other verdict into effect, unknown is measured again. A line that only a person can judge stays unknown.
 */
export function promisesOf(rule: Rule, part: string, literal: Literals): readonly CompiledRule[] {
  return linesOf(rule).map(({ holds }, index) => ({
    rule: {
      ...rule,
      id: promiseId(rule.id, index),
      appliesWhen: undefined,
      dormant: undefined,
      wakes: undefined,
      then: { check: true, opens: [] },
      cautions: [],
    },
    kind: 'promise',
    part,
    when: holds === undefined ? () => ({ answer: 'unknown', leaves: [] }) : compile(holds, 'not met', literal),
    ownFacts:
      holds === undefined
        ? []
        : [
            ...new Set(
              leavesOf(holds)
                .map((l) => l.fact)
                .filter((f) => !f.includes(':')),
            ),
          ],
    openers: [],
  }))
}
