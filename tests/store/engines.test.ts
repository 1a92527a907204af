import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Database } from '../../src/store/database.ts'
import { disclosuresFor } from '../../src/store/disclosures.ts'
import { engineOf, enginesOf, saveEngine } from '../../src/store/engines.ts'
import { migrate } from '../../src/store/migrate.ts'
import { MIGRATIONS } from '../../src/store/migrations.ts'
import { PLACES } from './places.ts'
import type { Place } from './places.ts'
import { disclosure, SHOP } from './sample.ts'

const foreman = disclosure('c-foreman', 'the foreman', '0a'.repeat(16))
const row = { shop: SHOP, id: 'QL-6P', content: '{"id":"QL-6P"}', on: '2031-02-01T08:00:00Z' }

describe.each(PLACES)('a shop’s own engine sheets, through %s', (_name, arrive) => {
  let place: Place
  let db: Database
  beforeEach(async () => {
    place = await arrive()
    db = await place.open()
  })
  afterEach(() => place.leave())

  test('the last one put counts, per shop and engine, and the name behind it is kept', async () => {
    await migrate(db)
    expect(await saveEngine(db, row, foreman)).toEqual({ kind: 'written' })
    const later = { ...row, content: '{"id":"QL-6P","says":"mended"}', on: '2031-02-02T08:00:00Z' }
    expect(await saveEngine(db, later, foreman)).toEqual({ kind: 'written' })
    await saveEngine(db, { ...row, id: 'AB-4' }, foreman)
    await saveEngine(db, { ...row, shop: 'elsewhere' }, foreman)
    expect(await engineOf(db, SHOP, 'QL-6P')).toEqual({ ...later, by: 'c-foreman' })
    expect((await enginesOf(db, SHOP)).map((e) => [e.id, e.content])).toEqual([
      ['AB-4', row.content],
      ['QL-6P', later.content],
    ])
    expect((await engineOf(db, 'elsewhere', 'QL-6P'))?.content).toBe(row.content)
    expect(await engineOf(db, SHOP, 'QL-8S')).toBeUndefined()
    expect(await enginesOf(db, 'nobody')).toEqual([])
    expect((await disclosuresFor(db, SHOP, ['c-foreman'])).map((d) => d.text)).toEqual(['the foreman'])
  })

  test('under a salt that is not in force nothing is written', async () => {
    await migrate(db)
    await saveEngine(db, row, foreman)
    const other = disclosure('c-other', 'the foreman', '0b'.repeat(16))
    expect(await saveEngine(db, { ...row, content: '{}' }, other)).toEqual({ kind: 'resalt' })
    expect(await enginesOf(db, SHOP)).toEqual([{ ...row, by: 'c-foreman' }])
  })

  test('a database from before they were kept is brought up to date, and loses nothing', async () => {
    const before = MIGRATIONS.filter(({ name }) => name < '0001')
    expect(before.map(({ name }) => name)).toEqual(['0000_start'])
    await migrate(db, before)
    await db.$client.execute("insert into adoptions values ('quarry-lane', 'valve', 'margin-min', 'c-foreman', '2031-02-01')")
    expect(await migrate(db)).toContain('0001_shop_engines')
    expect((await db.$client.execute('select count(*) as n from adoptions')).rows[0]?.['n']).toBe(1)
    expect(await enginesOf(db, SHOP)).toEqual([])
  })
})
