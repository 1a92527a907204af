import { decisionsOfJob } from '../store/decisions.ts'
import type { Shop } from '../store/shops.ts'
import type { Body } from '../verdict/body.ts'
import { promiseId, type Promised } from '../verdict/promised.ts'
import type { Sheet } from '../verdict/sheet.ts'
import type { Service } from './service.ts'

/** The last decision whose work came back, and what had to turn out by all decisions of the job and has not yet. */
export interface OrderCheckedAgainst {
  readonly id: string
  readonly hash: string
  readonly promised: readonly Promised[]
}

/**
 * For a returned sheet: what the job's decisions so far still wait for. A line stays until a sheet of returned work shows
 * that it turned out, however many sheets come in between. Undefined for received work, or where the job has no decision.
 * @throws StoreTrouble
 */
export async function orderBehind(service: Service, shop: Shop | undefined, sheet: Sheet): Promise<OrderCheckedAgainst | undefined> {
  if (shop === undefined || sheet.stage !== 'returned') return undefined
  const decisions = (await decisionsOfJob(service.db, shop.id, sheet.job)).filter((d) => d.engine === sheet.engine)
  const last = decisions[decisions.length - 1]
  if (last === undefined) return undefined
  const waiting = new Map<string, Promised>()
  for (const decision of decisions) {
    const body = JSON.parse(decision.body) as Body
    for (const { part, at, steps, provided } of body.verdicts) {
      for (const step of steps) if (step.outcome === 'met') waiting.delete(`${part}@${at} ${step.rule}`)
      for (const { rule, index } of provided) waiting.set(`${part}@${at} ${promiseId(rule, index)}`, { part, at, rule, index })
    }
  }
  return { id: last.id, hash: last.hash, promised: [...waiting.values()] }
}
