/** Decisions to enter, as small as a ledger allows. */
import type { Appending, Made } from '../../src/store/append.ts'
import type { Database } from '../../src/store/database.ts'
import type { Disclosure } from '../../src/store/disclosures.ts'

export const SHOP = 'quarry-lane'
export const EDITION = { hash: 'e'.repeat(64), content: '{"rules":[]}' }

export function made(id: string, seq: number, change: Partial<Made['row']> = {}, disclosures: readonly Disclosure[] = []): Made {
  const row = {
    id,
    job: 'job-1',
    engine: 'QL-8S',
    stage: 'teardown',
    hash: '0'.repeat(64),
    body: `{"id":"${id}"}`,
    envelope: JSON.stringify({ id, seq }),
    receivedAt: '2031-04-02T10:15:00+02:00',
    door: 'cli' as const,
    ...change,
  }
  return { row, disclosures }
}

/** A decision with this id, with more where a test wants more. */
export function appending(id: string, more: Partial<Appending> = {}): Appending {
  return { edition: EDITION, make: (seq) => made(id, seq), ...more }
}

export function disclosure(commitment: string, text: string, salt: string): Disclosure {
  return { commitment, kind: 'name', salt, text }
}

/** Rows in each table that a decision writes to. */
export async function rowCounts(db: Database): Promise<Record<string, unknown>> {
  const tables = ['decisions', 'editions', 'disclosures', 'receipts']
  const counts = tables.map((table) => `(select count(*) from ${table}) as ${table}`).join(', ')
  const { rows } = await db.$client.execute(`select ${counts}`)
  return { ...rows[0] }
}
