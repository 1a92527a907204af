/** What scripts rely on at the HTTP door, in literals: none of it is taken from the source. A change here breaks somebody. */
import { Webhook } from 'standardwebhooks'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openHouse, SHEET, type House } from '../http/house.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

const asked = (path: string, headers: Record<string, string> = {}, body?: string): Promise<Response> =>
  Promise.resolve(
    house.app.request(path, { method: body === undefined ? 'GET' : 'POST', headers, ...(body === undefined ? {} : { body }) }),
  )
const own = (): Record<string, string> => ({ authorization: `Bearer ${house.key}`, 'content-type': 'application/json' })
const text = JSON.stringify(SHEET)
const keysOf = (value: unknown): string[] => Object.keys(value as object).sort()

describe('a decision record', () => {
  it('has these fields', async () => {
    const record = (await (await asked('/v1/decisions', own(), text)).json()) as Record<string, Record<string, unknown>>
    expect(keysOf(record)).toEqual(
      expect.arrayContaining(['id', 'job', 'edition', 'verdicts', 'plan', 'ledger', 'engine', 'stage', 'recorded', 'receivedAt', 'body']),
    )
    expect(keysOf(record['ledger'])).toEqual(['hash', 'seq'])
    expect(keysOf(record['plan'])).toEqual(expect.arrayContaining(['cautions', 'partsList', 'returnChecks', 'workOrder']))
    for (const list of ['cautions', 'partsList', 'returnChecks', 'workOrder'])
      expect(Array.isArray(record['plan']?.[list]), list).toBe(true)
  })

  it('and each of its verdicts these', async () => {
    const { verdicts } = (await (await asked('/v1/judgements', own(), text)).json()) as { verdicts: Record<string, unknown>[] }
    expect(verdicts.length).toBeGreaterThan(3)
    for (const verdict of verdicts) {
      expect(keysOf(verdict)).toEqual(expect.arrayContaining(['part', 'at', 'disposition', 'steps', 'open', 'provided']))
      expect(typeof verdict['soFar']).toBe(verdict['disposition'] === 'undetermined' ? 'string' : 'undefined')
      expect(['reuse', 'recondition', 'replace', 'undetermined']).toContain(verdict['disposition'])
    }
    const steps = verdicts.flatMap((v) => v['steps'] as Record<string, unknown>[])
    for (const step of steps) expect(keysOf(step)).toEqual(expect.arrayContaining(['rule', 'outcome', 'facts', 'sources']))
  })

  it('a judgement has neither id nor place in the ledger', async () => {
    const judgement = (await (await asked('/v1/judgements', own(), text)).json()) as Record<string, unknown>
    expect(keysOf(judgement)).not.toEqual(expect.arrayContaining(['id']))
    expect([judgement['recorded'], judgement['ledger']]).toEqual([false, undefined])
  })
})

describe('a problem', () => {
  const bad = (change: object): string => JSON.stringify({ ...SHEET, ...change })
  const stale = (): Record<string, string> => ({
    'content-type': 'application/json',
    'webhook-id': 'm',
    'webhook-timestamp': '1000000000',
    'webhook-signature': 'v1,x',
  })
  const signed = (id: string, body: string): Record<string, string> => {
    const at = new Date()
    return {
      'content-type': 'application/json',
      'webhook-id': id,
      'webhook-timestamp': String(Math.floor(at.getTime() / 1000)),
      'webhook-signature': new Webhook(house.secret).sign(id, at, body),
    }
  }

  it.each<[status: number, type: string, go: () => Promise<Response>]>([
    [400, '/problems/not-json', () => asked('/v1/judgements', own(), '{')],
    [400, '/problems/too-deep', () => asked('/v1/judgements', own(), '['.repeat(99))],
    [
      400,
      '/problems/not-utf8',
      async () => house.app.request('/v1/judgements', { method: 'POST', headers: own(), body: new Uint8Array([0xff]) }),
    ],
    [400, '/problems/query-refused', () => asked('/v1/decisions', own())],
    [400, '/problems/message-headers', () => asked('/hooks/findings', { 'content-type': 'application/json' }, text)],
    [401, '/problems/unauthorised', () => asked('/v1/judgements', { 'content-type': 'application/json' }, text)],
    [401, '/problems/message-stale', () => asked('/hooks/findings', stale(), text)],
    [
      401,
      '/problems/message-unsigned',
      () => asked('/hooks/findings', { ...stale(), 'webhook-timestamp': String(Math.floor(Date.now() / 1000)) }, text),
    ],
    [404, '/problems/not-found', () => asked('/v1/decisions/none', own())],
    [405, '/problems/method-not-allowed', () => asked('/v1/vocabulary', own(), '')],
    [
      409,
      '/problems/message-altered',
      async () => {
        await asked('/hooks/findings', signed('pin', text), text)
        return asked('/hooks/findings', signed('pin', `${text} `), `${text} `)
      },
    ],
    [413, '/problems/body-too-large', () => asked('/v1/judgements', own(), ' '.repeat(524_289))],
    [415, '/problems/content-type', () => asked('/v1/judgements', { ...own(), 'content-type': 'text/plain' }, text)],
    [422, '/problems/sheet-refused', () => asked('/v1/judgements', own(), bad({ engine: 'none' }))],
  ])('%i %s', async (status, type, go) => {
    const response = await go()
    const problem = (await response.json()) as Record<string, unknown>
    expect(response.headers.get('content-type')).toBe('application/problem+json')
    expect([response.status, problem['status'], problem['type']]).toEqual([status, status, type])
    expect(keysOf(problem)).toEqual(['detail', 'errors', 'status', 'title', 'type'])
  })

  it('its faults have these fields', async () => {
    const { errors } = (await (await asked('/v1/judgements', own(), bad({ engine: 'none' }))).json()) as { errors: unknown[] }
    expect(errors.map(keysOf)).toEqual([['code', 'mend', 'pointer', 'says', 'value']])
  })

  it('a body of the limit’s very size is read', async () => {
    expect((await asked('/v1/judgements', own(), text + ' '.repeat(524_288 - Buffer.byteLength(text)))).status).toBe(200)
  })
})

describe('a signed message', () => {
  it('is sent with these headers, and answered again with this one', async () => {
    const at = new Date()
    const headers = {
      'content-type': 'application/json',
      'webhook-id': 'msg_pin',
      'webhook-timestamp': String(Math.floor(at.getTime() / 1000)),
      'webhook-signature': new Webhook(house.secret).sign('msg_pin', at, text),
    }
    const [first, again] = [await asked('/hooks/findings', headers, text), await asked('/hooks/findings', headers, text)]
    expect([first.status, first.headers.get('webhook-repeat')]).toEqual([201, null])
    expect([again.status, again.headers.get('webhook-repeat')]).toEqual([200, 'true'])
  })
})

it('keys begin with wm_, secrets with whsec_', () => {
  expect(house.key).toMatch(/^wm_[0-9a-f]{64}$/)
  expect(house.secret).toMatch(/^whsec_[A-Za-z0-9+/]{43}=$/)
})
