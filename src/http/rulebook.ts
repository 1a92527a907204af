import { Hono } from 'hono'
import type { Service } from '../usecases/service.ts'
import { rulebookOf } from '../usecases/vocabulary.ts'
import { NO_SHOP } from '../verdict/shop.ts'
import type { DoorEnv } from './env.ts'

/**
 * GET /v1/rulebook: every rule at a glance, and the sources. Public, since it holds nothing of any shop; its edition is that
 * of the trade's figures alone, and a shop that has adopted limits has an edition of its own.
 */
export const rulebook = (service: Service): Hono<DoorEnv> =>
  new Hono<DoorEnv>().get('/', async (c) => {
    const { hash } = await service.editions.of(NO_SHOP(service.book.book.confidence.default))
    return c.json(rulebookOf(service.book, hash))
  })
