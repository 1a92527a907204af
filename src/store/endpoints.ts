/** Where other programs' webhooks come in, and a receipt for each message that decided something: once, never twice. */
import { and, eq } from 'drizzle-orm'
import { primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { together } from './database.ts'
import type { Database, Write } from './database.ts'
import { guarded } from './trouble.ts'

export const hookEndpoints = sqliteTable('hook_endpoints', {
  id: text('id').primaryKey(),
  shop: text('shop').notNull(),
  /** In the clear: checking a signature needs the secret itself. */
  secret: text('secret').notNull(),
  createdAt: text('created_at').notNull(),
})
export type HookEndpoint = typeof hookEndpoints.$inferSelect

export const receipts = sqliteTable(
  'receipts',
  {
    endpoint: text('endpoint').notNull(),
    messageId: text('message_id').notNull(),
    /** SHA-256 of the message's body alone, so that a retry has the same one. */
    bodyHash: text('body_hash').notNull(),
    decisionId: text('decision_id').notNull(),
    receivedAt: text('received_at').notNull(),
  },
  (t) => [primaryKey({ columns: [t.endpoint, t.messageId] })],
)
export type Receipt = typeof receipts.$inferSelect

/** Adds an endpoint. @throws StoreTrouble, also when the id is taken. */
export async function addEndpoint(db: Database, endpoint: HookEndpoint): Promise<void> {
  await together(db, 'adding an endpoint', [db.insert(hookEndpoints).values(endpoint)])
}

/** An endpoint by its id, which is all that a message names; the endpoint names its shop. @throws StoreTrouble */
export async function endpointById(db: Database, id: string): Promise<HookEndpoint | undefined> {
  return guarded('looking up an endpoint', () => db.select().from(hookEndpoints).where(eq(hookEndpoints.id, id)).get())
}

/** The receipt of a message, if it was taken in before. @throws StoreTrouble */
export async function receiptOf(db: Database, endpoint: string, messageId: string): Promise<Receipt | undefined> {
  const asked = and(eq(receipts.endpoint, endpoint), eq(receipts.messageId, messageId))
  return guarded('looking up a receipt', () => db.select().from(receipts).where(asked).get())
}

/** The statement that writes a receipt; a second one for the same message breaks the batch. */
export function receipting(db: Database, receipt: Receipt): Write {
  return db.insert(receipts).values(receipt)
}
