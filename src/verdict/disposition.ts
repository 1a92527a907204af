import type { RuleOutcome } from './outcome.ts'
import type { Disposition } from './verdict.ts'

/** The order in which rules make a part's verdict; the meaning of every verdict stands here. */
export function dispositionOf(outcomes: readonly RuleOutcome[]): Disposition {
  const applying = outcomes.filter((o) => o.answer !== 'does not apply')
  const condemning = applying.filter((o) => o.compiled.kind === 'condemns')
  const checks = applying.filter((o) => o.compiled.kind === 'check')
  const promised = applying.filter((o) => o.compiled.kind === 'promise')
  const restoring = applying.filter((o) => o.compiled.kind === 'restores')
  const met = (o: RuleOutcome): boolean => o.answer === 'met'
  const unknown = (o: RuleOutcome): boolean => o.answer === 'unknown'

  if (condemning.some(met)) return 'replace' // whatever else is unknown
  if (promised.some((o) => o.answer === 'not met')) return 'replace' // what had to turn out did not
  if (condemning.some(unknown) || checks.some(unknown) || promised.some(unknown)) return 'undetermined'
  if (restoring.some(met)) return 'recondition'
  if (restoring.some(unknown)) return 'undetermined'
  // A failed check that no rule answers is a fault of the rulebook: never a reuse.
  if (checks.some((c) => !met(c))) return 'undetermined'
  // Where no rule but advice speaks, nothing has been earned.
  if (condemning.length + checks.length + restoring.length + promised.length === 0) return 'undetermined'
  return 'reuse' // earned: every required check passed, every condemning and restoring rule false
}
