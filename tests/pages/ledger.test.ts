import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { StoreTrouble } from '../../src/store/trouble.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { json, openHouse, post, type House } from '../http/house.ts'
import { cookieFor, fill, look, ORIGIN } from './browse.ts'

let house: House
let cookie: string
beforeAll(async () => {
  house = await openHouse()
  cookie = await cookieFor(house, house.key)
})
afterAll(() => house.leave())

const STUD = '/stud?engine=QL-6P'
const DEEP = {
  at: '3E',
  'job:casting': 'QP-1',
  'rocker-stud:shoulder.groove-depth': '10 thou',
  'rocker-stud:shoulder.groove-depth@instrument': 'depth-micrometer',
}
const entries = { ...DEEP, job: 'QLE-9', by: 'bench 2', intent: 'enter' }

const entered = async (): Promise<DecisionRecord[]> => {
  const response = await house.app.request('/v1/decisions?job=QLE-9', { headers: json(house.key) })
  return ((await response.json()) as { decisions?: DecisionRecord[] }).decisions ?? []
}

describe('a shop’s key', () => {
  it('is kept where no script reaches it and no other site can send it', async () => {
    const { status, headers } = await fill(house, '/key', { key: house.key, back: STUD })
    expect([status, headers.get('location')]).toEqual([303, STUD])
    const set = headers.get('set-cookie') ?? ''
    for (const part of ['HttpOnly', 'SameSite=Strict', 'Path=/', 'Max-Age=']) expect(set).toContain(part)
  })

  it('that nobody has is refused, and nothing is kept', async () => {
    const { status, headers, text } = await fill(house, '/key', { key: `wm_${'0'.repeat(64)}`, back: '/' })
    expect([status, headers.get('set-cookie')]).toEqual([403, null])
    expect(text).toContain('No shop has this key')
  })

  it('never leads away from here', async () => {
    for (const back of [
      'https://elsewhere.example/',
      '//elsewhere.example',
      '/decisions/../../x',
      'javascript:alert(1)',
      '/v1/decisions',
    ]) {
      expect((await fill(house, '/key', { key: house.key, back })).headers.get('location')).toBe('/')
    }
  })

  it('brings the shop’s own limits in: what was only remembered now decides', async () => {
    const without = await fill(house, STUD, DEEP)
    expect(without.text).toContain('Measure first: the rocker stud on 3 exhaust')
    expect(without.text).toContain('the only limit is remembered, and the shop has not adopted it')
    const with_ = await fill(house, STUD, DEEP, { cookie })
    expect(with_.text).toContain('Replace the rocker stud on 3 exhaust.')
    expect(with_.text).toContain('Stands on: remembered, adopted by the shop.')
  })

  it('can be forgotten', async () => {
    const { status, headers } = await fill(house, '/key/forget', { back: '/' }, { cookie })
    expect([status, headers.get('set-cookie')]).toEqual([303, expect.stringMatching(/Max-Age=0/)])
  })

  it('is shown on no page', async () => {
    for (const page of [await look(house, STUD, cookie), await fill(house, STUD, DEEP, { cookie })])
      expect(page.html).not.toContain(house.key)
  })
})

describe('entering the ledger', () => {
  it('needs a key: without one the button is not there, and asking for it anyway only judges', async () => {
    const before = await house.rows()
    const { status, html, text } = await fill(house, STUD, entries)
    expect([status, text]).toEqual([200, expect.stringContaining('Not recorded')])
    expect(html).not.toContain('value="enter"')
    expect(await house.rows()).toEqual(before)
  })

  it('needs a job', async () => {
    const before = await house.rows()
    const { status, text } = await fill(house, STUD, { ...entries, job: '' }, { cookie })
    expect([status, text]).toEqual([422, expect.stringContaining('The ledger needs a job')])
    expect(await house.rows()).toEqual(before)
  })

  it('enters the same decision that a program would, once, and leads to its work order', async () => {
    const asked = await fill(house, STUD, { ...entries, intent: 'judge' }, { cookie })
    expect(asked.html).toMatch(/<button form="sheet" name="intent" value="enter">/)
    const { status, headers } = await fill(house, STUD, entries, { cookie })
    expect([status, headers.get('location')]).toEqual([303, expect.stringMatching(/^\/decisions\/[\w-]+$/)])
    const finding = {
      part: 'rocker-stud',
      at: '3E',
      property: 'shoulder.groove-depth',
      value: '10 thou',
      instrument: 'depth-micrometer',
      by: 'bench 2',
    }
    const sheet = { job: 'QLE-9', engine: 'QL-6P', build: { casting: 'QP-1' }, findings: [finding] }
    const programs = (await (await house.app.request('/v1/decisions', post(house.key, sheet))).json()) as DecisionRecord
    const ledger = await entered()
    expect(ledger.map((d) => d.ledger?.hash)).toEqual([programs.ledger?.hash, programs.ledger?.hash])
    expect(headers.get('location')).toBe(`/decisions/${ledger[0]?.id}`)
  })

  it.each([
    ['another site', { origin: 'https://elsewhere.example' }],
    ['a site that hides its origin', { origin: 'null' }],
    ['another port of this host', { origin: `${ORIGIN}:9999` }],
  ])('a form from %s is refused, cookie or not', async (_who, headers) => {
    const before = await house.rows()
    const { status, text } = await fill(house, STUD, entries, { cookie, ...headers })
    expect([status, text]).toEqual([403, expect.stringContaining('came from another site')])
    expect(await house.rows()).toEqual(before)
  })

  it('behind a proxy that speaks TLS for us our own form is still ours', async () => {
    const { status } = await fill(house, STUD, DEEP, { origin: 'https://counter.example', host: 'counter.example' })
    expect(status).toBe(200)
  })

  it('a ledger that does not answer is said so, and no decision is shown', async () => {
    const broken = await openHouse((service) => ({
      db: Object.assign(Object.create(service.db) as typeof service.db, {
        select: () => {
          throw new StoreTrouble('busy', 'looking up a key', 'SQLITE_BUSY')
        },
      }),
    }))
    try {
      const { status, text } = await fill(broken, STUD, entries, { cookie: `witnessmark-key=${broken.key}` })
      expect([status, text]).toEqual([503, expect.stringContaining('The ledger does not answer')])
      expect(text).not.toContain('Replace')
    } finally {
      await broken.leave()
    }
  })
})

describe('the work order', () => {
  let path: string
  beforeAll(async () => {
    path = (await fill(house, STUD, { ...entries, job: 'QLE-10 "weir" <pump>' }, { cookie })).headers.get('location') ?? ''
  })

  it('carries the job, the engine, the edition, the whole hash, and room to sign', async () => {
    const { status, text, html } = await look(house, path, cookie)
    expect(status).toBe(200)
    const id = path.slice('/decisions/'.length)
    const record = (await (await house.app.request(`/v1/decisions/${id}`, { headers: json(house.key) })).json()) as DecisionRecord
    for (const mark of ['QLE-10 "weir" <pump>', 'QL-6P', record.edition, record.ledger?.hash, id, 'Ordered by', 'Date'])
      expect(text).toContain(mark)
    expect(html).not.toContain('<pump>')
  })

  it('says hazards first, then verdicts, work in its order, parts, checks with room for a figure, and the findings as typed', async () => {
    const { text, html } = await look(house, path, cookie)
    const titles = [
      'Hazards',
      'Engine and build',
      'Verdicts',
      'Order of work',
      'Figures to work to',
      'Parts',
      'When the work comes back',
      'Findings as entered',
      'Nobody looked at',
      'Signed',
    ]
    const places = titles.map((title) => html.search(new RegExp(`<h2[^>]*>${title}</h2>`)))
    expect(
      places.every((at) => at > 0),
      places.join(),
    ).toBe(true)
    expect(places).toEqual([...places].sort((a, b) => a - b))
    expect(text).toMatch(/depth of the groove in the shoulder 10 thou depth micrometer/)
    expect(text).toMatch(/groove depth that condemns a stud 0\.005 in remembered, adopted by the shop/)
    expect(html.slice(places[6]).match(/class="write"/g)?.length ?? 0).toBeGreaterThan(4)
  })

  it('is the shop’s own: without its key it is not shown, and to another shop it is not there', async () => {
    const nobody = await look(house, path)
    expect([nobody.status, nobody.text.includes('QLE-10')]).toEqual([403, false])
    const other = await look(house, path, await cookieFor(house, house.otherKey))
    expect([other.status, other.text.includes('QLE-10')]).toEqual([404, false])
    expect((await look(house, '/decisions/nothing-of-that-id', cookie)).status).toBe(404)
  })

  it('is kept by no cache', async () => {
    expect((await look(house, path, cookie)).headers.get('cache-control')).toBe('no-store')
  })
})
