import { Hono } from 'hono'
import { listEngines } from '../usecases/engines.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'

/** GET /v1/engines: the engines that the shop can judge by, each with its castings and cards by name; the shop's own over the rulebook's. */
export const engines = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/', async (c) => {
    const entries = await listEngines(service, c.var.shop)
    return c.json({
      engines: entries.map(({ sheet: { says, invented, castings, cards }, ...entry }) => ({
        ...entry,
        says,
        invented,
        castings: Object.keys(castings),
        cards: Object.fromEntries(Object.entries(cards).map(([kind, of]) => [kind, Object.keys(of)])),
      })),
    })
  })
