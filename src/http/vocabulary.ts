import { Hono } from 'hono'
import type { Service } from '../usecases/service.ts'
import { vocabularyOf } from '../usecases/vocabulary.ts'
import type { DoorEnv } from './env.ts'

/** GET /v1/vocabulary: what can be observed on which part. Public, since it holds nothing of any shop. */
export const vocabulary = (service: Service): Hono<DoorEnv> => new Hono<DoorEnv>().get('/', (c) => c.json(vocabularyOf(service.book)))
