import { copyFile, mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Webhook } from 'standardwebhooks'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import quarryLane from '../../examples/quarry-lane.json' with { type: 'json' }
import { createApp, createService } from '../../src/app.ts'
import { canonicalText } from '../../src/ledger/canonical.ts'
import { hashOfBody } from '../../src/ledger/entry.ts'
import { openDatabase } from '../../src/store/client.node.ts'
import type { Database } from '../../src/store/database.ts'
import { migrate } from '../../src/store/migrate.ts'
import { loadDemoShop, readDemoShop, type DemoAccess } from '../../src/usecases/demo-shop.ts'
import { json, post, problemIn, SHEET } from '../http/house.ts'
import { startHranaBridge, type HranaBridge } from './hrana-bridge.ts'
import { startWorkerd, type Workerd } from './workerd.ts'

const SHEETS = new URL('../../examples/sheets/', import.meta.url).pathname

let folder: string
let access: DemoAccess
let nodeDb: Database
let workerDb: Database
let bridge: HranaBridge
let workerd: Workerd
let onNode: (path: string, init?: RequestInit) => Promise<Response>

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-both-'))
  const [nodeFile, workerFile] = [join(folder, 'node.db'), join(folder, 'worker.db')]
  const db = await openDatabase(`file:${nodeFile}`)
  await migrate(db)
  const service = createService({ db })
  const loaded = await loadDemoShop(service, readDemoShop(service, quarryLane))
  if (loaded === undefined) throw new Error('The demo shop was not loaded.')
  access = loaded
  // Names get their salts once, so that both copies of the shop commit to them alike.
  for (const sheet of await sheets()) await createApp(service).request('/v1/decisions', post(access.key, sheet))
  await db.$client.execute('pragma wal_checkpoint(truncate)')
  db.close()
  await copyFile(nodeFile, workerFile)

  nodeDb = await openDatabase(`file:${nodeFile}`)
  const app = createApp(createService({ db: nodeDb }))
  onNode = async (path, init) => app.request(path, init)
  bridge = await startHranaBridge({ file: workerFile, token: 'bridge-token' })
  workerd = await startWorkerd({ DATABASE_URL: bridge.url, DATABASE_TOKEN: 'bridge-token' })
  workerDb = await openDatabase(`file:${workerFile}`)
})
afterAll(async () => {
  await workerd.stop()
  await bridge.close()
  for (const db of [nodeDb, workerDb]) db.close()
  await rm(folder, { recursive: true, force: true })
})

const sheets = async (): Promise<readonly string[]> => [
  JSON.stringify(SHEET),
  ...(await Promise.all(
    (await readdir(SHEETS))
      .filter((name) => name.endsWith('.json'))
      .sort()
      .map((name) => readFile(join(SHEETS, name), 'utf8')),
  )),
]

interface Record_ {
  readonly id: string
  readonly body: unknown
  readonly ledger: { readonly hash: string }
}

const storedBody = async (db: Database, id: string): Promise<unknown> =>
  (await db.$client.execute({ sql: 'select body from decisions where id = ?', args: [id] })).rows[0]?.['body']

describe('the same sheet', () => {
  it('is judged to the same bytes, the whole answer through', async () => {
    for (const sheet of await sheets()) {
      const [a, b] = [
        await onNode('/v1/judgements', post(access.key, sheet)),
        await workerd.fetch('/v1/judgements', post(access.key, sheet)),
      ]
      expect([a.status, b.status]).toEqual([200, 200])
      expect(await b.text()).toBe(await a.text())
    }
  })

  it('is entered with the same hash, and the ledgers hold the same bytes, which have that hash', async () => {
    for (const sheet of await sheets()) {
      const [a, b] = (await Promise.all(
        [onNode('/v1/decisions', post(access.key, sheet)), workerd.fetch('/v1/decisions', post(access.key, sheet))].map(async (r) =>
          (await r).json(),
        ),
      )) as [Record_, Record_]
      expect(b.ledger.hash).toBe(a.ledger.hash)
      expect(canonicalText(b.body)).toBe(canonicalText(a.body))
      const [inA, inB] = [await storedBody(nodeDb, a.id), await storedBody(workerDb, b.id)]
      expect(inA).toBe(canonicalText(a.body))
      expect(inB).toBe(inA)
      expect(await hashOfBody(b.body)).toBe(b.ledger.hash)
    }
  })
})

/** Requests that are asked of both. What differs by its nature (ids, times) is taken out of the answers. */
const SMOKE: readonly [name: string, path: string, init: () => RequestInit][] = [
  ['health', '/healthz', () => ({})],
  ['the vocabulary', '/v1/vocabulary', () => ({})],
  ['the rulebook', '/v1/rulebook', () => ({})],
  ['the page', '/', () => ({})],
  ['one rule', '/v1/rulebook/rules/rocker-stud.groove-condemns', () => ({})],
  ['no such rule', '/v1/rulebook/rules/none', () => ({})],
  ['what a code means', '/problems/values-disagree', () => ({})],
  ['no key', '/v1/decisions?job=x', () => ({})],
  ['a wrong key', '/v1/decisions?job=x', () => ({ headers: { authorization: 'Bearer wm_none' } })],
  ['a job without decisions', '/v1/decisions?job=none', () => ({ headers: json(access.key) })],
  ['no job', '/v1/decisions', () => ({ headers: json(access.key) })],
  ['a decision that is none', '/v1/decisions/none', () => ({ headers: json(access.key) })],
  [
    'a sheet with faults',
    '/v1/decisions',
    () => post(access.key, { ...SHEET, findings: [{ part: 'valve', at: '9X', property: 'margin', value: '12 lb' }] }),
  ],
  ['no JSON', '/v1/judgements', () => post(access.key, '{"job": NaN}')],
  ['too large a body', '/v1/judgements', () => post(access.key, ' '.repeat(600_000))],
  ['another content type', '/v1/judgements', () => ({ method: 'POST', headers: { authorization: `Bearer ${access.key}` }, body: 'job' })],
  ['a wrong method', '/v1/vocabulary', () => ({ method: 'DELETE' })],
  ['no such address', '/nowhere', () => ({})],
  ['an unsigned message', '/hooks/findings', () => post(undefined, SHEET)],
]

describe('asked of both', () => {
  it.each(SMOKE)('%s', async (_name, path, init) => {
    const [a, b] = [await onNode(path, init()), await workerd.fetch(path, init())]
    const shown = async (r: Response): Promise<unknown> => [
      r.status,
      r.headers.get('content-type'),
      r.headers.get('allow'),
      r.headers.get('www-authenticate'),
      await r.text(),
    ]
    expect(await shown(b)).toEqual(await shown(a))
  })
})

describe('on workerd', () => {
  const signed = (body: string, secret: string): RequestInit => {
    const now = new Date()
    const headers = {
      ...json(),
      'webhook-id': 'msg_both',
      'webhook-timestamp': String(Math.floor(now.getTime() / 1000)),
      'webhook-signature': new Webhook(secret).sign('msg_both', now, body),
    }
    return { method: 'POST', headers, body }
  }

  it('a signed message is answered once', async () => {
    const body = JSON.stringify(SHEET)
    const first = await workerd.fetch('/hooks/findings', signed(body, access.secret))
    const again = await workerd.fetch('/hooks/findings', signed(body, access.secret))
    expect([first.status, again.status, again.headers.get('webhook-repeat')]).toEqual([201, 200, 'true'])
    expect(await again.json()).toEqual(await first.json())
    const wrong = await workerd.fetch('/hooks/findings', signed(body, `whsec_${Buffer.alloc(32).toString('base64')}`))
    expect(await problemIn(wrong)).toMatchObject({ status: 401, type: '/problems/message-unsigned' })
  })

  it('twelve decisions at once have twelve numbers, and each stands as it was answered', async () => {
    const all = (await Promise.all(
      Array.from({ length: 12 }, async () => (await workerd.fetch('/v1/decisions', post(access.key, { ...SHEET, job: 'twelve' }))).json()),
    )) as (Record_ & { ledger: { seq: number } })[]
    const seqs = all.map((r) => r.ledger.seq).sort((a, b) => a - b)
    expect(seqs.map((s) => s - (seqs[0] ?? 0))).toEqual(Array.from({ length: 12 }, (_, i) => i))
    const one = await workerd.fetch(`/v1/decisions/${all[5]?.id}`, { headers: json(access.key) })
    expect(await one.json()).toEqual(all[5])
  })
})

describe('workerd without a ledger', () => {
  it.each([
    ['no URL is set', { DATABASE_URL: '' }, 500, '/problems/unexpected'],
    ['nobody listens there', { DATABASE_URL: 'http://127.0.0.1:1' }, 503, '/problems/store-unreachable'],
    ['the token is wrong', { DATABASE_URL: 'BRIDGE', DATABASE_TOKEN: 'wrong' }, 503, '/problems/store-unreachable'],
  ])('%s: a problem, and the reason in the log only', async (_name, bindings, status, type) => {
    const alone = await startWorkerd({ ...bindings, DATABASE_URL: bindings.DATABASE_URL === 'BRIDGE' ? bridge.url : bindings.DATABASE_URL })
    try {
      const response = await alone.fetch('/healthz')
      const text = await response.clone().text()
      expect(await problemIn(response)).toMatchObject({ status, type })
      expect(text).not.toMatch(/127\.0\.0\.1|DATABASE_URL|libSQL/)
      expect(alone.logs()).toMatch(/StoreTrouble|Refused/)
    } finally {
      await alone.stop()
    }
  })
})
