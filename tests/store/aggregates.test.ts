import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Database } from '../../src/store/database.ts'
import { decisionsAfter } from '../../src/store/decisions.ts'
import { disclosuresFor } from '../../src/store/disclosures.ts'
import { editionByHash } from '../../src/store/editions.ts'
import { addEndpoint, endpointById, receiptOf } from '../../src/store/endpoints.ts'
import { adoptionsOf, adoptLimit, limitsOf, setShopLimit } from '../../src/store/limits.ts'
import { migrate } from '../../src/store/migrate.ts'
import { addApiKey, addShop, changeSettings, revokeApiKey, shopById, shopByKeyHash } from '../../src/store/shops.ts'
import { appendDecision } from '../../src/store/append.ts'
import { PLACES } from './places.ts'
import type { Place } from './places.ts'
import { appending, disclosure, SHOP } from './sample.ts'

const shop = { id: SHOP, name: 'Quarry Lane Engine Works', settings: '{"confidence":0.95}', createdAt: '2031-01-02T08:00:00+01:00' }
const foreman = disclosure('c-foreman', 'the foreman', '0a'.repeat(16))

describe.each(PLACES)('what a shop keeps, through %s', (_name, arrive) => {
  let place: Place
  let db: Database
  beforeEach(async () => {
    place = await arrive()
    db = await place.open()
    await migrate(db)
  })
  afterEach(() => place.leave())

  test('a shop is added once, and a second time changes nothing', async () => {
    expect(await addShop(db, shop)).toBe(true)
    expect(await addShop(db, { ...shop, name: 'another' })).toBe(false)
    expect(await shopById(db, SHOP)).toEqual(shop)
    expect(await shopById(db, 'elsewhere')).toBeUndefined()
  })

  test('settings change for one shop', async () => {
    await addShop(db, shop)
    expect(await changeSettings(db, SHOP, '{}')).toBe(true)
    expect(await changeSettings(db, 'elsewhere', '{}')).toBe(false)
    expect((await shopById(db, SHOP))?.settings).toBe('{}')
  })

  test('a key speaks for its shop until it is revoked, and only its own shop revokes it', async () => {
    await addShop(db, shop)
    await addApiKey(db, { hash: 'k-1', shop: SHOP, label: 'till', createdAt: shop.createdAt })
    expect(await shopByKeyHash(db, 'k-1')).toEqual(shop)
    expect(await shopByKeyHash(db, 'k-2')).toBeUndefined()
    expect(await revokeApiKey(db, 'elsewhere', 'k-1', '2031-02-01')).toBe(false)
    expect(await shopByKeyHash(db, 'k-1')).toEqual(shop)
    expect(await revokeApiKey(db, SHOP, 'k-1', '2031-02-01')).toBe(true)
    expect(await revokeApiKey(db, SHOP, 'k-1', '2031-02-02')).toBe(false)
    expect(await shopByKeyHash(db, 'k-1')).toBeUndefined()
    await expect(addApiKey(db, { hash: 'k-1', shop: 'elsewhere', label: 'x', createdAt: 'x' })).rejects.toMatchObject({
      broken: 'api_keys.hash',
    })
  })

  test('adoptions and limits: the last one counts, per shop, and the name behind them is kept', async () => {
    const limit = { shop: SHOP, part: 'rocker-stud', limit: 'groove-depth-max' }
    expect(await adoptLimit(db, { ...limit, on: '2031-02-01' }, foreman)).toEqual({ kind: 'written' })
    expect(await adoptLimit(db, { ...limit, on: '2031-02-02' }, foreman)).toEqual({ kind: 'written' })
    expect(await setShopLimit(db, { ...limit, value: '0.005 in', note: null, on: '2031-02-01' }, foreman)).toEqual({ kind: 'written' })
    expect(await setShopLimit(db, { ...limit, value: '0.004 in', note: 'seen two break', on: '2031-02-03' }, foreman)).toEqual({
      kind: 'written',
    })
    await adoptLimit(db, { ...limit, shop: 'elsewhere', on: '2031-02-04' }, foreman)
    expect(await adoptionsOf(db, SHOP)).toEqual([{ ...limit, by: 'c-foreman', on: '2031-02-02' }])
    expect(await limitsOf(db, SHOP)).toEqual([{ ...limit, value: '0.004 in', note: 'seen two break', by: 'c-foreman', on: '2031-02-03' }])
    expect(await limitsOf(db, 'elsewhere')).toEqual([])
    expect((await disclosuresFor(db, SHOP, ['c-foreman'])).map((d) => d.text)).toEqual(['the foreman'])
  })

  test('an adoption under a salt that is not in force asks to commit again, and is not written', async () => {
    const limit = { shop: SHOP, part: 'valve', limit: 'margin-min' }
    await adoptLimit(db, { ...limit, on: '2031-02-01' }, foreman)
    const other = disclosure('c-other', 'the foreman', '0b'.repeat(16))
    expect(await adoptLimit(db, { ...limit, on: '2031-02-02' }, other)).toEqual({ kind: 'resalt' })
    expect(await adoptionsOf(db, SHOP)).toEqual([{ ...limit, by: 'c-foreman', on: '2031-02-01' }])
  })

  test('an endpoint is found by its id', async () => {
    const endpoint = { id: 'ep-1', shop: SHOP, secret: 'whsec_x', createdAt: shop.createdAt }
    await addEndpoint(db, endpoint)
    expect(await endpointById(db, 'ep-1')).toEqual(endpoint)
    expect(await endpointById(db, 'ep-2')).toBeUndefined()
    expect(await receiptOf(db, 'ep-1', 'msg-1')).toBeUndefined()
    await expect(addEndpoint(db, endpoint)).rejects.toMatchObject({ broken: 'hook_endpoints.id' })
  })

  test('the ledger is read page by page', async () => {
    for (const id of ['d-1', 'd-2', 'd-3']) await appendDecision(db, SHOP, appending(id))
    const ids = async (seq: number, limit: number) => (await decisionsAfter(db, SHOP, seq, limit)).map((row) => row.id)
    expect(await ids(0, 2)).toEqual(['d-1', 'd-2'])
    expect(await ids(2, 2)).toEqual(['d-3'])
    expect(await ids(3, 2)).toEqual([])
    expect(await editionByHash(db, 'unknown')).toBeUndefined()
  })
})
