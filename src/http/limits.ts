import { Hono } from 'hono'
import { listLimits } from '../usecases/limits.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'

/** GET /v1/limits: every limit as it stands for the shop: the trade's defaults with their sources, who adopted it, the shop's own figure. */
export const limits = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/', async (c) => c.json({ limits: await listLimits(service, c.var.shop) }))
