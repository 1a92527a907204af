import { globSync, readFileSync } from 'node:fs'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { CODES, codeMeaning } from '../../src/http/problem-codes.ts'
import { problemOf } from '../../src/http/problem.ts'
import { fault, Refused } from '../../src/quantity/fault.ts'
import { StoreTrouble } from '../../src/store/trouble.ts'
import { openHouse, post, problemIn, SHEET, type House } from './house.ts'

const SRC = new URL('../../src/', import.meta.url).pathname

/** Every code that the source puts into a fault or a problem: the literals in the place of the code. */
function codesInSource(): ReadonlySet<string> {
  const codes = new Set<string>()
  for (const file of globSync(`${SRC}**/*.ts`)) {
    const text = readFileSync(file, 'utf8')
    const places = [
      ...text.matchAll(/\b(?:fault|question)\(\s*([^,]+),/g),
      ...text.matchAll(/\b(?:oneProblem|problem)\(\s*[\w.]+(?:\s*\?[^,]+)?,\s*([^,]+),/g),
      ...text.matchAll(/\bcode: ('[^']+')/g),
    ]
    for (const [, place = ''] of places) for (const [, code = ''] of place.matchAll(/'([a-z0-9]+(?:-[a-z0-9]+)*)'/g)) codes.add(code)
  }
  for (const [, code = ''] of readFileSync(`${SRC}http/problem.ts`, 'utf8').matchAll(/\[\s*\d{3},\s*'([a-z-]+)'/g)) codes.add(code)
  return codes
}

describe('the table of codes', () => {
  it('has a line for every code in the source', () => {
    const codes = codesInSource()
    // Codes that are certainly there, so that a search that finds nothing fails.
    expect([...codes]).toEqual(
      expect.arrayContaining([
        'property-unknown',
        'out-of-range',
        'unit-missing',
        'tenths',
        'message-altered',
        'store-busy',
        'body-too-large',
      ]),
    )
    expect([...codes].filter((code) => codeMeaning(code) === undefined)).toEqual([])
  })

  it('has no line that nothing uses', () => {
    const codes = codesInSource()
    expect(CODES.filter((code) => !codes.has(code))).toEqual([])
  })

  it('says each in words', () => {
    for (const code of CODES) {
      const { title, means } = codeMeaning(code) ?? {}
      expect(title, code).toMatch(/^[A-Z"].{3,60}$/)
      expect(means, code).toMatch(/^[A-Z"].{10,}[.?]$/)
    }
  })
})

describe('what an error is answered with', () => {
  it.each([
    ['busy', 503, '/problems/store-busy'],
    ['full', 507, '/problems/store-full'],
    ['unreachable', 503, '/problems/store-unreachable'],
    ['unexpected', 500, '/problems/unexpected'],
  ] as const)('the store’s trouble "%s" is %i', (code, status, type) => {
    const shown = problemOf(new StoreTrouble(code, 'entering a decision', 'SQLITE_SECRET', 'decisions.seq'), 'r-1')
    expect(shown).toMatchObject({ status, type, requestId: 'r-1' })
    expect(JSON.stringify(shown)).not.toMatch(/SQLITE|decisions\.seq/)
  })

  it('of an error that is not ours nothing is told', () => {
    const shown = problemOf(new TypeError('cannot read "the foreman" of undefined'), 'r-2')
    expect(shown).toMatchObject({ status: 500, type: '/problems/unexpected', requestId: 'r-2' })
    expect(JSON.stringify(shown)).not.toContain('foreman')
  })

  it('faults keep their places, values and choices', () => {
    const one = {
      ...fault('unit-ambiguous', '/findings/0/value', 'It may be either.', 'Write which.', '12'),
      choices: ['12 thou', '12 mm'],
    }
    expect(problemOf(new Refused([one]), 'r')).toMatchObject({
      status: 422,
      errors: [{ value: '12', choices: ['12 thou', '12 mm'] }],
      detail: '/findings/0/value: It may be either. Write which.',
    })
  })
})

describe('through the app', () => {
  let house: House
  beforeEach(async () => {
    house = await openHouse(() => ({
      newId: () => {
        throw new TypeError('no id for bench 2')
      },
    }))
  })
  afterEach(() => house.leave())

  it('a fault of ours is 500 without its words, told to the log under the same request id', async () => {
    const response = await house.app.request('/v1/decisions', post(house.key, SHEET))
    const text = await response.clone().text()
    const problem = await problemIn(response)
    expect([problem.status, problem.requestId]).toEqual([500, response.headers.get('x-request-id')])
    expect(text).not.toContain('bench 2')
    expect(house.reported).toEqual([expect.stringContaining(`${problem.requestId} POST /v1/decisions: TypeError`)])
  })

  it('a ledger that can’t be reached gives no answer, and says when to come again', async () => {
    house.service.db.close()
    for (const path of ['/v1/judgements', '/healthz']) {
      const response = await house.app.request(path, path === '/healthz' ? {} : post(house.key, SHEET))
      expect(Number(response.headers.get('retry-after'))).toBeGreaterThan(0)
      expect(await problemIn(response)).toMatchObject({ status: 503, type: '/problems/store-unreachable' })
    }
  })

  it('GET /problems/{code} explains it: JSON for programs, a page for a browser', async () => {
    const plain = await house.app.request('/problems/values-disagree')
    expect(await plain.json()).toEqual({ code: 'values-disagree', title: expect.any(String), means: expect.stringContaining('list') })
    const page = await house.app.request('/problems/values-disagree', { headers: { accept: 'text/html,*/*' } })
    expect(page.headers.get('content-type')).toMatch(/^text\/html/)
    expect(await page.text()).toContain('<code>values-disagree</code>')
    const { codes } = (await (await house.app.request('/problems')).json()) as { codes: { code: string }[] }
    expect(codes.map((c) => c.code)).toEqual(CODES)
    expect(await problemIn(await house.app.request('/problems/%3Cscript%3E'))).toMatchObject({ status: 404 })
  })

  it('the type of every problem leads to its page', async () => {
    for (const [path, init] of [
      ['/v1/judgements', post(house.key, { ...SHEET, engine: 'none' })],
      ['/v1/judgements', post(undefined, SHEET)],
      ['/nowhere', {}],
    ] as const) {
      const { type } = await problemIn(await house.app.request(path, init))
      expect((await house.app.request(type)).status).toBe(200)
    }
  })
})
