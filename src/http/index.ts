/** The HTTP door: routes, keys, problems. It reads requests, calls use cases and writes answers, and decides nothing itself. */
import { Hono } from 'hono'
import type { Service } from '../usecases/service.ts'
import { adoption } from './adoption.ts'
import { decide } from './decide.ts'
import { decision } from './decision.ts'
import { edition } from './edition.ts'
import { engine } from './engine.ts'
import { engines } from './engines.ts'
import type { DoorEnv } from './env.ts'
import { health } from './health.ts'
import { hook } from './hook.ts'
import { jobDecisions } from './job-decisions.ts'
import { judgements } from './judgements.ts'
import { withKey } from './key.ts'
import { limits } from './limits.ts'
import { problemPages } from './problem-pages.ts'
import { rule } from './rule.ts'
import { rulebook } from './rulebook.ts'
import { shopLimit } from './shop-limit.ts'
import { vocabulary } from './vocabulary.ts'

/** Every route of the door. What touches a shop's own asks for a key; hooks are known by their signature; the rest is public. */
export function http(service: Service): Hono<DoorEnv> {
  const key = withKey(service)
  return (
    new Hono<DoorEnv>()
      .use('/v1/judgements', key)
      .use('/v1/decisions/*', key)
      .use('/v1/engines/*', key)
      .use('/v1/limits/*', key)
      .use('/v1/adoptions/*', key)
      // An edition holds what a shop decided for itself, so it asks for a key although the rulebook is public.
      .use('/v1/rulebook/editions/*', key)
      .route('/v1/judgements', judgements(service))
      .route('/v1/decisions', decide(service))
      .route('/v1/decisions', jobDecisions(service))
      .route('/v1/decisions', decision(service))
      .route('/v1/engines', engines(service))
      .route('/v1/engines', engine(service))
      .route('/v1/limits', limits(service))
      .route('/v1/limits', shopLimit(service))
      .route('/v1/adoptions', adoption(service))
      .route('/v1/vocabulary', vocabulary(service))
      .route('/v1/rulebook', rulebook(service))
      .route('/v1/rulebook/rules', rule(service))
      .route('/v1/rulebook/editions', edition(service))
      .route('/hooks', hook(service))
      .route('/healthz', health(service))
      .route('/problems', problemPages())
  )
}
