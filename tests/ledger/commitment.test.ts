import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { commit } from '../../src/ledger/commitment.ts'
import { Refused } from '../../src/quantity/fault.ts'

const salts = fc.uint8Array({ minLength: 16, maxLength: 64 }).map((b) => Buffer.from(b).toString('hex'))
const texts = fc.string({ unit: 'grapheme', maxLength: 60 })

describe('a commitment', () => {
  test('is the hash of the documented text, computed here by another hand', async () => {
    const salt = '000102030405060708090a0b0c0d0e0f'
    const written = `["witnessmark/commitment/1","${salt}","bench 2 \\"the quiet one\\""]`
    const expected = createHash('sha256').update(written, 'utf8').digest('hex')
    expect(await commit(salt, 'bench 2 "the quiet one"')).toBe(expected)
  })

  test('is the same for the same salt and text', async () => {
    await fc.assert(
      fc.asyncProperty(salts, texts, async (salt, text) => {
        expect(await commit(salt, text)).toBe(await commit(salt, text))
      }),
    )
  })

  test('differs when the salt or the text differs', async () => {
    await fc.assert(
      fc.asyncProperty(salts, texts, salts, texts, async (salt, text, otherSalt, otherText) => {
        fc.pre(salt !== otherSalt && text !== otherText)
        const all = await Promise.all([commit(salt, text), commit(otherSalt, text), commit(salt, otherText), commit(otherSalt, otherText)])
        expect(new Set(all).size).toBe(4)
      }),
    )
  })

  test('has no doubtful border between salt and text', async () => {
    await fc.assert(
      fc.asyncProperty(salts, fc.uint8Array({ minLength: 1, maxLength: 8 }), texts, async (salt, moved, text) => {
        const hex = Buffer.from(moved).toString('hex')
        fc.pre(salt.length + hex.length <= 128)
        expect(await commit(salt + hex, text)).not.toBe(await commit(salt, hex + text))
        expect(await commit(salt, `","${text}`)).not.toBe(await commit(salt, text))
      }),
    )
  })

  test.each([
    ['too short', '00'.repeat(15)],
    ['upper case', 'AB'.repeat(16)],
    ['half a byte', `${'00'.repeat(16)}0`],
    ['not hexadecimal', 'zz'.repeat(16)],
    ['empty', ''],
  ])('refuses a salt that is %s', async (_name, salt) => {
    await expect(commit(salt, 'bench 2')).rejects.toThrow(Refused)
  })
})
