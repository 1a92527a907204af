/** What the ledger holds for one decision: a body, the hash of its canonical bytes, and an envelope round it. */
import * as z from 'zod'
import { fault } from '../quantity/fault.ts'
import type { Fault } from '../quantity/fault.ts'
import { canonicalBytes } from './canonical.ts'
import { sha256Hex } from './hash.ts'

/** By which door the findings came in. */
export const DOORS = ['cli', 'http', 'hook', 'form'] as const
export const Door = z.enum(DOORS)
export type Door = z.infer<typeof Door>

/** What is true of the entry and is not hashed with the body: who, when, in which words. */
export const Envelope = z.strictObject({
  id: z.string().min(1),
  shop: z.string().min(1),
  /** 1 for a shop's first entry, then without gaps. */
  seq: z.int().min(1),
  /** RFC 3339 with an offset. */
  receivedAt: z.iso.datetime({ offset: true }),
  door: Door,
  plan: z.unknown(),
  words: z.unknown().optional(),
})
export type Envelope = z.infer<typeof Envelope>

export const LedgerEntry = z.strictObject({
  /** Any JSON value; this room does not look into it. */
  body: z.unknown(),
  /** SHA-256 of the body's canonical bytes, 64 lower-case hexadecimal digits. */
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  envelope: Envelope,
})
export type LedgerEntry = z.infer<typeof LedgerEntry>

/** The hash under which a body is entered. Refuses a body that is not JSON, as `canonicalBytes` does. */
export async function hashOfBody(body: unknown): Promise<string> {
  return sha256Hex(canonicalBytes(body))
}

/** Undefined when the entry's hash is its body's; otherwise the fault, holding the place and both hashes. */
export async function verifyEntry(entry: LedgerEntry): Promise<Fault | undefined> {
  const computed = await hashOfBody(entry.body)
  if (computed === entry.hash) return undefined
  return fault(
    'entry-altered',
    '/hash',
    `Entry ${entry.envelope.seq} (${entry.envelope.id}) has the hash ${entry.hash}, but its body has ${computed}.`,
    'The body or the hash was altered after it was entered; compare the entry with a backup or an exported copy.',
  )
}
