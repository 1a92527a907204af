import { Hono } from 'hono'
import { adoptLimit } from '../usecases/adopt-limit.ts'
import type { Service } from '../usecases/service.ts'
import { ENTRY_LIMIT, keepEntry, noSuchLimit } from './entry.ts'
import type { DoorEnv } from './env.ts'

/** PUT /v1/adoptions/{part}/{limit} {by}: a person of the shop adopts what the trade only remembers, and from then on it decides here. */
export const adoption = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().put('/:part/:limit', async (c) => {
    const { part, limit } = c.req.param()
    const adopted = await keepEntry(c.req.raw, ENTRY_LIMIT, (json) => adoptLimit(service, c.var.shop, part, limit, json))
    if (adopted === undefined) throw noSuchLimit()
    return c.json(adopted)
  })
