import { Hono } from 'hono'
import { fault } from '../quantity/fault.ts'
import { listDecisions } from '../usecases/read.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'
import { problem, Stopped } from './problem.ts'

/** GET /v1/decisions?job=…: one line for each decision of a job, oldest first. */
export const jobDecisions = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/', async (c) => {
    const job = c.req.query('job')
    if (job === undefined || job === '') {
      throw new Stopped(
        problem(400, 'query-refused', [fault('field-missing', '/job', 'The job is missing.', 'Ask as GET /v1/decisions?job=<job>.')]),
      )
    }
    return c.json({ job, decisions: await listDecisions(service, c.var.shop, job) })
  })
