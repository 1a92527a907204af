import * as z from 'zod'
import { fault, Refused, type Fault } from '../quantity/fault.ts'
import { adoptionsOf, adoptLimit as keepAdoption } from '../store/limits.ts'
import type { Shop } from '../store/shops.ts'
import { entryFrom } from './entry.ts'
import { readLimit, type LimitLine } from './limits.ts'
import { personName, signedBy } from './people.ts'
import type { Service } from './service.ts'

const adoptionEntry = z.strictObject({ by: personName })
const MEND = 'Send the name of the person who adopts it: {"by": "…"}.'

/**
 * Adopts a limit that the trade only remembers, so that it may condemn and clear in this shop. Adopting again under the same name
 * changes nothing; under another name that person answers for it from now on.
 * @param entry {by}, as it came
 * @returns the limit with its figures and sources; undefined where the rulebook has none of that name
 * @throws Refused where nobody is named, or the limit rests on more than memory; StoreTrouble
 */
export async function adoptLimit(
  service: Service,
  shop: Shop,
  part: string,
  limit: string,
  entry: unknown,
): Promise<LimitLine | undefined> {
  const known = service.book.book.parts.get(part)?.limits.get(limit)
  if (known === undefined) return undefined
  const { by: name } = entryFrom(adoptionEntry, entry, MEND)
  if (!known.defaults.some((d) => d.provenance === 'from memory')) throw new Refused([nothingToAdopt(known.defaults.length)])
  const standing = (await adoptionsOf(service.db, shop.id)).find((a) => a.part === part && a.limit === limit)
  await signedBy(service, shop.id, name, async (by) =>
    standing?.by === by.commitment ? { kind: 'written' } : keepAdoption(service.db, { shop: shop.id, part, limit, on: service.now() }, by),
  )
  return readLimit(service, shop, part, limit)
}

const nothingToAdopt = (defaults: number): Fault =>
  defaults === 0
    ? fault(
        'nothing-to-adopt',
        '',
        'The trade has no figure for this limit, so there is nothing to adopt.',
        'Set a figure of the shop’s own.',
      )
    : fault(
        'nothing-to-adopt',
        '',
        'The trade has more than a memory of this limit, so it decides without being adopted.',
        'Leave it, or set a figure of the shop’s own.',
      )
