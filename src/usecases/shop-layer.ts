import * as z from 'zod'
import type { Database } from '../store/database.ts'
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

/** What the shop decided for itself, as verdicts need it. Without a shop: the trade's figures alone. */
export async function shopLayer(db: Database, book: CompiledBook, shop: Shop | undefined): Promise<ShopLayer> {
  const fallback = NO_SHOP(book.book.confidence.default)
  if (shop === undefined) return fallback
  const settings = shopSettings.parse(JSON.parse(shop.settings))
  const [adoptions, limits] = await Promise.all([adoptionsOf(db, shop.id), limitsOf(db, shop.id)])
  return {
    confidence: settings.confidence ?? fallback.confidence,
    ...(settings.tenths === undefined ? {} : { tenths: settings.tenths }),
    adoptions: adoptions.map(({ part, limit, by, on }) => ({ part, limit, by, on })),
    limits: limits.map(({ part, limit, value, by, on }) => ({ part, limit, value, by, on })),
    lacks: settings.lacks,
  }
}
