import { Hono } from 'hono'
import { ledgerAnswers } from '../usecases/health.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'

/** GET /healthz: 200 when the rulebook is loaded and the ledger answers; the ledger's trouble otherwise. */
export const health = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/', async (c) => {
    await ledgerAnswers(service)
    return c.json({ status: 'ok', rules: service.book.rules.size })
  })
