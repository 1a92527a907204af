import { commit } from '../ledger/commitment.ts'
import { saltFor, type Disclosure } from '../store/disclosures.ts'
import type { Commitments } from '../verdict/enter.ts'
import type { Sheet } from '../verdict/sheet.ts'
import type { Service } from './service.ts'

/** Salts of 256 bits. */
const SALT_BYTES = 32

/** Stands for names and notes where nothing is recorded. */
export const UNCOMMITTED: Commitments = { name: () => 'not recorded', note: () => 'not recorded' }

/**
 * Commitments to the names and notes of a sheet, and the disclosures that go into the store with the decision. One person
 * has one salt in a shop, so that the same sheet in the same shop gives the same bytes.
 */
export async function commitmentsFor(
  service: Service,
  shop: string,
  sheet: Sheet,
): Promise<{ readonly commitments: Commitments; readonly disclosures: readonly Disclosure[] }> {
  const names = await disclosuresOf(
    service,
    shop,
    'name',
    sheet.findings.map((f) => f.by),
  )
  const notes = await disclosuresOf(
    service,
    shop,
    'note',
    sheet.findings.map((f) => f.note),
  )
  return {
    commitments: { name: (text) => of(names, text), note: (text) => of(notes, text) },
    disclosures: [...names.values(), ...notes.values()],
  }
}

/** Commitments to texts of one kind, each with the salt that the shop has for it or a new one. @throws StoreTrouble */
export async function disclosuresOf(
  service: Service,
  shop: string,
  kind: Disclosure['kind'],
  texts: readonly (string | undefined)[],
): Promise<ReadonlyMap<string, Disclosure>> {
  const said = [...new Set(texts.filter((t): t is string => t !== undefined))].sort()
  const salts = await saltFor(service.db, shop, kind, said)
  const made = new Map<string, Disclosure>()
  for (const text of said) {
    const salt = salts.get(text) ?? service.randomHex(SALT_BYTES)
    made.set(text, { commitment: await commit(salt, text), kind, salt, text })
  }
  return made
}

/** A name's salt can change only while another entry of the same shop is written beside this one. */
export const RESALTS = 5

function of(made: ReadonlyMap<string, Disclosure>, text: string): string {
  const found = made.get(text)
  if (found === undefined) throw new Error('A name or note was not prepared before the sheet was read.')
  return found.commitment
}
