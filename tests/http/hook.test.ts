import { Webhook } from 'standardwebhooks'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { sha256Hex } from '../../src/ledger/hash.ts'
import { receiptOf } from '../../src/store/endpoints.ts'
import { openHouse, post, problemIn, SHEET, type House } from './house.ts'

let house: House
beforeEach(async () => {
  house = await openHouse()
})
afterEach(() => house.leave())

interface Sent {
  readonly id?: string
  readonly secret?: string
  readonly atMs?: number
  readonly endpoint?: string
  /** The body that goes out, where it is not the one that was signed. */
  readonly sent?: string
  readonly drop?: readonly string[]
}

function send(
  body: string,
  { id = 'msg_1', secret = house.secret, atMs = Date.now(), endpoint = 'findings', sent = body, drop = [] }: Sent = {},
): Promise<Response> {
  const at = new Date(atMs)
  const headers = new Headers({
    'content-type': 'application/json',
    'webhook-id': id,
    'webhook-timestamp': String(Math.floor(atMs / 1000)),
    'webhook-signature': new Webhook(secret).sign(id, at, body),
  })
  for (const name of drop) headers.delete(name)
  return Promise.resolve(house.app.request(`/hooks/${endpoint}`, { method: 'POST', headers, body: sent }))
}

const TEXT = JSON.stringify(SHEET, null, 2)
const OTHER_SECRET = `whsec_${Buffer.alloc(32, 9).toString('base64')}`

describe('a signed message', () => {
  it('is answered with the decision, entered under the hook’s door, with a receipt of its raw body', async () => {
    const response = await send(TEXT)
    const record = (await response.json()) as { id: string; recorded: boolean; ledger: { hash: string } }
    expect([response.status, record.recorded, response.headers.get('webhook-repeat')]).toEqual([201, true, null])
    expect(response.headers.get('location')).toBe(`/v1/decisions/${record.id}`)
    const receipt = await receiptOf(house.service.db, 'findings', 'msg_1')
    expect(receipt).toMatchObject({ decisionId: record.id, bodyHash: await sha256Hex(new TextEncoder().encode(TEXT)) })
    const { rows } = await house.service.db.$client.execute('select door from decisions')
    expect(rows.map((row) => row['door'])).toEqual(['hook'])
  })

  it('has the same hash as the same sheet through the HTTP door', async () => {
    const hashOf = async (response: Response): Promise<string> => ((await response.json()) as { ledger: { hash: string } }).ledger.hash
    const byHook = await hashOf(await send(TEXT))
    const byHttp = await hashOf(await house.app.request('/v1/decisions', post(house.key, SHEET)))
    expect(byHook).toMatch(/^[0-9a-f]{64}$/)
    expect(byHttp).toBe(byHook)
  })

  it('that comes again gets the first answer, and nothing more is entered', async () => {
    const first = await (await send(TEXT)).json()
    const before = await house.rows()
    // A retry is signed anew, at its own time.
    const again = await send(TEXT, { atMs: Date.now() + 60_000 })
    expect([again.status, again.headers.get('webhook-repeat')]).toEqual([200, 'true'])
    expect(await again.json()).toEqual(first)
    expect(await house.rows()).toEqual(before)
  })

  it('that comes again gets its first answer even when the service would refuse the sheet by now', async () => {
    const first = (await (await send(TEXT)).json()) as { id: string }
    const { createApp } = await import('../../src/app.ts')
    const { book } = house.service
    // An edition without engines.
    const poorer = { ...house.service, book: { ...book, book: { ...book.book, engines: new Map() } } }
    house = { ...house, app: createApp(poorer) }
    expect((await problemIn(await send(TEXT, { id: 'msg_2' }))).errors[0]?.code).toBe('engine-unknown')
    expect((await (await send(TEXT)).json()) as { id: string }).toMatchObject({ id: first.id })
  })

  it('ten times at once enters one decision, and all ten answers are that one', async () => {
    const all = await Promise.all(Array.from({ length: 10 }, () => send(TEXT)))
    const ids = await Promise.all(all.map(async (r) => ((await r.json()) as { id: string }).id))
    expect(new Set(ids).size).toBe(1)
    expect(all.map((r) => r.status).sort()).toEqual([200, 200, 200, 200, 200, 200, 200, 200, 200, 201])
    expect(await house.rows()).toMatchObject({ decisions: 1, receipts: 1 })
  })

  it('whose id was answered with another body is 409', async () => {
    await send(TEXT)
    const before = await house.rows()
    // The same findings in other bytes are another body, and so is one that is no sheet at all.
    for (const body of [JSON.stringify(SHEET), '{"job":']) {
      const problem = await problemIn(await send(body))
      expect(problem).toMatchObject({ status: 409, type: '/problems/message-altered', errors: [{ value: 'msg_1' }] })
      expect(problem.errors[0]?.mend).toContain('new webhook-id')
    }
    expect(await house.rows()).toEqual(before)
  })
})

describe('a bad message leaves nothing', () => {
  const cases: readonly [string, () => Promise<Response>, number, string][] = [
    ['a wrong secret', () => send(TEXT, { secret: OTHER_SECRET }), 401, 'message-unsigned'],
    ['a body altered on the way', () => send(TEXT, { sent: TEXT.replace('true', 'false') }), 401, 'message-unsigned'],
    ['a body written anew on the way', () => send(TEXT, { sent: JSON.stringify(SHEET) }), 401, 'message-unsigned'],
    ['a message replayed after five minutes', () => send(TEXT, { atMs: Date.now() - 302_000 }), 401, 'message-stale'],
    ['a message from the future', () => send(TEXT, { atMs: Date.now() + 302_000 }), 401, 'message-stale'],
    ['no id', () => send(TEXT, { drop: ['webhook-id'] }), 400, 'message-headers'],
    ['no timestamp', () => send(TEXT, { drop: ['webhook-timestamp'] }), 400, 'message-headers'],
    ['no signature', () => send(TEXT, { drop: ['webhook-signature'] }), 400, 'message-headers'],
    ['a signed message that is no JSON', () => send('job: QLE'), 400, 'not-json'],
    ['a signed sheet with a fault', () => send(JSON.stringify({ ...SHEET, engine: 'QL-9X' })), 422, 'sheet-refused'],
    ['a body over the limit', () => send(JSON.stringify({ ...SHEET, job: 'x'.repeat(600_000) })), 413, 'body-too-large'],
    ['another content type', () => send(TEXT, { drop: ['content-type'] }), 415, 'content-type'],
  ]
  it.each(cases)('%s', async (_name, go, status, code) => {
    const before = await house.rows()
    expect(await problemIn(await go())).toMatchObject({ status, type: `/problems/${code}` })
    expect(await house.rows()).toEqual(before)
  })

  it('after which the mended message may come under the same id', async () => {
    expect((await send(JSON.stringify({ ...SHEET, engine: 'QL-9X' }))).status).toBe(422)
    expect((await send(TEXT)).status).toBe(201)
  })

  it('an endpoint that is not there answers as a wrong signature does, to the byte', async () => {
    const asked = [await send(TEXT, { endpoint: 'no-such' }), await send(TEXT, { secret: OTHER_SECRET })]
    expect(asked.map((r) => r.status)).toEqual([401, 401])
    expect(await asked[0]?.text()).toBe(await asked[1]?.text())
    const stale = [await send(TEXT, { endpoint: 'no-such', atMs: 0 }), await send(TEXT, { atMs: 0 })]
    expect(await stale[0]?.text()).toBe(await stale[1]?.text())
  })

  it('an API key is no signature', async () => {
    const response = await house.app.request('/hooks/findings', post(house.key, SHEET))
    expect((await problemIn(response)).status).toBe(400)
  })
})

it('an endpoint whose secret is unfit is a fault of ours, and its secret stays unsaid', async () => {
  await house.service.db.$client.execute("update hook_endpoints set secret = 'whsec_tooshort'")
  const response = await send(TEXT)
  expect(await response.clone().text()).not.toContain('tooshort')
  expect((await problemIn(response)).status).toBe(500)
  expect(house.reported.join('\n')).toContain('unfit')
  expect(house.reported.join('\n')).not.toContain('tooshort')
})
