import { afterAll, beforeAll, expect, it } from 'vitest'
import { sha256Hex } from '../../src/ledger/hash.ts'
import { openHouse, post, SHEET, type House } from './house.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

it('an edition is to be had by the hash that a decision names, and its bytes have that hash', async () => {
  const answer = await house.app.request('/v1/decisions', post(house.key, SHEET))
  const { edition } = (await answer.json()) as { readonly edition: string }
  const asked = (key: string, hash: string) =>
    house.app.request(`/v1/rulebook/editions/${hash}`, { headers: { authorization: `Bearer ${key}` } })
  const found = await asked(house.key, edition)
  expect(found.status).toBe(200)
  const bytes = new Uint8Array(await found.arrayBuffer())
  expect(await sha256Hex(bytes)).toBe(edition)
  expect(Object.keys(JSON.parse(new TextDecoder().decode(bytes)) as object)).toEqual(['form', 'rules', 'shop'])
  expect((await asked(house.key, '0'.repeat(64))).status).toBe(404)
  expect((await asked('wm_no-such-key', edition)).status).toBe(401)
})
