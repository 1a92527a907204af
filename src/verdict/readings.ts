import type { Measure } from '../quantity/measure.ts'
import type { Property } from '../rulebook/schema/properties.ts'
import type { Fact, FactKey, Missing, Reading } from './fact.ts'

/** A fact that is not known, and why. */
export const missing = (why: Missing['why'], needs: readonly FactKey[], says?: string): Missing => ({
  state: 'missing',
  why,
  needs,
  ...(says === undefined ? {} : { says }),
})

/** Fewer readings than the property asks for. */
export const isShort = (property: Property | undefined, taken: number): boolean =>
  property !== undefined && 'readings' in property && taken < (property.readings?.least ?? 1)

/** Every way to take one reading of each input. */
export function combinations(inputs: Readonly<Record<string, readonly Measure[]>>): readonly Readonly<Record<string, Measure>>[] {
  return Object.entries(inputs).reduce<readonly Readonly<Record<string, Measure>>[]>(
    (sets, [name, readings]) => sets.flatMap((set) => readings.map((reading) => ({ ...set, [name]: reading }))),
    [{}],
  )
}

/** What decides among many results of one computation: the ends of their intervals, both ways. */
export function extremes(readings: readonly Reading[]): readonly Reading[] {
  const end = (key: 'lo' | 'hi', sign: 1 | -1): Reading | undefined =>
    readings.reduce<Reading | undefined>((best, r) => (best === undefined || sign * (r[key] - best[key]) > 0 ? r : best), undefined)
  return [...new Set([end('lo', -1), end('hi', -1), end('lo', 1), end('hi', 1)])].filter((r) => r !== undefined)
}

/** A fact seen from a spot that spans several positions: known when known at each, its readings side by side. */
export function together(facts: readonly Fact[]): Fact {
  const [first] = facts
  if (first === undefined) return { state: 'not applicable' }
  if (facts.length === 1) return first
  const gaps = facts.filter((f): f is Missing => f.state === 'missing')
  if (gaps.length > 0)
    return missing(
      gaps[0]?.why ?? 'missing',
      gaps.flatMap((g) => g.needs),
    )
  if (first.state !== 'known') return first
  if (first.form === 'term') return { ...first, terms: facts.flatMap((f) => (f.state === 'known' && f.form === 'term' ? f.terms : [])) }
  return { ...first, readings: facts.flatMap((f) => (f.state === 'known' && f.form === 'quantity' ? f.readings : [])) }
}
