import { reachableU } from '../quantity/instrument.ts'
import type { Rulebook } from '../rulebook/book.ts'
import type { Property } from '../rulebook/schema/properties.ts'
import type { ShopLayer } from './shop.ts'

/** Room for the last bits of a division: an instrument's own uncertainty counts as its own. */
const LAST_BITS = 1e-9
const HAIR = 1 + LAST_BITS

/** Standard uncertainty that one instrument can give at a value, kept units; undefined when it isn't in the book. */
export function instrumentU(book: Rulebook, id: string, value: number): number | undefined {
  const entry = book.instruments.get(id)
  return entry === undefined ? undefined : reachableU(entry, value)
}

/** The smallest standard uncertainty that the shop can reach for a property, kept units; infinite when no instrument is named for it. */
export function bestU(book: Rulebook, shop: ShopLayer, property: Property, value: number): number {
  if (!('instruments' in property)) return Number.POSITIVE_INFINITY
  let best = Number.POSITIVE_INFINITY
  for (const id of property.instruments) {
    if (shop.lacks.includes(id)) continue
    best = Math.min(best, instrumentU(book, id, value) ?? Number.POSITIVE_INFINITY)
  }
  return best * HAIR
}

/** The instruments that would read a property better than u, best first: the remedy for "too close to call". */
export function betterInstruments(book: Rulebook, shop: ShopLayer, property: Property, value: number, u: number): readonly string[] {
  if (!('instruments' in property)) return []
  return property.instruments
    .filter((id) => !shop.lacks.includes(id))
    .map((id) => ({ id, u: instrumentU(book, id, value) ?? Number.POSITIVE_INFINITY }))
    .filter((i) => i.u * HAIR < u)
    .sort((a, b) => a.u - b.u || (a.id < b.id ? -1 : 1))
    .map((i) => i.id)
}
