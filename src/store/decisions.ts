/** The ledger: one row a decision, numbered 1, 2, 3 … within its shop without gaps. Rows are only ever added. */
import { and, asc, eq, gt, max, sql } from 'drizzle-orm'
import { index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { DOORS } from '../ledger/entry.ts'
import type { Database, Write } from './database.ts'
import { guarded } from './trouble.ts'

export const decisions = sqliteTable(
  'decisions',
  {
    shop: text('shop').notNull(),
    seq: integer('seq').notNull(),
    id: text('id').notNull().unique(),
    job: text('job').notNull(),
    engine: text('engine').notNull(),
    stage: text('stage').notNull(),
    hash: text('hash').notNull(),
    /** Canonical JSON, exactly the bytes that were hashed. */
    body: text('body').notNull(),
    /** JSON. */
    envelope: text('envelope').notNull(),
    receivedAt: text('received_at').notNull(),
    door: text('door', { enum: DOORS }).notNull(),
  },
  (t) => [primaryKey({ columns: [t.shop, t.seq] }), index('decisions_of_job').on(t.shop, t.job, t.seq)],
)
export type Decision = typeof decisions.$inferSelect

/**
 * The statement that enters a row as its shop's next, guarded by the head: unless the shop's last number is the one before, the
 * number it computes is null, which the column refuses, and the whole batch fails with it.
 */
export function entering(db: Database, row: Decision): Write {
  const { shop, seq } = row
  const next = sql<number>`(select case when coalesce(max(${decisions.seq}), 0) = ${seq - 1} then ${seq} end
    from ${decisions} where ${decisions.shop} = ${shop})`
  return db.insert(decisions).values({ ...row, seq: next })
}

/** The number of a shop's last decision; 0 when it has none. @throws StoreTrouble */
export async function head(db: Database, shop: string): Promise<number> {
  const asked = db
    .select({ head: max(decisions.seq) })
    .from(decisions)
    .where(eq(decisions.shop, shop))
  return (await guarded('reading the head', () => asked.get()))?.head ?? 0
}

/** A shop's decision by its id. @throws StoreTrouble */
export async function decisionById(db: Database, shop: string, id: string): Promise<Decision | undefined> {
  const asked = db
    .select()
    .from(decisions)
    .where(and(eq(decisions.shop, shop), eq(decisions.id, id)))
  return guarded('looking up a decision', () => asked.get())
}

/** The decisions of one job in the order in which they were entered. @throws StoreTrouble */
export async function decisionsOfJob(db: Database, shop: string, job: string): Promise<readonly Decision[]> {
  const asked = db
    .select()
    .from(decisions)
    .where(and(eq(decisions.shop, shop), eq(decisions.job, job)))
  return guarded('reading a job', () => asked.orderBy(asc(decisions.seq)).all())
}

/** A shop's decisions after a number, oldest first, at most `limit` of them: a page of the ledger. @throws StoreTrouble */
export async function decisionsAfter(db: Database, shop: string, seq: number, limit: number): Promise<readonly Decision[]> {
  const asked = db
    .select()
    .from(decisions)
    .where(and(eq(decisions.shop, shop), gt(decisions.seq, seq)))
  return guarded('reading the ledger', () => asked.orderBy(asc(decisions.seq)).limit(limit).all())
}
