import type { Leaf, Rule } from '../rulebook/schema/rule.ts'

/** Every leaf of a condition, in the order written. */
export function leavesOf(condition: Rule['when'] | Leaf): readonly Leaf[] {
  if ('fact' in condition) return [condition]
  return (condition.all ?? condition.any ?? []).flatMap((c) => leavesOf(c))
}
