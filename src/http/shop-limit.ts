import { Hono } from 'hono'
import type { Service } from '../usecases/service.ts'
import { setShopLimit } from '../usecases/set-shop-limit.ts'
import { ENTRY_LIMIT, keepEntry, noSuchLimit } from './entry.ts'
import type { DoorEnv } from './env.ts'

/** PUT /v1/limits/{part}/{limit} {value, by, note?}: a figure of the shop's own, which stands over the trade's and under a maker's. */
export const shopLimit = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().put('/:part/:limit', async (c) => {
    const { part, limit } = c.req.param()
    const set = await keepEntry(c.req.raw, ENTRY_LIMIT, (json) => setShopLimit(service, c.var.shop, part, limit, json))
    if (set === undefined) throw noSuchLimit()
    return c.json(set)
  })
