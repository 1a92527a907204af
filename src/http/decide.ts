import { Hono } from 'hono'
import { decideSheet } from '../usecases/decide.ts'
import type { Service } from '../usecases/service.ts'
import { sheetFromText } from '../verdict/sheet.ts'
import { readBody } from './body.ts'
import { decisionPath } from './decision.ts'
import type { DoorEnv } from './env.ts'

/** POST /v1/decisions: the answer to a finding sheet, entered in the shop's ledger. */
export const decide = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().post('/', async (c) => {
    const sheet = sheetFromText((await readBody(c.req.raw)).text)
    const { record } = await decideSheet(service, c.var.shop, sheet, { door: 'http' })
    return c.json(record, 201, { location: decisionPath(record) })
  })
