import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sha256Hex } from '../../src/ledger/hash.ts'
import { addApiKey, revokeApiKey } from '../../src/store/shops.ts'
import { newApiKey } from '../../src/usecases/api-key.ts'
import { openHouse, post, problemIn, SHEET, type House } from './house.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

const routes = [
  ['POST', '/v1/judgements'],
  ['POST', '/v1/decisions'],
  ['GET', '/v1/decisions?job=x'],
  ['GET', '/v1/decisions/some-id'],
] as const

describe.each(routes)('%s %s', (method, path) => {
  it.each([
    ['no key', undefined],
    ['a key that nobody has', `Bearer wm_${'0'.repeat(64)}`],
    ['a key of another make', 'Bearer sk_live_1234'],
    ['a hash for a key', 'HASH'],
    ['another scheme', 'Basic d206d20='],
    ['an empty key', 'Bearer '],
    ['two keys', 'Bearer a, Bearer b'],
  ])('%s: 401 with the mend, and nothing is entered', async (_name, given) => {
    const before = await house.rows()
    const authorization = given === 'HASH' ? `Bearer ${await sha256Hex(new TextEncoder().encode(house.key))}` : given
    const headers = { 'content-type': 'application/json', ...(authorization === undefined ? {} : { authorization }) }
    const response = await house.app.request(path, { method, headers, ...(method === 'POST' ? { body: JSON.stringify(SHEET) } : {}) })
    expect(response.headers.get('www-authenticate')).toBe('Bearer realm="witnessmark"')
    const text = await response.clone().text()
    const problem = await problemIn(response)
    expect(problem).toMatchObject({ status: 401, type: '/problems/unauthorised', errors: [{ code: 'unauthorised', pointer: '' }] })
    expect(problem.errors[0]?.mend).toContain('Bearer wm_')
    // The key is not repeated.
    if (given !== undefined && given.length > 12) expect(text).not.toContain(given.slice(7))
    expect(await house.rows()).toEqual(before)
  })
})

it('a key is asked for before the body is looked at', async () => {
  expect((await problemIn(await house.app.request('/v1/decisions', post(undefined, '{')))).status).toBe(401)
})

it('a revoked key no longer opens', async () => {
  const { key, hash } = await newApiKey(house.service)
  const { db } = house.service
  await addApiKey(db, { hash, shop: 'mill-race', label: 'lost', createdAt: house.service.now() })
  expect((await house.app.request('/v1/decisions?job=x', { headers: { authorization: `Bearer ${key}` } })).status).toBe(200)
  await revokeApiKey(db, 'mill-race', hash, house.service.now())
  expect((await house.app.request('/v1/decisions?job=x', { headers: { authorization: `Bearer ${key}` } })).status).toBe(401)
})

it('the database holds the hash of a key and not the key', async () => {
  const { rows } = await house.service.db.$client.execute('select * from api_keys')
  expect(JSON.stringify(rows)).not.toContain(house.key)
  expect(rows.map((row) => row['hash'])).toContain(await sha256Hex(new TextEncoder().encode(house.key)))
})
