import type { MiddlewareHandler } from 'hono'
import { bearerAuth } from 'hono/bearer-auth'
import { shopOfKey } from '../usecases/api-key.ts'
import type { Service } from '../usecases/service.ts'
import type { DoorEnv } from './env.ts'
import { oneProblem, problemResponse } from './problem.ts'

/** Lets a request on when its key is in force, and says which shop it speaks for (`c.var.shop`); otherwise answers 401. */
export function withKey(service: Service): MiddlewareHandler<DoorEnv> {
  return bearerAuth<DoorEnv>({
    verifyToken: async (key, c) => {
      const shop = await shopOfKey(service, key)
      if (shop === undefined) return false
      c.set('shop', shop)
      return true
    },
    noAuthenticationHeader: { message: () => unauthorised('There is no Authorization header.') },
    invalidAuthenticationHeader: { message: () => unauthorised('The Authorization header holds no bearer key.') },
    invalidToken: { message: () => unauthorised('This key is not in force.') },
  })
}

const unauthorised = (says: string): Response =>
  problemResponse(oneProblem(401, 'unauthorised', says, 'Send "Authorization: Bearer wm_…" with a key of your shop.'), {
    'www-authenticate': 'Bearer realm="witnessmark"',
  })
