import fc from 'fast-check'
import { Webhook } from 'standardwebhooks'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { keyOfSecret } from '../../src/hooks/secret.ts'
import { messageFault, type MessageHeaders } from '../../src/hooks/verify.ts'

/**
 * The published example of the scheme, as the specification's own libraries test it: secret, id, timestamp and payload with the signature
 * that belongs to them (standard-webhooks, libraries' sign test; from memory).
 */
const PUBLISHED = {
  secret: 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw',
  id: 'msg_p5jXN8AQM9LWM0D4loKWxJek',
  timestamp: '1614265330',
  raw: '{"test": 2432232314}',
  signature: 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
}
const key = keyOfSecret(PUBLISHED.secret)
const NOW_S = Number(PUBLISHED.timestamp)

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: NOW_S * 1000 })
})
afterEach(() => {
  vi.useRealTimers()
})

const headers = (change: Partial<MessageHeaders> = {}): MessageHeaders => ({
  id: PUBLISHED.id,
  timestamp: PUBLISHED.timestamp,
  signature: PUBLISHED.signature,
  ...change,
})
const codeOf = (given: MessageHeaders, raw = PUBLISHED.raw): string | undefined => messageFault(key, given, raw)?.code

const signedAt = (timestamp: number): MessageHeaders =>
  headers({
    timestamp: String(timestamp),
    signature: new Webhook(PUBLISHED.secret).sign(PUBLISHED.id, new Date(timestamp * 1000), PUBLISHED.raw),
  })

describe('a message', () => {
  it('that is signed as the published example is taken', () => {
    expect(codeOf(headers())).toBeUndefined()
  })

  it('with several signatures, one of them right, is taken', () => {
    expect(codeOf(headers({ signature: `v2,AAAA v1,AAAA ${PUBLISHED.signature}` }))).toBeUndefined()
  })

  it.each([
    [-301, 'message-stale'],
    [-300, undefined],
    [0, undefined],
    [300, undefined],
    [301, 'message-stale'],
  ])('signed %i seconds from now: %s', (off, code) => {
    expect(codeOf(signedAt(NOW_S + off))).toBe(code)
  })

  it.each([
    ['another id', { id: 'msg_other' }],
    ['another time, within the five minutes', { timestamp: String(NOW_S + 1) }],
    ['a signature of nothing', { signature: 'v1,' }],
    ['a signature of another version', { signature: PUBLISHED.signature.replace('v1', 'v1a') }],
    ['a signature without its version', { signature: PUBLISHED.signature.slice(3) }],
    ['words for a signature', { signature: 'v1 none' }],
  ])('%s: unsigned', (_name, change) => {
    expect(codeOf(headers(change))).toBe('message-unsigned')
  })

  it('whose body differs by a byte, or was written anew, is unsigned', () => {
    expect(codeOf(headers(), `${PUBLISHED.raw} `)).toBe('message-unsigned')
    expect(codeOf(headers(), JSON.stringify(JSON.parse(PUBLISHED.raw)))).toBe('message-unsigned')
  })

  it('signed with another key is unsigned, whatever the key', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 24, maxLength: 64 }), (bytes) => {
        fc.pre(Buffer.compare(bytes, key) !== 0)
        expect(messageFault(Uint8Array.from(bytes), headers(), PUBLISHED.raw)?.code).toBe('message-unsigned')
      }),
    )
  })

  it.each([
    ['without an id', { id: undefined }, 'webhook-id'],
    ['without a time', { timestamp: undefined }, 'webhook-timestamp'],
    ['without a signature', { signature: undefined }, 'webhook-signature'],
    ['whose time has more than digits', { timestamp: `${PUBLISHED.timestamp}x` }, 'webhook-timestamp'],
    ['whose time is a fraction', { timestamp: '1614265330.5' }, 'webhook-timestamp'],
    ['whose time is below nothing', { timestamp: '-1' }, 'webhook-timestamp'],
    ['whose id has a full stop', { id: 'msg.1' }, 'webhook-id'],
    ['whose id is empty', { id: '' }, 'webhook-id'],
    ['whose id is overlong', { id: 'm'.repeat(201) }, 'webhook-id'],
  ])('%s is told so, and which header', (_name, change, header) => {
    const found = messageFault(key, headers(change), PUBLISHED.raw)
    expect(found).toMatchObject({ code: 'message-headers', says: expect.stringContaining(header) })
  })

  it('is told to be stale by its headers alone: with a wrong signature just as with the right one', () => {
    const old = signedAt(NOW_S - 4000)
    expect(messageFault(key, { ...old, signature: 'v1,AAAA' }, PUBLISHED.raw)).toEqual(messageFault(key, old, PUBLISHED.raw))
  })
})
