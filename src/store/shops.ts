/**
 * Shops and the keys by which their programs speak for them. A key itself is never stored, only its hash.
 * No table refers to another by a foreign key: SQLite enforces them per connection and only where switched on, so what they
 * promise would differ between a file and a remote server.
 */
import { and, eq, isNull } from 'drizzle-orm'
import { sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { together } from './database.ts'
import type { Database } from './database.ts'
import { guarded } from './trouble.ts'

export const shops = sqliteTable('shops', {
  id: text('id').primaryKey(),
  name: text('name').notNull(),
  /** JSON; the use cases know what it means. */
  settings: text('settings').notNull(),
  createdAt: text('created_at').notNull(),
})
export type Shop = typeof shops.$inferSelect

export const apiKeys = sqliteTable('api_keys', {
  hash: text('hash').primaryKey(),
  shop: text('shop').notNull(),
  label: text('label').notNull(),
  createdAt: text('created_at').notNull(),
  revokedAt: text('revoked_at'),
})
export type ApiKey = typeof apiKeys.$inferSelect

/** Adds a shop. False when a shop of that id is already there, which is then left as it is. @throws StoreTrouble */
export async function addShop(db: Database, shop: Shop): Promise<boolean> {
  const [added] = await together(db, 'adding a shop', [db.insert(shops).values(shop).onConflictDoNothing({ target: shops.id })])
  return added === 1
}

/** @throws StoreTrouble */
export async function shopById(db: Database, id: string): Promise<Shop | undefined> {
  return guarded('looking up a shop', () => db.select().from(shops).where(eq(shops.id, id)).get())
}

/** Replaces a shop's settings (JSON text). False when there is no such shop. @throws StoreTrouble */
export async function changeSettings(db: Database, shop: string, settings: string): Promise<boolean> {
  const [changed] = await together(db, 'changing a shop’s settings', [db.update(shops).set({ settings }).where(eq(shops.id, shop))])
  return changed === 1
}

/** Adds a key by its hash. @throws StoreTrouble, also when the hash is already there. */
export async function addApiKey(db: Database, key: Omit<ApiKey, 'revokedAt'>): Promise<void> {
  await together(db, 'adding a key', [db.insert(apiKeys).values(key)])
}

/** Revokes a shop's key; the row stays. False when the shop has no such key in force. @throws StoreTrouble */
export async function revokeApiKey(db: Database, shop: string, hash: string, on: string): Promise<boolean> {
  const inForce = and(eq(apiKeys.hash, hash), eq(apiKeys.shop, shop), isNull(apiKeys.revokedAt))
  const [revoked] = await together(db, 'revoking a key', [db.update(apiKeys).set({ revokedAt: on }).where(inForce)])
  return revoked === 1
}

/** The shop that a key speaks for, found by the key's hash; none for an unknown or revoked key. @throws StoreTrouble */
export async function shopByKeyHash(db: Database, hash: string): Promise<Shop | undefined> {
  const found = await guarded('looking up a key', () =>
    db
      .select({ shop: shops })
      .from(apiKeys)
      .innerJoin(shops, eq(shops.id, apiKeys.shop))
      .where(and(eq(apiKeys.hash, hash), isNull(apiKeys.revokedAt)))
      .get(),
  )
  return found?.shop
}
