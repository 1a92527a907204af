import * as z from 'zod'
import { decisionById, decisionsOfJob, type Decision } from '../store/decisions.ts'
import type { Shop } from '../store/shops.ts'
import type { Body } from '../verdict/body.ts'
import type { Plan } from '../verdict/plan.ts'
import { recordOf, type DecisionRecord, type Words } from './record.ts'
import type { Service } from './service.ts'

/** A shop's decision by its id, as it was answered when it was entered. @throws StoreTrouble */
export async function readDecision(service: Service, shop: Shop, id: string): Promise<DecisionRecord | undefined> {
  const row = await decisionById(service.db, shop.id, id)
  return row === undefined ? undefined : fromRow(row)
}

/** One line of a job's decisions. */
export interface DecisionLine {
  readonly id: string
  readonly job: string
  readonly engine: string
  readonly stage: string
  readonly receivedAt: string
  readonly ledger: { readonly seq: number; readonly hash: string }
}

/** The decisions of one job, oldest first. @throws StoreTrouble */
export async function listDecisions(service: Service, shop: Shop, job: string): Promise<readonly DecisionLine[]> {
  return (await decisionsOfJob(service.db, shop.id, job)).map(({ id, job: of, engine, stage, receivedAt, seq, hash }) => ({
    id,
    job: of,
    engine,
    stage,
    receivedAt,
    ledger: { seq, hash },
  }))
}

const stored = z.object({ plan: z.custom<Plan>(), words: z.custom<Words>() })

function fromRow(row: Decision): DecisionRecord {
  const { plan, words } = stored.parse(JSON.parse(row.envelope))
  return recordOf(JSON.parse(row.body) as Body, { plan, words }, { id: row.id, receivedAt: row.receivedAt, seq: row.seq, hash: row.hash })
}
