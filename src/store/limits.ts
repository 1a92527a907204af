/** What a shop says about limits: which remembered ones it has adopted, and which it has set itself. */
import { asc, eq } from 'drizzle-orm'
import { primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Database } from './database.ts'
import { writeDisclosing } from './disclosures.ts'
import type { Disclosed, Disclosure } from './disclosures.ts'
import { guarded } from './trouble.ts'

export const adoptions = sqliteTable(
  'adoptions',
  {
    shop: text('shop').notNull(),
    part: text('part').notNull(),
    limit: text('limit').notNull(),
    /** The commitment to the name of the person who adopted it. */
    by: text('adopted_by').notNull(),
    on: text('adopted_on').notNull(),
  },
  (t) => [primaryKey({ columns: [t.shop, t.part, t.limit] })],
)
export type Adoption = typeof adoptions.$inferSelect

export const shopLimits = sqliteTable(
  'shop_limits',
  {
    shop: text('shop').notNull(),
    part: text('part').notNull(),
    limit: text('limit').notNull(),
    /** As typed, with its unit: "0.005 in". */
    value: text('value').notNull(),
    note: text('note'),
    /** The commitment to the name of the person who set it. */
    by: text('set_by').notNull(),
    on: text('set_on').notNull(),
  },
  (t) => [primaryKey({ columns: [t.shop, t.part, t.limit] })],
)
export type ShopLimit = typeof shopLimits.$inferSelect

/** Records an adoption; a later one of the same limit takes its place. `by` discloses the name. @throws StoreTrouble */
export async function adoptLimit(db: Database, adoption: Omit<Adoption, 'by'>, by: Disclosure): Promise<Disclosed> {
  const row = { ...adoption, by: by.commitment }
  const target = [adoptions.shop, adoptions.part, adoptions.limit]
  const write = db
    .insert(adoptions)
    .values(row)
    .onConflictDoUpdate({ target, set: { by: row.by, on: row.on } })
  return writeDisclosing(db, 'adopting a limit', row.shop, [by], [write])
}

/** Sets a shop's own limit; a later one takes its place. `by` discloses the name. @throws StoreTrouble */
export async function setShopLimit(db: Database, limit: Omit<ShopLimit, 'by'>, by: Disclosure): Promise<Disclosed> {
  const row = { ...limit, by: by.commitment }
  const target = [shopLimits.shop, shopLimits.part, shopLimits.limit]
  const set = { value: row.value, note: row.note, by: row.by, on: row.on }
  const write = db.insert(shopLimits).values(row).onConflictDoUpdate({ target, set })
  return writeDisclosing(db, 'setting a limit', row.shop, [by], [write])
}

/** The limits that a shop has adopted, by part and limit. @throws StoreTrouble */
export async function adoptionsOf(db: Database, shop: string): Promise<readonly Adoption[]> {
  const asked = db.select().from(adoptions).where(eq(adoptions.shop, shop))
  return guarded('reading adoptions', () => asked.orderBy(asc(adoptions.part), asc(adoptions.limit)).all())
}

/** The limits that a shop has set itself, by part and limit. @throws StoreTrouble */
export async function limitsOf(db: Database, shop: string): Promise<readonly ShopLimit[]> {
  const asked = db.select().from(shopLimits).where(eq(shopLimits.shop, shop))
  return guarded('reading limits', () => asked.orderBy(asc(shopLimits.part), asc(shopLimits.limit)).all())
}
