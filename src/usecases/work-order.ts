import { decisionsOfJob } from '../store/decisions.ts'
import type { Shop } from '../store/shops.ts'
import type { Body } from '../verdict/body.ts'
import type { Promised } from '../verdict/promised.ts'
import type { Sheet } from '../verdict/sheet.ts'
import type { Service } from './service.ts'

/** The decision whose work order came back, and what had to turn out by it. */
export interface OrderCheckedAgainst {
  readonly id: string
  readonly hash: string
  readonly promised: readonly Promised[]
}

/** For a returned sheet: the job's last decision on received work; undefined for any other sheet, or where there is none. @throws StoreTrouble */
export async function orderBehind(service: Service, shop: Shop | undefined, sheet: Sheet): Promise<OrderCheckedAgainst | undefined> {
  if (shop === undefined || sheet.stage !== 'returned') return undefined
  const received = (await decisionsOfJob(service.db, shop.id, sheet.job)).filter((d) => d.stage === 'received' && d.engine === sheet.engine)
  const last = received[received.length - 1]
  if (last === undefined) return undefined
  const body = JSON.parse(last.body) as Body
  const promised = body.verdicts.flatMap((v) => v.provided.map(({ rule, index }) => ({ part: v.part, at: v.at, rule, index })))
  return { id: last.id, hash: last.hash, promised }
}
