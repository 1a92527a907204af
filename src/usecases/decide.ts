import { canonicalBytes } from '../ledger/canonical.ts'
import type { Door } from '../ledger/entry.ts'
import { sha256Hex } from '../ledger/hash.ts'
import { appendDecision } from '../store/append.ts'
import type { Receipt } from '../store/endpoints.ts'
import type { Shop } from '../store/shops.ts'
import { StoreTrouble } from '../store/trouble.ts'
import { bodyOf } from '../verdict/body.ts'
import { enterSheet } from '../verdict/enter.ts'
import { judge } from '../verdict/judge.ts'
import type { Sheet } from '../verdict/sheet.ts'
import { commitmentsFor, RESALTS } from './commitments.ts'
import { readDecision } from './read.ts'
import { recordOf, wordsOf, type DecisionRecord } from './record.ts'
import type { Service } from './service.ts'
import { shopLayer } from './shop-layer.ts'
import { orderBehind } from './work-order.ts'

export interface DecideOptions {
  readonly door: Door
  /** Given when the findings came by webhook: the message is answered once. */
  readonly receipt?: Pick<Receipt, 'endpoint' | 'messageId' | 'bodyHash'>
}

export type Decided =
  | { readonly kind: 'entered'; readonly record: DecisionRecord }
  /** The same message was answered before: the first answer, and what the message held then. */
  | { readonly kind: 'repeat'; readonly record: DecisionRecord; readonly bodyHash: string }

/**
 * Computes and enters the ledger: no row, no answer.
 * @throws Refused with every fault of the sheet; StoreTrouble when the ledger can't be written
 */
export async function decideSheet(service: Service, shop: Shop, sheet: Sheet, options: DecideOptions): Promise<Decided> {
  const { book, db } = service
  const order = await orderBehind(service, shop, sheet)
  const layer = await shopLayer(db, book, shop, sheet.engine)
  const edition = await service.editions.of(layer)
  for (let tried = 0; tried < RESALTS; tried++) {
    const { commitments, disclosures } = await commitmentsFor(service, shop.id, sheet)
    const entered = enterSheet(book.book, sheet, layer, commitments)
    const judgement = await judge(book, entered, layer, { secondOpinion: true, promised: order?.promised ?? [] })
    const body = bodyOf(entered, judgement, edition.hash, layer.confidence, order?.hash)
    const bytes = canonicalBytes(body)
    const hash = await sha256Hex(bytes)
    const told = wordsOf(book, entered, judgement)
    const [id, receivedAt] = [service.newId(), service.now()]
    const appended = await appendDecision(db, shop.id, {
      edition,
      receipt: options.receipt,
      make: (seq) => ({
        row: {
          id,
          job: body.job,
          engine: body.engine,
          stage: body.stage,
          hash,
          body: new TextDecoder().decode(bytes),
          envelope: JSON.stringify({ id, shop: shop.id, seq, receivedAt, door: options.door, plan: told.plan, words: told.words }),
          receivedAt,
          door: options.door,
        },
        disclosures,
      }),
    })
    if (appended.kind === 'entered') return { kind: 'entered', record: recordOf(body, told, { id, receivedAt, seq: appended.seq, hash }) }
    if (appended.kind === 'repeat') {
      const record = await readDecision(service, shop, appended.decisionId)
      if (record === undefined) throw new StoreTrouble('unexpected', 'reading a repeated message’s decision', 'NO_ROW')
      return { kind: 'repeat', record, bodyHash: appended.bodyHash }
    }
  }
  throw new StoreTrouble('busy', 'entering a decision', 'RESALT')
}
