import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { getTableConfig } from 'drizzle-orm/sqlite-core'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Database } from '../../src/store/database.ts'
import { migrate } from '../../src/store/migrate.ts'
import { MIGRATIONS } from '../../src/store/migrations.ts'
import * as schema from '../../src/store/schema.ts'
import { StoreTrouble } from '../../src/store/trouble.ts'
import { PLACES } from './places.ts'
import type { Place } from './places.ts'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
const NAMES = MIGRATIONS.map(({ name }) => name)

test('the embedded migrations are those of the SQL files', () => {
  execFileSync(`${ROOT}node_modules/.bin/node`, [`${ROOT}.setup/embed-migrations.mjs`, '--check'], { stdio: 'pipe' })
  expect(NAMES.length).toBeGreaterThan(0)
})

describe.each(PLACES)('migrating %s', (_name, arrive) => {
  let place: Place
  let db: Database
  beforeEach(async () => {
    place = await arrive()
    db = await place.open()
  })
  afterEach(() => place.leave())

  const names = async (of: string) => (await db.$client.execute(of)).rows.map((row) => String(row['name'])).sort()
  const recorded = () => names('select name from witnessmark_migrations')

  test('a fresh database gets every step, a second call none', async () => {
    expect(await migrate(db)).toEqual(NAMES)
    expect(await migrate(db)).toEqual([])
    expect(await recorded()).toEqual([...NAMES].sort())
  })

  test('eight at once on a fresh database: every step is applied once', async () => {
    const clients = await Promise.all(Array.from({ length: 8 }, () => place.open()))
    const applied = await Promise.all(clients.map((client) => migrate(client)))
    expect(applied.flat().sort()).toEqual([...NAMES].sort())
    expect(await recorded()).toEqual([...NAMES].sort())
  })

  test('a step that fails leaves nothing of itself, and the steps before it stand', async () => {
    const first = { name: '1', statements: ['create table a (x)', 'insert into a values (1)'] }
    const broken = { name: '2', statements: ['create table b (x)', 'insert into nowhere values (1)'] }
    await expect(migrate(db, [first, broken])).rejects.toThrow(StoreTrouble)
    expect(await recorded()).toEqual(['1'])
    expect(await names(`select name from sqlite_master where name in ('a', 'b')`)).toEqual(['a'])
    const mended = { name: '2', statements: ['create table b (x)'] }
    expect(await migrate(db, [first, mended])).toEqual(['2'])
    expect((await db.$client.execute('select count(*) as n from a')).rows[0]?.['n']).toBe(1)
  })

  test('the migrated tables are those of the schema: columns, types, keys and indexes', async () => {
    await migrate(db)
    const tables = Object.values(schema).map((table) => getTableConfig(table))
    const ours = `select name from sqlite_master where type = 'table' and name not like 'sqlite_%' and name <> 'witnessmark_migrations'`
    expect(await names(ours)).toEqual(tables.map(({ name }) => name).sort())

    for (const { name, columns, primaryKeys, indexes, uniqueConstraints } of tables) {
      const { rows } = await db.$client.execute(`select name, lower(type) as type, "notnull", pk from pragma_table_info('${name}')`)
      const found = rows.map((row) => [row['name'], row['type'], row['notnull'] === 1, Number(row['pk']) > 0])
      const composite = primaryKeys.flatMap((key) => key.columns.map((column) => column.name))
      expect(found, name).toEqual(columns.map((c) => [c.name, c.getSQLType(), c.notNull, c.primary || composite.includes(c.name)]))
      // SQLite's own indexes (origin pk) belong to the keys checked above.
      const indexed = await names(`select name from pragma_index_list('${name}') where origin = 'c'`)
      const single = columns.filter((c) => c.isUnique).map((c) => c.uniqueName)
      expect(indexed, name).toEqual([...indexes.map((i) => i.config.name), ...uniqueConstraints.map((u) => u.getName()), ...single].sort())
    }
  })
})
