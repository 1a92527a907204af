/** The service over a fresh database file with two shops, as its own clients see it; for tests of the doors. */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import quarryLane from '../../examples/quarry-lane.json' with { type: 'json' }
import { createApp, createService } from '../../src/app.ts'
import { openDatabase } from '../../src/store/client.node.ts'
import { migrate } from '../../src/store/migrate.ts'
import { addApiKey, addShop } from '../../src/store/shops.ts'
import { newApiKey } from '../../src/usecases/api-key.ts'
import { loadDemoShop, readDemoShop } from '../../src/usecases/demo-shop.ts'
import type { Service } from '../../src/usecases/service.ts'
import { rowCounts } from '../store/sample.ts'

export interface House {
  readonly service: Service
  readonly app: ReturnType<typeof createApp>
  /** The demo shop's key and webhook secret. */
  readonly key: string
  readonly secret: string
  /** The key of another shop. */
  readonly otherKey: string
  /** What the app reported. */
  readonly reported: string[]
  /** Rows in every table that an answer may write to. */
  readonly rows: () => Promise<Record<string, unknown>>
  readonly leave: () => Promise<void>
}

export async function openHouse(change: (service: Service) => Partial<Service> = () => ({})): Promise<House> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-http-'))
  const db = await openDatabase(`file:${join(folder, 'shop.db')}`)
  await migrate(db)
  const plain = createService({ db })
  const demo = await loadDemoShop(plain, readDemoShop(plain, quarryLane))
  if (demo === undefined) throw new Error('The demo shop was not loaded.')
  await addShop(db, { id: 'mill-race', name: 'Mill Race Heads (invented)', settings: '{}', createdAt: plain.now() })
  const other = await newApiKey(plain)
  await addApiKey(db, { hash: other.hash, shop: 'mill-race', label: 'bench', createdAt: plain.now() })
  const service = { ...plain, ...change(plain) }
  const reported: string[] = []
  return {
    service,
    app: createApp(service, { report: (line) => reported.push(line) }),
    key: demo.key,
    secret: demo.secret,
    otherKey: other.key,
    reported,
    rows: () => rowCounts(db),
    leave: async () => {
      db.close()
      await rm(folder, { recursive: true, force: true })
    },
  }
}

/** A small sheet that is sound: one stud with a groove that can be felt. */
export const SHEET = {
  job: 'QLE-2031-0402',
  engine: 'QL-6P',
  stage: 'received',
  build: { casting: 'QP-1', 'oil-pump': 'standard' },
  findings: [
    {
      part: 'rocker-stud',
      at: '3E',
      property: 'shoulder.groove-felt',
      value: true,
      by: 'bench 2',
      observedAt: '2031-04-02T10:15:00+02:00',
    },
    { part: 'valve', at: '3E', property: 'margin', value: '0.061 in', instrument: 'caliper' },
  ],
}

export const json = (key?: string): Record<string, string> => ({
  'content-type': 'application/json',
  ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
})

/** A sheet posted as a program would. */
export const post = (key: string | undefined, body: unknown): RequestInit => ({
  method: 'POST',
  headers: json(key),
  body: typeof body === 'string' ? body : JSON.stringify(body),
})

/** A problem as it came, its shape checked as RFC 9457 and our own promise have it. */
export async function problemIn(response: Response): Promise<{
  type: string
  title: string
  status: number
  detail: string
  errors: { code: string; pointer: string; says: string; mend: string; value?: string }[]
  requestId?: string
}> {
  const text = await response.text()
  if (response.headers.get('content-type') !== 'application/problem+json')
    throw new Error(`No problem document: ${response.status} ${text.slice(0, 200)}`)
  const shown = JSON.parse(text) as Awaited<ReturnType<typeof problemIn>>
  const sound =
    /^\/problems\/[a-z0-9-]+$/.test(shown.type) &&
    shown.status === response.status &&
    [shown.title, shown.detail].every((words) => typeof words === 'string' && words.length > 5) &&
    Array.isArray(shown.errors) &&
    shown.errors.length > 0 &&
    shown.errors.every(
      (e) => /^[a-z0-9-]+$/.test(e.code) && /^(?:\/.*)?$/.test(e.pointer) && /[.!?]$/.test(e.says) && /[.!?]$/.test(e.mend),
    )
  if (!sound) throw new Error(`A problem out of shape: ${text.slice(0, 600)}`)
  return shown
}
