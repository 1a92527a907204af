import type { Shop } from '../store/shops.ts'

/** What the routes find on a request's context. */
export interface DoorEnv {
  readonly Variables: { shop: Shop; requestId: string }
}
