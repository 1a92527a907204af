/** The people who answer for what a shop keeps: named by whoever enters it, and kept as commitments beside it. */
import * as z from 'zod'
import { disclosuresFor, type Disclosed, type Disclosure } from '../store/disclosures.ts'
import { StoreTrouble } from '../store/trouble.ts'
import { disclosuresOf, RESALTS } from './commitments.ts'
import type { Service } from './service.ts'

const LONGEST_NAME = 120

/** A person's name as it is entered: something to call somebody by. */
export const personName = z
  .string()
  .trim()
  .min(1, 'write the name of the person who answers for it')
  .max(LONGEST_NAME)
  .regex(/\p{L}/u, 'write the name of the person who answers for it')

/**
 * Writes something that a named person answers for, and answers with the commitment to the name.
 * @param write called again with another commitment where the name got another salt in between
 * @throws StoreTrouble
 */
export async function signedBy(service: Service, shop: string, name: string, write: (by: Disclosure) => Promise<Disclosed>): Promise<void> {
  for (let tried = 0; tried < RESALTS; tried++) {
    const by = (await disclosuresOf(service, shop, 'name', [name])).get(name)
    if (by === undefined) throw new Error('A name was not committed to.')
    if ((await write(by)).kind === 'written') return
  }
  throw new StoreTrouble('busy', 'writing a name', 'RESALT')
}

/** The names that commitments of a shop stand for; null where the name was erased. @throws StoreTrouble */
export async function namesBehind(
  service: Service,
  shop: string,
  commitments: readonly string[],
): Promise<ReadonlyMap<string, string | null>> {
  const known = await disclosuresFor(service.db, shop, [...new Set(commitments)])
  return new Map(known.map(({ commitment, text }) => [commitment, text]))
}
