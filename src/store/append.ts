/**
 * The ledger's one way to grow. A decision, the edition that made it, the names behind its commitments and the receipt of the message
 * that asked for it go in as one atomic batch, which fails as a whole unless the decision's number is the shop's next.
 */
import { sql } from 'drizzle-orm'
import { together } from './database.ts'
import type { Database, Write } from './database.ts'
import { decisions, entering } from './decisions.ts'
import type { Decision } from './decisions.ts'
import { disclosing, wantsResalt } from './disclosures.ts'
import type { Disclosure } from './disclosures.ts'
import { editions, keeping } from './editions.ts'
import type { Edition } from './editions.ts'
import { receipting, receipts } from './endpoints.ts'
import type { Receipt } from './endpoints.ts'
import { jittered } from './patience.ts'
import type { Patience } from './patience.ts'
import { guarded, StoreTrouble } from './trouble.ts'

/** What is made once the decision's number is known. */
export interface Made {
  readonly row: Omit<Decision, 'shop' | 'seq'>
  /** Names and notes behind the commitments in the body. */
  readonly disclosures: readonly Disclosure[]
  /** Further statements that stand or fall with the decision. */
  readonly beside?: readonly Write[] | undefined
}

export interface Appending {
  /** The edition that decided; its content is sent only when the database has not kept it yet. */
  readonly edition: Pick<Edition, 'hash' | 'content'>
  /** Given when the findings came by webhook: the message, which is answered once. */
  readonly receipt?: Pick<Receipt, 'endpoint' | 'messageId' | 'bodyHash'> | undefined
  /** Called with the number that the decision would have; again, with another, when somebody else took that one. */
  readonly make: (seq: number) => Made | Promise<Made>
}

/**
 * entered: the decision stands. repeat: the message was answered before, by that decision; `bodyHash` is what it held then.
 * resalt: a name or note has another salt by now; ask `saltFor` again and decide again. Only `entered` has written anything.
 */
export type Appended =
  | { readonly kind: 'entered'; readonly id: string; readonly seq: number }
  | { readonly kind: 'repeat'; readonly decisionId: string; readonly bodyHash: string }
  | { readonly kind: 'resalt' }

/**
 * Enters a shop's next decision. Takes one read and one batch when nobody interferes.
 * @throws StoreTrouble; after `unreachable` the decision may or may not stand: look it up by its id. What `make` throws is passed on.
 */
export async function appendDecision(db: Database, shop: string, entry: Appending, patience: Patience = jittered()): Promise<Appended> {
  for (let tried = 1; ; tried += 1) {
    const outcome = await attempt(db, shop, entry)
    if (outcome.kind !== 'lost') return outcome
    if (tried >= patience.attempts) throw new StoreTrouble('busy', DURING, outcome.detail)
    await patience.pause(tried)
  }
}

const DURING = 'entering a decision'

async function attempt(
  db: Database,
  shop: string,
  entry: Appending,
): Promise<Appended | { readonly kind: 'lost'; readonly detail: string }> {
  const found = await standing(db, shop, entry)
  if (found.decisionId !== null && found.bodyHash !== null) {
    return { kind: 'repeat', decisionId: found.decisionId, bodyHash: found.bodyHash }
  }
  const seq = found.head + 1
  const { row, disclosures, beside = [] } = await entry.make(seq)
  const { edition, receipt } = entry
  const writes = [
    entering(db, { ...row, shop, seq }),
    ...(found.kept === 1 ? [] : [keeping(db, { ...edition, firstUsedAt: row.receivedAt })]),
    ...disclosures.map((d) => disclosing(db, shop, d)),
    ...(receipt === undefined ? [] : [receipting(db, { ...receipt, decisionId: row.id, receivedAt: row.receivedAt })]),
    ...beside,
  ]
  try {
    await together(db, DURING, writes)
    return { kind: 'entered', id: row.id, seq }
  } catch (error) {
    if (!(error instanceof StoreTrouble)) throw error
    if (wantsResalt(error)) return { kind: 'resalt' }
    // The guard's null, the same message taken in by another, or a locked file: look again and try with the new head.
    if (error.broken === 'decisions.seq' || error.broken?.startsWith('receipts.') === true || error.code === 'busy') {
      return { kind: 'lost', detail: error.broken === 'decisions.seq' ? 'HEAD_MOVED' : error.detail }
    }
    throw error
  }
}

interface Standing {
  readonly head: number
  /** 1 when the edition is kept already. */
  readonly kept: number | null
  readonly decisionId: string | null
  readonly bodyHash: string | null
}

/** All that has to be known before a try, in one statement. */
async function standing(db: Database, shop: string, { edition, receipt }: Appending): Promise<Standing> {
  const taken = sql`from ${receipts} where ${receipts.endpoint} = ${receipt?.endpoint ?? null}
    and ${receipts.messageId} = ${receipt?.messageId ?? null}`
  const asked = sql`select
    (select coalesce(max(${decisions.seq}), 0) from ${decisions} where ${decisions.shop} = ${shop}) as "head",
    (select 1 from ${editions} where ${editions.hash} = ${edition.hash}) as "kept",
    (select ${receipts.decisionId} ${taken}) as "decisionId",
    (select ${receipts.bodyHash} ${taken}) as "bodyHash"`
  return guarded('looking for the head', () => db.get<Standing>(asked))
}
