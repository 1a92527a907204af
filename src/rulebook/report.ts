import type { Rulebook } from './book.ts'
import { provenance, type Provenance } from './schema/words.ts'

/** What the rulebook holds of one part class. */
export interface ClassReport {
  readonly part: string
  readonly rules: number
  readonly cases: number
  readonly properties: number
  readonly limits: number
  /** Limits for which the trade has no figure of its own. */
  readonly makersOnly: number
  readonly defaults: Readonly<Record<Provenance, number>>
  readonly sources: number
}

/** Rules, cases, limits and sources by part class, and how the trade's figures are founded. */
export function reportOf(book: Rulebook): readonly ClassReport[] {
  return [...book.parts.values()].map((cls) => {
    const limits = [...cls.limits.values()]
    const defaults = limits.flatMap((l) => l.defaults)
    const share = (kind: Provenance): number => defaults.filter((d) => d.provenance === kind).length
    return {
      part: cls.id,
      rules: cls.rules.length,
      cases: cls.rules.reduce((n, r) => n + r.cases.length, 0),
      properties: cls.properties.size,
      limits: limits.length,
      makersOnly: limits.filter((l) => l.defaults.length === 0).length,
      defaults: Object.fromEntries(provenance.options.map((kind) => [kind, share(kind)])) as Record<Provenance, number>,
      sources: new Set([...cls.rules.flatMap((r) => r.sources), ...defaults.map((d) => d.source)]).size,
    }
  })
}
