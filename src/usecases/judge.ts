import type { Shop } from '../store/shops.ts'
import { bodyOf } from '../verdict/body.ts'
import { enterSheet } from '../verdict/enter.ts'
import { judge } from '../verdict/judge.ts'
import type { Sheet } from '../verdict/sheet.ts'
import { UNCOMMITTED } from './commitments.ts'
import { recordOf, wordsOf, type DecisionRecord } from './record.ts'
import type { Service } from './service.ts'
import { shopLayer } from './shop-layer.ts'
import { orderBehind } from './work-order.ts'

/**
 * Computes and says "not recorded". Without a shop it judges by the trade's figures and the engine's sheet alone.
 * @throws Refused with every fault of the sheet
 */
export async function judgeSheet(service: Service, shop: Shop | undefined, sheet: Sheet): Promise<DecisionRecord> {
  const { book } = service
  const order = await orderBehind(service, shop, sheet)
  const layer = await shopLayer(service.db, book, shop, sheet.engine)
  const entered = enterSheet(book.book, sheet, layer, UNCOMMITTED)
  const judgement = await judge(book, entered, layer, { secondOpinion: true, promised: order?.promised ?? [] })
  const edition = await service.editions.of(layer)
  const body = bodyOf(entered, judgement, edition.hash, layer.confidence, order?.hash)
  return recordOf(body, wordsOf(book, entered, judgement), { says: book.book.phrases.notRecorded })
}
