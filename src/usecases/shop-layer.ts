import * as z from 'zod'
import type { Database } from '../store/database.ts'
import { engineOf } from '../store/engines.ts'
import { adoptionsOf, limitsOf } from '../store/limits.ts'
import type { Shop } from '../store/shops.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import { NO_SHOP, type ShopLayer } from '../verdict/shop.ts'

/** What stands in a shop's settings (JSON in the store). */
export const shopSettings = z.strictObject({
  confidence: z.string().optional(),
  tenths: z.enum(['ten-thousandths of an inch', 'tenths of a millimetre']).optional(),
  lacks: z.array(z.string()).default([]),
})

/**
 * What the shop decided for itself, as verdicts need it. Without a shop: the trade's figures alone.
 * @param engine the engine that the work is about: only its sheet is taken in, so that an edition holds no more than decided, and
 *   putting one engine's sheet leaves the editions of the others' work as they are
 */
export async function shopLayer(db: Database, book: CompiledBook, shop: Shop | undefined, engine?: string): Promise<ShopLayer> {
  const fallback = NO_SHOP(book.book.confidence.default)
  if (shop === undefined) return fallback
  const settings = shopSettings.parse(JSON.parse(shop.settings))
  const [adoptions, limits, own] = await Promise.all([
    adoptionsOf(db, shop.id),
    limitsOf(db, shop.id),
    engine === undefined ? undefined : engineOf(db, shop.id, engine),
  ])
  return {
    confidence: settings.confidence ?? fallback.confidence,
    ...(settings.tenths === undefined ? {} : { tenths: settings.tenths }),
    adoptions: adoptions.map(({ part, limit, by, on }) => ({ part, limit, by, on })),
    limits: limits.map(({ part, limit, value, by, on }) => ({ part, limit, value, by, on })),
    lacks: settings.lacks,
    ...(own === undefined ? {} : { engines: { [own.id]: JSON.parse(own.content) as unknown } }),
  }
}
