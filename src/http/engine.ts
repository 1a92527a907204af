import { Hono } from 'hono'
import { readEngine } from '../usecases/engines.ts'
import { putEngine } from '../usecases/put-engine.ts'
import type { Service } from '../usecases/service.ts'
import { ENGINE_LIMIT, keepEntry } from './entry.ts'
import type { DoorEnv } from './env.ts'
import { oneProblem, Stopped } from './problem.ts'

/**
 * GET /v1/engines/{id}: an engine's sheet as it stands for the shop. PUT: the shop's own sheet of it, {by, sheet}; 201 where the shop had
 * none, else 200.
 */
export const engine = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>()
    .get('/:id', async (c) => {
      const found = await readEngine(service, c.var.shop, c.req.param('id'))
      if (found === undefined)
        throw new Stopped(oneProblem(404, 'not-found', 'There is no sheet of that engine.', 'GET /v1/engines lists those that there are.'))
      return c.json(found)
    })
    .put('/:id', async (c) => {
      const id = c.req.param('id')
      const { kind, engine: kept } = await keepEntry(c.req.raw, ENGINE_LIMIT, (json) => putEngine(service, c.var.shop, id, json))
      return kind === 'added' ? c.json(kept, 201, { location: `/v1/engines/${encodeURIComponent(id)}` }) : c.json(kept)
    })
