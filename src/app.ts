/** Puts the rooms together. `node.ts` and `worker.ts` call this; nothing else constructs anything. */
import { Hono } from 'hono'
import type { DoorEnv } from './http/env.ts'
import { guard, type Report } from './http/guards.ts'
import { http } from './http/index.ts'
import { pages } from './pages/index.ts'
import { loadRulebook } from './rulebook/load.ts'
import { FILES } from './rulebook/shelf.ts'
import type { Database } from './store/database.ts'
import { EditionShelf, type Service } from './usecases/service.ts'
import { compileBook, type CompiledBook } from './verdict/compiled.ts'

let shared: CompiledBook | undefined

/** The rulebook that this program carries, read and compiled on first use and then kept: on workerd a request pays for it, once. */
export function ownBook(): CompiledBook {
  shared ??= compileBook(loadRulebook(FILES))
  return shared
}

export interface ServiceOptions {
  readonly db: Database
  /** The rulebook that this program carries where not given. */
  readonly book?: CompiledBook
  /** RFC 3339 with an offset; the machine's clock in UTC where not given. */
  readonly now?: () => string
  readonly newId?: () => string
  readonly randomHex?: (bytes: number) => string
}

/** What use cases stand on. The clock, ids and randomness may be given, so that tests can fix them. */
export function createService({
  db,
  book = ownBook(),
  now = utc,
  newId = () => crypto.randomUUID(),
  randomHex = drawnHex,
}: ServiceOptions): Service {
  return { db, book, editions: new EditionShelf(book), now, newId, randomHex }
}

/** The whole service as one app that answers requests. `report` is told of failures. */
export function createApp(service: Service, { report = console.error }: { readonly report?: Report } = {}): Hono<DoorEnv> {
  const app = new Hono<DoorEnv>()
  guard(app, report)
  app.route('/', http(service))
  app.route('/', pages(service))
  return app
}

const utc = (): string => new Date().toISOString()

const drawnHex = (bytes: number): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(bytes)), (byte) => byte.toString(16).padStart(2, '0')).join('')
