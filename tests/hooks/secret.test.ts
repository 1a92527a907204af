import fc from 'fast-check'
import { Webhook } from 'standardwebhooks'
import { describe, expect, it } from 'vitest'
import { keyOfSecret, secretFrom } from '../../src/hooks/secret.ts'
import { Refused } from '../../src/quantity/fault.ts'

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex')

describe('a secret', () => {
  it('is the bytes that it was made from, and those that the library takes from it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 24, maxLength: 64 }), (bytes) => {
        const secret = secretFrom(hex(bytes))
        expect(hex(keyOfSecret(secret))).toBe(hex(bytes))
        const at = new Date(1_900_000_000_000)
        expect(new Webhook(keyOfSecret(secret), { format: 'raw' }).sign('m', at, '{}')).toBe(new Webhook(secret).sign('m', at, '{}'))
      }),
    )
  })

  const good = Buffer.alloc(32, 7).toString('base64')
  it.each([
    ['a signature in its place', 'v1,K5oZfzN95Z9UVu1EsfQmfVNQhnkZ2pj9o9NDN/H/pI4=', /begins a signature/],
    ['without its prefix', good, /does not start with "whsec_"/],
    ['with the prefix in capitals', `WHSEC_${good}`, /does not start with "whsec_"/],
    ['with a line end', `whsec_${good}\n`, /white space/],
    ['cut short', `whsec_${good.slice(0, -2)}`, /cut short/],
    ['in the alphabet of URLs', `whsec_${good.slice(0, 40)}-_A=`, /no base64/],
    ['too short', `whsec_${Buffer.alloc(23).toString('base64')}`, /holds 23 bytes/],
    ['too long', `whsec_${Buffer.alloc(65).toString('base64')}`, /holds 65 bytes/],
    ['empty', 'whsec_', /holds 0 bytes/],
  ])('%s is refused in words that don’t repeat it', (_name, secret, says) => {
    let thrown: unknown
    try {
      keyOfSecret(secret)
    } catch (error) {
      thrown = error
    }
    expect(thrown).toBeInstanceOf(Refused)
    const [found] = thrown instanceof Refused ? thrown.faults : []
    expect(found).toMatchObject({ code: 'hook-secret', pointer: '/secret', says: expect.stringMatching(says) })
    if (secret.length > 8) expect(JSON.stringify(found)).not.toContain(secret.trim().slice(8))
  })
})
