import { describe, expect, test } from 'vitest'
import { hashOfBody, LedgerEntry, verifyEntry } from '../../src/ledger/entry.ts'

const body = { parts: [{ part: 'valve', at: '3E', disposition: 'replace' }], evaluator: 1 }
const envelope = {
  id: 'd-1',
  shop: 'quarry-lane',
  seq: 1,
  receivedAt: '2031-04-02T10:15:00+02:00',
  door: 'form',
  plan: { steps: [] },
} as const

describe('a ledger entry', () => {
  test('holds when its hash is its body’s, whatever the order of keys', async () => {
    const turned = { evaluator: 1, parts: [{ disposition: 'replace', at: '3E', part: 'valve' }] }
    const entry = LedgerEntry.parse({ body: turned, hash: await hashOfBody(body), envelope })
    expect(await verifyEntry(entry)).toBeUndefined()
  })

  test('names both hashes when the body was altered', async () => {
    const hash = await hashOfBody(body)
    const altered = { ...body, evaluator: 2 }
    const found = await verifyEntry(LedgerEntry.parse({ body: altered, hash, envelope }))
    expect(found).toMatchObject({ code: 'entry-altered', pointer: '/hash' })
    expect(found?.says).toContain(hash)
    expect(found?.says).toContain(await hashOfBody(altered))
  })

  test.each([
    ['a sequence that starts at nought', { envelope: { ...envelope, seq: 0 } }],
    ['an unknown door', { envelope: { ...envelope, door: 'window' } }],
    ['a time without a zone', { envelope: { ...envelope, receivedAt: '2031-04-02T10:15:00' } }],
    ['an unknown key', { envelope: { ...envelope, colour: 'blue' } }],
    ['a hash in upper case', { hash: 'A'.repeat(64) }],
  ])('refuses %s', (_name, change) => {
    expect(LedgerEntry.safeParse({ body, hash: '0'.repeat(64), envelope, ...change }).success).toBe(false)
  })
})
