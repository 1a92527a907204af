import { inspect } from 'node:util'
import Libsql from 'libsql'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { appendDecision } from '../../src/store/append.ts'
import { openDatabase } from '../../src/store/client.node.ts'
import { openRemote } from '../../src/store/client.web.ts'
import type { Database } from '../../src/store/database.ts'
import { decisionById, decisionsOfJob } from '../../src/store/decisions.ts'
import { saltFor } from '../../src/store/disclosures.ts'
import { setShopLimit } from '../../src/store/limits.ts'
import { migrate } from '../../src/store/migrate.ts'
import { addShop, shopByKeyHash } from '../../src/store/shops.ts'
import { StoreTrouble, troubleFrom } from '../../src/store/trouble.ts'
import { startHranaBridge } from '../runtime/hrana-bridge.ts'
import { filePlace, PLACES } from './places.ts'
import type { Place } from './places.ts'
import { appending, disclosure, made, SHOP } from './sample.ts'

/** Stands wherever a test hands something in; must never come out in an error. */
const SECRET = 'hush-a-name-hush'

async function troubleOf(asked: Promise<unknown>): Promise<StoreTrouble> {
  const error: unknown = await asked.then(
    () => 'nothing was thrown',
    (thrown: unknown) => thrown,
  )
  expect(error).toBeInstanceOf(StoreTrouble)
  return error as StoreTrouble
}

/** Everything that a log might show of an error: what it prints, its stack, its causes, its hidden properties. */
function everythingSaid(error: StoreTrouble): string {
  return [String(error), error.stack, JSON.stringify(error), inspect(error, { depth: 10, showHidden: true })].join('\n')
}

const secretDecision = appending(SECRET, {
  edition: { hash: SECRET, content: SECRET },
  receipt: { endpoint: SECRET, messageId: SECRET, bodyHash: SECRET },
  make: (seq) => made(SECRET, seq, { job: SECRET, body: SECRET, envelope: SECRET }, [disclosure(SECRET, SECRET, SECRET)]),
})

const ASKS: readonly (readonly [string, (db: Database) => Promise<unknown>])[] = [
  ['appendDecision', (db) => appendDecision(db, SECRET, secretDecision)],
  ['decisionById', (db) => decisionById(db, SECRET, SECRET)],
  ['decisionsOfJob', (db) => decisionsOfJob(db, SECRET, SECRET)],
  ['saltFor', (db) => saltFor(db, SECRET, 'name', [SECRET])],
  ['shopByKeyHash', (db) => shopByKeyHash(db, SECRET)],
  ['addShop', (db) => addShop(db, { id: SECRET, name: SECRET, settings: SECRET, createdAt: SECRET })],
  [
    'setShopLimit',
    (db) =>
      setShopLimit(
        db,
        { shop: SECRET, part: SECRET, limit: SECRET, value: SECRET, note: SECRET, on: SECRET },
        disclosure(SECRET, SECRET, SECRET),
      ),
  ],
]

describe.each(PLACES)('no parameter comes out in an error, through %s', (_name, arrive) => {
  let place: Place
  let db: Database
  beforeEach(async () => {
    place = await arrive()
    db = await place.open()
  })
  afterEach(() => place.leave())

  test.each(ASKS)('%s without its tables', async (_verb, ask) => {
    const trouble = await troubleOf(ask(db))
    expect(trouble.code).toBe('unexpected')
    expect(everythingSaid(trouble)).not.toContain(SECRET)
  })

  test('a broken constraint is told by its columns', async () => {
    await migrate(db)
    await appendDecision(db, SHOP, appending(SECRET))
    const trouble = await troubleOf(appendDecision(db, SHOP, secretDecision))
    expect(trouble).toMatchObject({ code: 'unexpected', broken: 'decisions.id', detail: 'SQLITE_CONSTRAINT' })
    expect(everythingSaid(trouble)).not.toContain(SECRET)
  })

  test.each(ASKS)('%s after the client was closed', async (_verb, ask) => {
    db.close()
    const trouble = await troubleOf(ask(db))
    expect(trouble.code).toBe('unreachable')
    expect(everythingSaid(trouble)).not.toContain(SECRET)
  })
})

describe('a server that does not answer as it should', () => {
  test('nobody listens there', async () => {
    const bridge = await startHranaBridge({ file: '/dev/null' })
    await bridge.close()
    for (const [verb, ask] of ASKS) {
      const trouble = await troubleOf(ask(openRemote(bridge.url)))
      expect([verb, trouble.code, trouble.detail]).toEqual([verb, 'unreachable', 'ECONNREFUSED'])
      expect(everythingSaid(trouble)).not.toContain(SECRET)
    }
  })

  test('it wants a token', async () => {
    const place = await filePlace()
    const bridge = await startHranaBridge({ file: place.file, token: 'right' })
    try {
      expect(await migrate(openRemote(bridge.url, { token: 'right' }))).not.toEqual([])
      expect(await troubleOf(migrate(openRemote(bridge.url, { token: SECRET })))).toMatchObject({ code: 'unreachable', detail: 'HTTP 401' })
      expect(await troubleOf(migrate(openRemote(bridge.url)))).toMatchObject({ code: 'unreachable', detail: 'HTTP 401' })
      const trouble = await troubleOf(appendDecision(openRemote(bridge.url, { token: SECRET }), SECRET, secretDecision))
      expect(everythingSaid(trouble)).not.toContain(SECRET)
    } finally {
      await bridge.close()
      await place.leave()
    }
  })

  test('it takes longer than we wait', async () => {
    const { createServer } = await import('node:net')
    const silent = createServer().listen(0, '127.0.0.1')
    await new Promise((resolve) => silent.once('listening', resolve))
    const address = silent.address()
    const port = typeof address === 'object' && address !== null ? address.port : 0
    const trouble = await troubleOf(shopByKeyHash(openRemote(`http://127.0.0.1:${port}`, { patienceMs: 50 }), SECRET))
    silent.close()
    expect(trouble.code).toBe('unreachable')
    expect(everythingSaid(trouble)).not.toContain(SECRET)
  })
})

describe('a file that another process is writing to', () => {
  let place: Place
  let writer: InstanceType<typeof Libsql>
  beforeEach(async () => {
    place = await filePlace()
    await migrate(await place.open())
    writer = new Libsql(place.file)
    writer.exec('begin immediate')
  })
  afterEach(() => {
    writer.close()
    return place.leave()
  })

  test('is busy in the end, and nothing was written', async () => {
    const db = await openDatabase(`file:${place.file}`, { busyTimeoutMs: 5 })
    const trouble = await troubleOf(appendDecision(db, SHOP, secretDecision, { attempts: 3, pause: async () => undefined }))
    expect(trouble).toMatchObject({ code: 'busy', detail: 'SQLITE_BUSY' })
    expect(everythingSaid(trouble)).not.toContain(SECRET)
    db.close()
  })

  test('is written to once the other has done', async () => {
    const db = await openDatabase(`file:${place.file}`, { busyTimeoutMs: 5 })
    const pause = async (tried: number) => {
      if (tried === 2) writer.exec('commit')
    }
    expect(await appendDecision(db, SHOP, appending('d-1'), { attempts: 5, pause })).toMatchObject({ kind: 'entered', seq: 1 })
    db.close()
  })
})

// Result codes and their meaning: https://www.sqlite.org/rescode.html; BLOCKED and TRANSACTION_* are libsql-server's (src/hrana/stmt.rs).
test.each([
  ['SQLITE_BUSY', 'busy'],
  ['SQLITE_BUSY_SNAPSHOT', 'busy'],
  ['SQLITE_LOCKED', 'busy'],
  ['TRANSACTION_TIMEOUT', 'busy'],
  ['SQLITE_FULL', 'full'],
  ['BLOCKED', 'full'],
  ['ENOSPC', 'full'],
  ['SQLITE_CANTOPEN', 'unreachable'],
  ['SQLITE_IOERR', 'unreachable'],
  ['ENOTFOUND', 'unreachable'],
  ['SQLITE_CORRUPT', 'unexpected'],
  ['SQLITE_READONLY', 'unexpected'],
])('the driver’s %s is told as %s', (code, expected) => {
  const trouble = troubleFrom(Object.assign(new Error(SECRET), { code }), 'testing')
  expect(trouble).toMatchObject({ code: expected, detail: code })
  expect(everythingSaid(trouble)).not.toContain(SECRET)
})

test('a code that is not a code is not shown', () => {
  expect(everythingSaid(troubleFrom(Object.assign(new Error(SECRET), { code: SECRET }), 'testing'))).not.toContain(SECRET)
})
