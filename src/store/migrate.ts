/** Brings a database's schema up to this program's. */
import { sql } from 'drizzle-orm'
import type { SQL } from 'drizzle-orm'
import { SQLiteSyncDialect } from 'drizzle-orm/sqlite-core'
import { together } from './database.ts'
import type { Database, Write } from './database.ts'
import { MIGRATIONS } from './migrations.ts'
import type { Migration } from './migrations.ts'
import { jittered, whenFree } from './patience.ts'
import type { Patience } from './patience.ts'
import { guarded, StoreTrouble } from './trouble.ts'

/**
 * Applies the migrations that a database has not had yet, in order, each in one batch that also records it. Does nothing when
 * all are there. Several processes may do so at once: the record's key lets one of them apply a step, and the others go on to the next.
 * @returns the names of the steps that this call applied.
 * @throws StoreTrouble
 */
export async function migrate(
  db: Database,
  migrations: readonly Migration[] = MIGRATIONS,
  patience: Patience = jittered(),
): Promise<readonly string[]> {
  await whenFree(patience, () => together(db, 'preparing the record of migrations', [statement(RECORD)]))
  const rows = await whenFree(patience, () =>
    guarded('reading the record of migrations', () => db.all<{ name: string }>(sql`select name from witnessmark_migrations`)),
  )
  const done = new Set(rows.map((row) => row.name))
  const applied: string[] = []
  for (const { name, statements } of migrations) {
    if (done.has(name)) continue
    const record = sql`insert into witnessmark_migrations (name) values (${name})`
    const writes = [record, ...statements.map((s) => sql.raw(s))].map(statement)
    if (await whenFree(patience, () => unlessDone(() => together(db, `applying migration ${name}`, writes)))) applied.push(name)
  }
  return applied
}

const RECORD = sql`create table if not exists witnessmark_migrations (
  name text primary key not null,
  applied_at text not null default current_timestamp
)`

const dialect = new SQLiteSyncDialect()

function statement(text: SQL): Write {
  return { toSQL: () => dialect.sqlToQuery(text) }
}

/** False when another process has applied the step in the meantime. */
async function unlessDone(apply: () => Promise<unknown>): Promise<boolean> {
  try {
    await apply()
    return true
  } catch (error) {
    if (error instanceof StoreTrouble && error.broken === 'witnessmark_migrations.name') return false
    throw error
  }
}
