import { Hono } from 'hono'
import { judgeSheet } from '../usecases/judge.ts'
import type { Service } from '../usecases/service.ts'
import { sheetFromText } from '../verdict/sheet.ts'
import { readBody } from './body.ts'
import type { DoorEnv } from './env.ts'

/** POST /v1/judgements: the answer to a finding sheet, which is not recorded. */
export const judgements = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().post('/', async (c) => {
    const sheet = sheetFromText((await readBody(c.req.raw)).text)
    return c.json(await judgeSheet(service, c.var.shop, sheet))
  })
