/** Engine sheets that a shop has put itself; one stands over the rulebook's sheet of the same engine. The last one put counts. */
import { and, asc, eq } from 'drizzle-orm'
import { primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Database } from './database.ts'
import { writeDisclosing } from './disclosures.ts'
import type { Disclosed, Disclosure } from './disclosures.ts'
import { guarded } from './trouble.ts'

export const shopEngines = sqliteTable(
  'shop_engines',
  {
    shop: text('shop').notNull(),
    id: text('id').notNull(),
    /** Canonical JSON of the whole sheet, castings and cards with it. */
    content: text('content').notNull(),
    /** The commitment to the name of the person who put it. */
    by: text('put_by').notNull(),
    on: text('put_on').notNull(),
  },
  (t) => [primaryKey({ columns: [t.shop, t.id] })],
)
export type ShopEngine = typeof shopEngines.$inferSelect

/** Keeps a shop's own sheet of an engine; a later one takes its place. `by` discloses the name. @throws StoreTrouble */
export async function saveEngine(db: Database, engine: Omit<ShopEngine, 'by'>, by: Disclosure): Promise<Disclosed> {
  const row = { ...engine, by: by.commitment }
  const set = { content: row.content, by: row.by, on: row.on }
  const write = db
    .insert(shopEngines)
    .values(row)
    .onConflictDoUpdate({ target: [shopEngines.shop, shopEngines.id], set })
  return writeDisclosing(db, 'keeping an engine sheet', row.shop, [by], [write])
}

/** A shop's own sheet of one engine. @throws StoreTrouble */
export async function engineOf(db: Database, shop: string, id: string): Promise<ShopEngine | undefined> {
  const asked = db
    .select()
    .from(shopEngines)
    .where(and(eq(shopEngines.shop, shop), eq(shopEngines.id, id)))
  return guarded('looking up an engine sheet', () => asked.get())
}

/** All of a shop's own sheets, by id. @throws StoreTrouble */
export async function enginesOf(db: Database, shop: string): Promise<readonly ShopEngine[]> {
  const asked = db.select().from(shopEngines).where(eq(shopEngines.shop, shop))
  return guarded('reading engine sheets', () => asked.orderBy(asc(shopEngines.id)).all())
}
