import { Hono } from 'hono'
import { takeMessage } from '../usecases/take-message.ts'
import type { Service } from '../usecases/service.ts'
import { readBody } from './body.ts'
import { decisionPath } from './decision.ts'
import type { DoorEnv } from './env.ts'
import { oneProblem, problem, Stopped } from './problem.ts'

/** Marks the answer to a message that was answered before. */
export const REPEAT_HEADER = 'webhook-repeat'

/**
 * POST /hooks/{endpoint}: a finding sheet in a signed message (Standard Webhooks). 201 with the decision; 200 with the first answer
 * when the same message comes again; 409 when its id comes with another body.
 */
export const hook = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().post('/:endpoint', async (c) => {
    const body = await readBody(c.req.raw)
    const headers = {
      id: c.req.header('webhook-id'),
      timestamp: c.req.header('webhook-timestamp'),
      signature: c.req.header('webhook-signature'),
    }
    const taken = await takeMessage(service, { endpoint: c.req.param('endpoint'), headers, ...body })
    switch (taken.kind) {
      case 'entered':
        return c.json(taken.record, 201, { location: decisionPath(taken.record) })
      case 'repeat':
        return c.json(taken.record, 200, { location: decisionPath(taken.record), [REPEAT_HEADER]: 'true' })
      case 'altered':
        throw new Stopped(
          oneProblem(
            409,
            'message-altered',
            'A message of this id was answered before, and it had another body.',
            'Send new findings under a new webhook-id; send a retry unchanged.',
            {
              value: headers.id,
            },
          ),
        )
      case 'turned away':
        throw new Stopped(problem(taken.fault.code === 'message-headers' ? 400 : 401, taken.fault.code, [taken.fault]))
    }
  })
