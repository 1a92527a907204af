import type { Rulebook } from '../rulebook/book.ts'
import { literalMeasure } from '../rulebook/literal.ts'
import { ENGINE } from '../rulebook/positions.ts'
import type { EnteredSheet } from './entered.ts'
import { factKey, type Fact, type FactKey, type LimitFact } from './fact.ts'
import { missing } from './readings.ts'
import { limitOnSheet, unstatedChoices, type layersOf } from './sheet-figures.ts'
import type { ShopLayer } from './shop.ts'

/** What limits are looked up in. */
export interface Standing {
  readonly book: Rulebook
  readonly sheet: EnteredSheet
  readonly shop: ShopLayer
  readonly layers: ReturnType<typeof layersOf>
  /** A fact as a part at a position sees it: limits may hang on port, duty, material. */
  readonly named: (part: string, at: string, name: string) => Fact
}

/** The limit that governs: maker's sheet, then the part's card, then the shop's own, then the trade's default if it may decide. */
export function standingLimit({ book, sheet, shop, layers, named }: Standing, part: string, id: string, at: string): LimitFact {
  const entry = book.parts.get(part)?.limits.get(id)
  if (entry === undefined) return missing('no limit', [])
  const common = { state: 'known', id: `${part}:${id}`, kind: entry.kind, whenTooClose: entry.whenTooClose } as const
  const unstated = unstatedChoices(book, sheet, 'limits', part, id)
  if (unstated.length > 0)
    return missing(
      'missing',
      unstated.map((choice) => factKey('job', choice, ENGINE)),
    )
  const stated = limitOnSheet(layers, part, id, at)
  if (stated !== undefined)
    return { ...common, value: literalMeasure(stated.typed, entry.kind), typed: stated.typed, from: stated.from, sheet: stated.sheet }
  const own = shop.limits.find((l) => l.part === part && l.limit === id)
  if (own !== undefined)
    return { ...common, value: literalMeasure(own.value, entry.kind), typed: own.value, from: 'shop', adoptedBy: own.by }
  for (const standard of entry.defaults) {
    const held = fits(standard.for, (name) => named(part, at, name))
    if (held === 'no') continue
    if (held !== 'yes') return missing('missing', held)
    const trade = { ...common, value: standard.kept, typed: standard.value, provenance: standard.provenance, source: standard.source }
    if (standard.provenance !== 'from memory') return { ...trade, from: 'trade' }
    const adoption = shop.adoptions.find((a) => a.part === part && a.limit === id)
    return adoption === undefined ? missing('limit not adopted', []) : { ...trade, from: 'trade', adoptedBy: adoption.by }
  }
  return missing('no limit', [])
}

/** Whether a default is meant for these conditions; the facts still to be known where that can't be said. */
function fits(
  conditions: Readonly<Record<string, string | readonly string[]>>,
  named: (name: string) => Fact,
): 'yes' | 'no' | readonly FactKey[] {
  const needs: FactKey[] = []
  for (const [name, wanted] of Object.entries(conditions)) {
    const fact = named(name)
    if (fact.state === 'missing') needs.push(...fact.needs)
    else if (fact.state === 'not applicable' || fact.form !== 'term') return 'no'
    else if (!fact.terms.every((t) => (typeof wanted === 'string' ? t === wanted : wanted.includes(String(t))))) return 'no'
  }
  return needs.length === 0 ? 'yes' : needs
}
