import { Hono } from 'hono'
import type { Service } from '../usecases/service.ts'
import { ruleOf } from '../usecases/vocabulary.ts'
import type { DoorEnv } from './env.ts'
import { oneProblem, Stopped } from './problem.ts'

/** GET /v1/rulebook/rules/{id}: one rule whole, its limits, sources and cautions spelled out. Public. */
export const rule = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/:id', (c) => {
    const found = ruleOf(service.book, c.req.param('id'))
    if (found === undefined) throw new Stopped(oneProblem(404, 'not-found', 'There is no rule of that id.', 'GET /v1/rulebook lists them.'))
    return c.json(found)
  })
