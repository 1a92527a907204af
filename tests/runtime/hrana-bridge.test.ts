import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createClient } from '@libsql/client/web'
import type { Client } from '@libsql/client/web'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { startHranaBridge } from './hrana-bridge.ts'
import type { HranaBridge } from './hrana-bridge.ts'

let folder: string
let bridge: HranaBridge
let client: Client
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-hrana-'))
  bridge = await startHranaBridge({ file: join(folder, 'x.db') })
  client = createClient({ url: bridge.url })
  await client.execute('create table t (k text primary key, v)')
})
afterEach(async () => {
  client.close()
  await bridge.close()
  await rm(folder, { recursive: true, force: true })
})

const keys = async () => (await client.execute('select k from t order by k')).rows.map((row) => row['k'])

async function pipeline(requests: readonly unknown[], baton?: string | null, version = 'v3') {
  const response = await fetch(`${bridge.url}/${version}/pipeline`, { method: 'POST', body: JSON.stringify({ baton, requests }) })
  const json = (await response.json()) as {
    baton: string | null
    results: { type: string; response?: Record<string, unknown>; error?: { code: string } }[]
  }
  return { status: response.status, ...json }
}

describe('through @libsql/client', () => {
  test('every kind of value goes in and comes back', async () => {
    const values = [null, 5n, 2.5, 'it’s', new Uint8Array([0, 255]).buffer]
    for (const [n, v] of values.entries()) await client.execute({ sql: 'insert into t values (?, ?)', args: [`k${n}`, v] })
    const { rows } = await client.execute('select v, typeof(v) as kind from t order by k')
    expect(rows.map((row) => row['kind'])).toEqual(['null', 'integer', 'real', 'text', 'blob'])
    expect(rows.map((row) => row['v'])).toEqual([null, 5, 2.5, 'it’s', new Uint8Array([0, 255]).buffer])
    const named = await client.execute({ sql: 'select :a as a, $b as b', args: { a: 1, b: 'two' } })
    expect({ ...named.rows[0] }).toEqual({ a: 1, b: 'two' })
  })

  test('changed rows are counted, also by a statement that returns them', async () => {
    expect((await client.execute(`insert into t values ('a', 1), ('b', 2)`)).rowsAffected).toBe(2)
    const returned = await client.execute('update t set v = v + 1 returning k')
    expect([returned.rowsAffected, returned.rows.length]).toEqual([2, 2])
    expect((await client.execute('select * from t')).rowsAffected).toBe(0)
  })

  test('a batch stands or falls as a whole, and the error names the statement and the constraint', async () => {
    await client.batch([`insert into t values ('a', 1)`, `insert into t values ('b', 2)`], 'write')
    const failing = client.batch(
      [`insert into t values ('c', 3)`, `insert into t values ('a', 4)`, `insert into t values ('d', 5)`],
      'write',
    )
    await expect(failing).rejects.toMatchObject({ code: 'SQLITE_CONSTRAINT', statementIndex: 1 })
    await expect(failing).rejects.toThrow('SQLite error: UNIQUE constraint failed: t.k')
    expect(await keys()).toEqual(['a', 'b'])
    const [first] = await client.batch(['select count(*) as n from t'], 'read')
    expect(first?.rows[0]?.['n']).toBe(2)
  })

  test('an interactive transaction keeps its connection from one request to the next', async () => {
    const transaction = await client.transaction('write')
    await transaction.execute(`insert into t values ('a', 1)`)
    expect(await keys()).toEqual([])
    await expect(client.execute(`insert into t values ('z', 1)`)).rejects.toMatchObject({ code: 'SQLITE_BUSY' })
    await transaction.commit()
    expect(await keys()).toEqual(['a'])
    const given = await client.transaction('write')
    await given.execute(`insert into t values ('b', 1)`)
    await given.rollback()
    expect(await keys()).toEqual(['a'])
  })

  test('a sequence of statements', async () => {
    await client.executeMultiple(`insert into t values ('a', 1); insert into t values ('b', 2);`)
    expect(await keys()).toEqual(['a', 'b'])
  })
})

describe('the protocol', () => {
  test.each([
    ['/v2', 200],
    ['/v3', 200],
    ['/v3-protobuf', 404],
    ['/', 404],
  ])('GET %s is answered %i', async (path, status) => {
    expect((await fetch(bridge.url + path)).status).toBe(status)
  })

  test('conditions of a batch decide which steps run', async () => {
    const insert = (k: string, condition?: unknown) => ({ stmt: { sql: `insert into t values ('${k}', 1)` }, condition })
    const steps = [
      insert('a'),
      insert('a'),
      insert('b', { type: 'ok', step: 0 }),
      insert('no-1', { type: 'ok', step: 1 }),
      insert('c', { type: 'error', step: 1 }),
      insert('no-2', { type: 'not', cond: { type: 'error', step: 1 } }),
      insert('d', {
        type: 'and',
        conds: [
          { type: 'ok', step: 0 },
          { type: 'not', cond: { type: 'ok', step: 3 } },
        ],
      }),
      insert('no-3', {
        type: 'or',
        conds: [
          { type: 'ok', step: 1 },
          { type: 'ok', step: 5 },
        ],
      }),
      insert('e', { type: 'is_autocommit' }),
    ]
    const { results } = await pipeline([{ type: 'batch', batch: { steps } }, { type: 'close' }])
    const result = results[0]?.response?.['result'] as { step_results: unknown[]; step_errors: ({ code: string } | null)[] }
    expect(result.step_results.map((r) => r !== null)).toEqual([true, false, true, false, true, false, true, false, true])
    expect(result.step_errors.map((e) => e?.code ?? null)).toEqual([null, 'SQLITE_CONSTRAINT', null, null, null, null, null, null, null])
    expect(await keys()).toEqual(['a', 'b', 'c', 'd', 'e'])
  })

  test.each(['v2', 'v3'])('%s: a stream goes on by its baton, stores SQL, and ends when closed', async (version) => {
    const one = await pipeline(
      [
        { type: 'execute', stmt: { sql: 'begin' } },
        { type: 'store_sql', sql_id: 7, sql: `insert into t values ('a', 1)` },
      ],
      null,
      version,
    )
    expect(one.baton).toEqual(expect.any(String))
    const two = await pipeline([{ type: 'get_autocommit' }, { type: 'execute', stmt: { sql_id: 7 } }], one.baton, version)
    expect(two.results[0]?.response?.['is_autocommit']).toBe(false)
    expect((await pipeline([{ type: 'close' }], one.baton, version)).status).toBe(400)
    const three = await pipeline(
      [{ type: 'close_sql', sql_id: 7 }, { type: 'execute', stmt: { sql_id: 7 } }, { type: 'close' }],
      two.baton,
      version,
    )
    expect(three.results.map((r) => r.error?.code ?? r.type)).toEqual(['ok', 'SQL_NOT_FOUND', 'ok'])
    expect(three.baton).toBeNull()
    // Closing the stream rolled its transaction back.
    expect(await keys()).toEqual([])
  })

  test('what is no request is refused', async () => {
    for (const body of ['not json', '{}']) {
      expect((await fetch(`${bridge.url}/v2/pipeline`, { method: 'POST', body })).status).toBe(400)
    }
    expect((await pipeline([{ type: 'describe', sql: 'select 1' }, { type: 'close' }])).results[0]?.error?.code).toBe('NOT_SUPPORTED')
  })
})
