import { expect, test } from 'vitest'
import { sha256Hex } from '../../src/ledger/hash.ts'

const bytes = (text: string) => new TextEncoder().encode(text)

// NIST, examples of FIPS 180-4 (SHA-256: "abc", and the 448-bit two-block message).
test('the NIST examples', async () => {
  expect(await sha256Hex(bytes('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  expect(await sha256Hex(bytes('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'))).toBe(
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  )
})
