/** Every edition of the rulebook that ever decided something, by the hash of its content; never changed, never deleted. */
import { eq } from 'drizzle-orm'
import { sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Database, Write } from './database.ts'
import { guarded } from './trouble.ts'

export const editions = sqliteTable('editions', {
  hash: text('hash').primaryKey(),
  /** Canonical JSON; its SHA-256 is the key. */
  content: text('content').notNull(),
  firstUsedAt: text('first_used_at').notNull(),
})
export type Edition = typeof editions.$inferSelect

/** The statement that keeps an edition; one that is already kept stays as it is. */
export function keeping(db: Database, edition: Edition): Write {
  return db.insert(editions).values(edition).onConflictDoNothing({ target: editions.hash })
}

/** An edition by its hash. Editions belong to no shop. @throws StoreTrouble */
export async function editionByHash(db: Database, hash: string): Promise<Edition | undefined> {
  return guarded('looking up an edition', () => db.select().from(editions).where(eq(editions.hash, hash)).get())
}
