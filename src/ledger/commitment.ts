/**
 * What stands in a hashed body instead of a person's name or a free-text note. The body holds the commitment;
 * the salt and the text stand beside the record and can be erased, after which the record still verifies and nobody
 * can find the name out by trying names.
 *
 * The commitment is SHA-256 over the canonical JSON (RFC 8785) of `["witnessmark/commitment/1", salt, text]`. JSON quotes and
 * escapes each member, so salt and text can't run into each other, and the first member keeps these hashes
 * apart from every other hash of ours. The text is taken as it was typed, without Unicode normalisation.
 */
import { fault, Refused } from '../quantity/fault.ts'
import { canonicalBytes } from './canonical.ts'
import { sha256Hex } from './hash.ts'

/** Goes into every commitment; a change of the encoding is a new number, and this one stays. */
export const COMMITMENT_DOMAIN = 'witnessmark/commitment/1'

/** A salt that can't be guessed: at least 128 bits, as lower-case hexadecimal in whole bytes. */
const SALT = /^(?:[0-9a-f]{2}){16,64}$/

/**
 * The commitment to a text under a salt, as 64 lower-case hexadecimal digits.
 * @param salt 16 to 64 random bytes as lower-case hexadecimal; one spelling only, so that one salt is one commitment.
 * @param text the name or note as typed.
 * @throws Refused when the salt is too short or not hexadecimal, or the text is not well-formed Unicode.
 */
export async function commit(salt: string, text: string): Promise<string> {
  if (!SALT.test(salt)) {
    throw new Refused([
      fault('salt-unfit', '/salt', 'The salt is not 16 to 64 bytes in lower-case hexadecimal.', 'Draw at least 16 random bytes.'),
    ])
  }
  return sha256Hex(canonicalBytes([COMMITMENT_DOMAIN, salt, text]))
}
