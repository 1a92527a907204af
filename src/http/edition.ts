import { Hono } from 'hono'
import { readEdition } from '../usecases/edition.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'
import { oneProblem, Stopped } from './problem.ts'

/** GET /v1/rulebook/editions/{hash}: the rulebook and shop layer as they stood for a decision, byte for byte as they were hashed. */
export const edition = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/:hash', async (c) => {
    const content = await readEdition(service, c.req.param('hash'))
    if (content === undefined)
      throw new Stopped(
        oneProblem(404, 'not-found', 'No decision was made by an edition of that hash.', 'A decision names its own in "edition".'),
      )
    return c.body(content, 200, { 'Content-Type': 'application/json' })
  })
