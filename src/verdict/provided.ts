import type { JobFacts } from './facts.ts'
import type { RuleOutcome } from './outcome.ts'
import type { Provided } from './verdict.ts'

/** What must turn out while a met restoring rule's work is done, with the figures that hold today. */
export function providedOf(outcome: RuleOutcome, facts: JobFacts): readonly Provided[] {
  const { compiled, at } = outcome
  if (!('restores' in compiled.rule.then)) return []
  const view = facts.of(compiled.part, at)
  return compiled.rule.then.provided.map((provided, index): Provided => {
    const fact = provided.fact === undefined ? undefined : view.fact(provided.fact)
    const limit = provided.limit === undefined ? undefined : view.limit(provided.limit)
    return {
      rule: compiled.rule.id,
      index,
      ...(provided.fact === undefined ? {} : { fact: provided.fact }),
      ...(fact?.state === 'known' && fact.form === 'quantity' ? { value: fact.readings.map((r) => r.value) } : {}),
      ...(limit?.state === 'known' ? { limit: { id: limit.id, value: limit.value } } : {}),
    }
  })
}
