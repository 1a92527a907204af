/** What the store's functions are given: drizzle over libSQL, the same for a file and for a remote server. */
import type { Client, InValue } from '@libsql/client'
import type { LibSQLDatabase } from 'drizzle-orm/libsql'
import { guarded } from './trouble.ts'

type Drizzle = LibSQLDatabase<Record<string, never>> & { readonly $client: Client }

/** An open database; `close` gives back its files or connections. */
export type Database = Drizzle & { readonly close: () => void }

/** Adds `close` to what drizzle made of a client. */
export function closable(drizzle: Drizzle): Database {
  return Object.assign(drizzle, { close: () => drizzle.$client.close() })
}

/** A statement that drizzle has built and nobody has run yet. */
export interface Write {
  toSQL(): { readonly sql: string; readonly params: readonly unknown[] }
}

/**
 * Runs statements as one atomic batch: all of them stand, or none does. The store's only way to write.
 * Interactive transactions are not used: they hold a lock across round trips, and not every remote database has them.
 * Runs the client's batch rather than drizzle's, which can't say that the batch writes: a batch that finds that
 * out late can fail as busy without waiting for its turn.
 * @returns for each statement the number of rows it wrote.
 * @throws StoreTrouble
 */
export async function together(db: Database, during: string, writes: readonly Write[]): Promise<readonly number[]> {
  const statements = writes.map((write) => {
    const { sql, params } = write.toSQL()
    // drizzle has already turned every parameter into what the driver binds; its type does not say so.
    return { sql, args: params as InValue[] }
  })
  const results = await guarded(during, () => db.$client.batch(statements, 'write'))
  return results.map((result) => result.rowsAffected)
}
