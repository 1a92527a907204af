import { Hono } from 'hono'
import { readDecision } from '../usecases/read.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'
import { oneProblem, Stopped } from './problem.ts'

/** The address of a recorded decision. */
export const decisionPath = (record: Pick<DecisionRecord, 'id'>): string => `/v1/decisions/${encodeURIComponent(record.id ?? '')}`

/** GET /v1/decisions/{id}: a decision as it was answered. Another shop's is not there. */
export const decision = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/:id', async (c) => {
    const record = await readDecision(service, c.var.shop, c.req.param('id'))
    if (record === undefined)
      throw new Stopped(
        oneProblem(404, 'not-found', 'This shop has no decision of that id.', 'Look the job up: GET /v1/decisions?job=<job>.'),
      )
    return c.json(record)
  })
