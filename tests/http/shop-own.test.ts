/** What a shop puts through the API: its own engine sheets, adoptions, figures of its own. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Engine } from '../../src/rulebook/schema/engine.ts'
import { json, openHouse, post, problemIn, SHEET, type House } from './house.ts'

let house: House
beforeEach(async () => {
  house = await openHouse()
})
afterEach(() => house.leave())

const by = 'the foreman (invented)'
const get = async (path: string, key = house.key): Promise<Response> =>
  house.app.request(path, { headers: { authorization: `Bearer ${key}` } })
const put = async (path: string, body: unknown, key: string | undefined = house.key): Promise<Response> =>
  house.app.request(path, { ...post(key, body), method: 'PUT' })
const bodyOf = async <T>(response: Response | Promise<Response>): Promise<T> => (await (await response).json()) as T

interface Shown {
  readonly id: string
  readonly own: boolean
  readonly sheet: Engine
}

/** The rulebook's sheet as the API shows it, with one limit changed. */
async function changed(margin: unknown = '0.070 in', change: object = {}): Promise<unknown> {
  const { sheet } = await bodyOf<Shown>(get('/v1/engines/QL-6P', house.otherKey))
  const valve = { ...sheet.limits['valve'], 'margin-min': { intake: '0.040 in', exhaust: margin } }
  return { ...sheet, limits: { ...sheet.limits, valve }, ...change }
}

/** Every row that these routes may write. */
async function kept(): Promise<unknown> {
  const tables = ['shop_engines', 'adoptions', 'shop_limits', 'disclosures', 'decisions', 'editions']
  const rows = await Promise.all(tables.map(async (table) => (await house.service.db.$client.execute(`select * from ${table}`)).rows))
  return JSON.parse(JSON.stringify(rows))
}

const ROUTES = [
  ['GET', '/v1/engines'],
  ['GET', '/v1/engines/QL-6P'],
  ['PUT', '/v1/engines/QL-6P'],
  ['GET', '/v1/limits'],
  ['PUT', '/v1/limits/valve/margin-min'],
  ['PUT', '/v1/adoptions/rocker-stud/groove-depth-max'],
] as const

describe('every route', () => {
  it.each(ROUTES)('%s %s asks for a key, before it looks at anything else', async (method, path) => {
    const before = await kept()
    for (const key of [undefined, `wm_${'0'.repeat(64)}`]) {
      const response = await house.app.request(path, { method, headers: json(key), ...(method === 'PUT' ? { body: '{' } : {}) })
      expect(await problemIn(response)).toMatchObject({ status: 401, type: '/problems/unauthorised' })
    }
    expect(await kept()).toEqual(before)
  })

  it.each([
    ['/v1/engines/QL-6P', ['GET', 'HEAD', 'PUT']],
    ['/v1/engines', ['GET', 'HEAD']],
    ['/v1/limits', ['GET', 'HEAD']],
    ['/v1/limits/valve/margin-min', ['PUT']],
    ['/v1/adoptions/valve/margin-min', ['PUT']],
  ])('%s says which methods work', async (path, methods) => {
    const response = await house.app.request(path, post(house.key, {}))
    expect([response.status, response.headers.get('allow')?.split(', ').sort()]).toEqual([405, methods])
  })
})

const PUTS = [
  ['/v1/engines/QL-6P', 131_072],
  ['/v1/limits/valve/margin-min', 8192],
  ['/v1/adoptions/rocker-stud/groove-depth-max', 8192],
] as const

describe.each(PUTS)('PUT %s', (path, most) => {
  it.each([
    ['JSON cut short', '{"by": "the', 400, '/problems/not-json', 'not-json', ''],
    ['one key given twice', '{"by":"a","by":"b"}', 400, '/problems/not-json', 'not-json', ''],
    ['JSON nested too deep', '['.repeat(5000), 400, '/problems/too-deep', 'too-deep', ''],
    ['a key behind the object', '{"__proto__":{"by":"x"}}', 422, '/problems/entry-refused', 'key-unknown', '/__proto__'],
    ['a list', '[]', 422, '/problems/entry-refused', 'shape', ''],
    ['null', 'null', 422, '/problems/entry-refused', 'shape', ''],
    ['a field that is none', '{"by":"x","valeu":"1 mm"}', 422, '/problems/entry-refused', 'key-unknown', '/valeu'],
    ['nobody named', '{}', 422, '/problems/entry-refused', 'field-missing', '/by'],
  ])('%s is refused with its place, and leaves nothing', async (_name, body, status, type, code, pointer) => {
    const before = await kept()
    const problem = await problemIn(await put(path, body))
    expect([problem.status, problem.type]).toEqual([status, type])
    expect(problem.errors.map((e) => [e.code, e.pointer])).toContainEqual([code, pointer])
    expect(await kept()).toEqual(before)
    expect((await house.app.request(problem.type)).status).toBe(200)
  })

  it('a body over the limit is refused as it comes, one of another content type too', async () => {
    const large = await put(path, ' '.repeat(most + 1))
    expect(await problemIn(large)).toMatchObject({ status: 413, type: '/problems/body-too-large' })
    expect((await put(path, ' '.repeat(most))).status).toBe(400)
    const plain = await house.app.request(path, {
      method: 'PUT',
      headers: { ...json(house.key), 'content-type': 'text/plain' },
      body: '{}',
    })
    expect(plain.status).toBe(415)
  })
})

describe('/v1/engines', () => {
  it('lists what the shop can judge by: 201 for a sheet that it had not, 200 after that', async () => {
    const first = await put('/v1/engines/QL-6P', { by, sheet: await changed() })
    expect([first.status, first.headers.get('location')]).toEqual([201, '/v1/engines/QL-6P'])
    expect(await bodyOf(first)).toMatchObject({ id: 'QL-6P', own: true, standsOver: true, put: { by } })
    expect((await put('/v1/engines/QL-6P', { by, sheet: await changed('0.065 in') })).status).toBe(200)
    const { engines } = await bodyOf<{ engines: Record<string, unknown>[] }>(get('/v1/engines'))
    expect(engines.map((e) => [e['id'], e['own']])).toEqual([
      ['QL-6P', true],
      ['QL-8S', false],
    ])
    expect(engines[0]).toMatchObject({ castings: ['QP-1', 'QP-0'].sort(), cards: { springs: ['K-1', 'stock'] }, put: { by } })
    expect(Object.keys(engines[0] ?? {})).not.toContain('sheet')
  })

  it('what is shown can be put again as it is, and what was put is shown', async () => {
    const { sheet } = await bodyOf<Shown>(get('/v1/engines/QL-8S'))
    expect((await put('/v1/engines/QL-8S', { by, sheet })).status).toBe(201)
    const shown = await bodyOf<Shown>(get('/v1/engines/QL-8S'))
    expect([shown.own, shown.sheet]).toEqual([true, sheet])
  })

  it('a copy with one limit changed decides, and its edition is another', async () => {
    const margin = async (key: string): Promise<[string | undefined, string]> => {
      const answer = await bodyOf<{ edition: string; verdicts: { part: string; at: string; disposition: string }[] }>(
        house.app.request('/v1/judgements', post(key, SHEET)),
      )
      return [answer.verdicts.find((v) => v.part === 'valve' && v.at === '3E')?.disposition, answer.edition]
    }
    const [[before, edition], theirs] = [await margin(house.key), await margin(house.otherKey)]
    await put('/v1/engines/QL-6P', { by, sheet: await changed() })
    const [after, other] = await margin(house.key)
    expect([before, after]).toEqual(['undetermined', 'replace'])
    expect(other).not.toBe(edition)
    expect(await margin(house.otherKey)).toEqual(theirs)
  })

  it('another shop’s sheet is not there', async () => {
    await put('/v1/engines/AB-4', { by, sheet: await changed('0.055 in', { id: 'AB-4' }) })
    expect((await get('/v1/engines/AB-4')).status).toBe(200)
    expect(await problemIn(await get('/v1/engines/AB-4', house.otherKey))).toEqual(
      await problemIn(await get('/v1/engines/none', house.otherKey)),
    )
    expect(await (await get('/v1/engines', house.otherKey)).text()).not.toContain('AB-4')
  })

  it('a sheet with faults is refused whole, every one named with its place in what was sent', async () => {
    await put('/v1/engines/QL-6P', { by, sheet: await changed() })
    const before = await kept()
    const bad = await changed('0.070 in (1.20 mm)', { limts: {}, parts: ['valve', 'flux-fin', 'job'] })
    const problem = await problemIn(await put('/v1/engines/QL-6P', { by, sheet: bad }))
    expect([problem.status, problem.type]).toEqual([422, '/problems/entry-refused'])
    expect(problem.errors.map((e) => [e.code, e.pointer]).sort()).toEqual([
      ['key-unknown', '/sheet/limts'],
      ['pair-disagrees', '/sheet/limits/valve/margin-min/exhaust'],
      ['part-unknown', '/sheet/parts/1'],
    ])
    const pair = problem.errors.find((e) => e.code === 'pair-disagrees')
    expect(pair?.says).toMatch(/0\.070 in .*against 1\.20 mm/)
    expect(pair?.value).toBe('0.070 in (1.20 mm)')
    expect(await kept()).toEqual(before)
  })

  it('a sheet that calls itself otherwise than its address is refused', async () => {
    const problem = await problemIn(await put('/v1/engines/QL-6Q', { by, sheet: await changed() }))
    expect(problem.errors.map((e) => [e.code, e.pointer])).toEqual([['id-not-address', '/sheet/id']])
  })

  it('ten at once leave one whole sheet', async () => {
    const sheets = await Promise.all(Array.from({ length: 10 }, (_, i) => changed(`0.0${50 + i} in`)))
    const answers = await Promise.all(sheets.map((sheet, i) => put('/v1/engines/QL-6P', { by: `bench ${i % 3}`, sheet })))
    expect(answers.every((a) => a.ok)).toBe(true)
    const { sheet } = await bodyOf<Shown>(get('/v1/engines/QL-6P'))
    expect(sheets).toContainEqual(sheet)
  })
})

describe('/v1/limits and /v1/adoptions', () => {
  interface Line {
    readonly part: string
    readonly limit: string
    readonly defaults: readonly { readonly decides: boolean }[]
    readonly adopted?: unknown
    readonly own?: unknown
  }
  const lineOf = async (limit: string, key: string): Promise<Line | undefined> =>
    (await bodyOf<{ limits: Line[] }>(get('/v1/limits', key))).limits.find((l) => `${l.part}/${l.limit}` === limit)
  const GROOVE = 'rocker-stud/groove-depth-max'
  const deep = {
    ...SHEET,
    findings: [{ part: 'rocker-stud', at: '4I', property: 'shoulder.groove-depth', value: '0.020 in', instrument: 'depth-micrometer' }],
  }
  const stud = async (key: string): Promise<string | undefined> =>
    (
      await bodyOf<{ verdicts: { part: string; at: string; disposition: string }[] }>(house.app.request('/v1/judgements', post(key, deep)))
    ).verdicts.find((v) => v.part === 'rocker-stud' && v.at === '4I')?.disposition

  it('an adoption answers with the limit, its figure and source, and from then on it decides', async () => {
    expect([await stud(house.otherKey), (await lineOf(GROOVE, house.otherKey))?.defaults[0]?.decides]).toEqual(['undetermined', false])
    const response = await put(`/v1/adoptions/${GROOVE}`, { by }, house.otherKey)
    expect([response.status, await bodyOf(response)]).toEqual([
      200,
      expect.objectContaining({
        part: 'rocker-stud',
        limit: 'groove-depth-max',
        defaults: [expect.objectContaining({ source: { id: 'memory', title: 'From memory' } })],
      }),
    ])
    expect(await stud(house.otherKey)).toBe('replace')
    expect(await lineOf(GROOVE, house.otherKey)).toMatchObject({ adopted: { by }, defaults: [{ decides: true }] })
  })

  it('a figure of the shop’s own decides in its shop alone', async () => {
    const set = { value: '0.030 in', by, note: 'none has broken under that' }
    expect(await bodyOf(put(`/v1/limits/${GROOVE}`, set))).toMatchObject({ own: { value: '0.030 in', by, note: set.note } })
    expect(await stud(house.key)).toBe('undetermined')
    expect((await lineOf(GROOVE, house.otherKey))?.own).toBeUndefined()
  })

  it('a pair that disagrees is refused with both readings', async () => {
    const before = await kept()
    const problem = await problemIn(await put(`/v1/limits/${GROOVE}`, { value: '0.012 in (0.50 mm)', by }))
    expect(problem.errors).toEqual([
      expect.objectContaining({ code: 'pair-disagrees', pointer: '/value', value: '0.012 in (0.50 mm)', choices: ['0.012 in', '0.50 mm'] }),
    ])
    expect(problem.detail).toMatch(/0\.012 in .*against 0\.50 mm/)
    expect(await kept()).toEqual(before)
  })

  it('a limit that is not there is 404, one that is no memory 422', async () => {
    for (const path of ['/v1/limits/valve/shine-min', '/v1/adoptions/valve/shine-min', '/v1/adoptions/constructor/name'])
      expect(await problemIn(await put(path, { by, ...(path.includes('limits/') ? { value: '1 mm' } : {}) })), path).toMatchObject({
        status: 404,
        type: '/problems/not-found',
      })
    expect(await problemIn(await put('/v1/adoptions/valve/face-runout-max', { by }))).toMatchObject({
      status: 422,
      type: '/problems/entry-refused',
      errors: [{ code: 'nothing-to-adopt', pointer: '' }],
    })
  })

  it('a name that can’t be used is refused and not repeated', async () => {
    const problem = await problemIn(await put(`/v1/adoptions/${GROOVE}`, { by: 'n'.repeat(300) }))
    expect(problem.errors.map((e) => [e.pointer, e.value])).toEqual([['/by', undefined]])
  })

  it('without the ledger there is no answer', async () => {
    house.service.db.close()
    expect(await problemIn(await put(`/v1/adoptions/${GROOVE}`, { by }))).toMatchObject({
      status: 503,
      type: '/problems/store-unreachable',
    })
  })
})

describe('on the page', () => {
  it('the shop’s own engine is offered, and its own sheet is shown in the place of the rulebook’s', async () => {
    await put('/v1/engines/AB-4', { by, sheet: await changed('0.055 in', { id: 'AB-4', says: 'A four-cylinder of our own (invented).' }) })
    const form = new URLSearchParams({ key: house.key, back: '/' })
    const taken = await house.app.request('/key', {
      method: 'POST',
      body: form.toString(),
      headers: { 'content-type': 'application/x-www-form-urlencoded', origin: 'http://localhost', host: 'localhost' },
    })
    const cookie = (taken.headers.get('set-cookie') ?? '').split(';')[0] ?? ''
    const { pathname } = new URL(
      (/href="(\/[a-z-]+)"/.exec(await (await house.app.request('/')).text()) ?? [])[1] ?? '/',
      'http://localhost',
    )
    const page = async (headers: Record<string, string>): Promise<string> =>
      (await house.app.request(`${pathname}?engine=AB-4`, { headers })).text()
    expect(await page({ cookie })).toContain('A four-cylinder of our own (invented).')
    expect(await page({})).not.toContain('A four-cylinder')
  })
})
