import type { Rulebook } from '../rulebook/book.ts'
import type { LeafTrace } from './condition.ts'
import type { RuleOutcome } from './outcome.ts'
import { GROUNDS, type Ground, type Step } from './verdict.ts'

/** How many intervals from a limit still count as a near miss worth keeping in the trace. */
const NEAR = 2

/** The steps that a record keeps: met, unknown and nearly met rules, and every check that applied. */
export function stepsOf(outcomes: readonly RuleOutcome[], z: number): readonly Step[] {
  const steps: Step[] = []
  for (const { compiled, answer, leaves } of outcomes) {
    if (answer === 'does not apply') continue
    const always = compiled.kind === 'check' || compiled.kind === 'promise'
    const near = answer === 'not met' && !always && isNear(leaves, z)
    if (answer === 'not met' && !always && !near) continue
    // Advice that may or may not apply decides nothing and settles nothing.
    if (answer === 'unknown' && compiled.kind === 'advises' && compiled.rule.cautions.length === 0) continue
    steps.push({
      rule: compiled.rule.id,
      outcome: answer,
      kind: compiled.kind,
      facts: leaves,
      sources: compiled.rule.sources,
      ...(near ? { near: true as const } : {}),
    })
  }
  return steps.sort((a, b) => (a.rule < b.rule ? -1 : 1))
}

/** A rule that was not met only because readings stayed a little short of their limits. */
function isNear(leaves: readonly LeafTrace[], z: number): boolean {
  const missed = leaves.filter((l) => l.answer === 'not met')
  return (
    missed.length > 0 &&
    missed.every((leaf) => {
      const bound = leaf.limit?.value
      if (bound === undefined || leaf.u === undefined) return false
      return leaf.u.some((u, i) => {
        const value = leaf.value?.[i]
        return typeof value === 'number' && u > 0 && Math.abs(bound - value) <= NEAR * z * u
      })
    })
  )
}

/** The least firm ground among the steps that determined a verdict. */
export function weakestSource(book: Rulebook, steps: readonly Step[]): Ground {
  let weakest = 0
  const note = (ground: Ground): void => {
    weakest = Math.max(weakest, GROUNDS.indexOf(ground))
  }
  for (const step of steps) {
    if (step.kind === 'advises' || (step.outcome === 'not met' && step.kind !== 'check')) continue
    const limits = step.facts.flatMap((f) => (f.limit === undefined ? [] : [f.limit]))
    for (const limit of limits) {
      if (limit.from !== 'trade') note(limit.from)
      else note(limit.provenance === 'from memory' ? 'from memory, adopted by the shop' : (limit.provenance ?? 'from memory'))
    }
    // A rule is as firm as its firmest source: a published one carries a remembered one beside it.
    const kinds = step.sources.map((s) => GROUNDS.indexOf(book.sources.get(s)?.kind ?? 'from memory'))
    const firmest = GROUNDS[Math.min(...kinds)]
    if (firmest !== undefined && !(firmest === 'from memory' && limits.length > 0)) note(firmest)
  }
  return GROUNDS[weakest] ?? 'from memory'
}
