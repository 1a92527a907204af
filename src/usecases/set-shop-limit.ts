import * as z from 'zod'
import { Refused } from '../quantity/fault.ts'
import { readQuantity } from '../quantity/read.ts'
import { limitsOf, setShopLimit as keepLimit } from '../store/limits.ts'
import type { Shop } from '../store/shops.ts'
import { entryFrom } from './entry.ts'
import { readLimit, type LimitLine } from './limits.ts'
import { personName, signedBy } from './people.ts'
import type { Service } from './service.ts'

const LONGEST = { value: 200, note: 2000 }
const limitEntry = z.strictObject({
  value: z.string().trim().min(1).max(LONGEST.value),
  by: personName,
  note: z.string().trim().min(1).max(LONGEST.note).optional(),
})
const MEND = 'Send the figure as text with its unit, and the name of the person who sets it: {"value": "…", "by": "…"}.'

/**
 * Sets a figure of the shop's own for a limit. It stands over the trade's defaults, and under a maker's sheet and the card of the part
 * fitted. Setting the same again changes nothing.
 * @param entry {value, by, note?}, as it came
 * @returns the limit as it stands now, the figure shown in both unit systems as it was read; undefined where the rulebook has no limit of that name
 * @throws Refused where the figure does not read as a quantity of the limit's kind, or nobody is named; StoreTrouble
 */
export async function setShopLimit(
  service: Service,
  shop: Shop,
  part: string,
  limit: string,
  entry: unknown,
): Promise<LimitLine | undefined> {
  const known = service.book.book.parts.get(part)?.limits.get(limit)
  if (known === undefined) return undefined
  const { value, by: name, note = null } = entryFrom(limitEntry, entry, MEND)
  // Without the shop's habit of tenths: the text alone must say what it means, whatever the habit is when it is judged by.
  const reading = readQuantity(value, { kind: known.kind, label: known.label, pointer: '/value' })
  if (!reading.ok) throw new Refused(reading.faults)
  const standing = (await limitsOf(service.db, shop.id)).find((l) => l.part === part && l.limit === limit)
  await signedBy(service, shop.id, name, async (by) =>
    standing?.by === by.commitment && standing.value === value && standing.note === note
      ? { kind: 'written' }
      : keepLimit(service.db, { shop: shop.id, part, limit, value, note, on: service.now() }, by),
  )
  return readLimit(service, shop, part, limit)
}
