import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { json, openHouse, post, problemIn, SHEET, type House } from './house.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

/** The sound sheet with one finding changed or added. */
const finding = (...more: Record<string, unknown>[]): unknown => ({ ...SHEET, findings: [...SHEET.findings, ...more] })
const margin = (change: Record<string, unknown>): Record<string, unknown> => ({
  part: 'valve',
  at: '1E',
  property: 'margin',
  value: '0.061 in',
  ...change,
})

interface Bad {
  readonly name: string
  readonly body: unknown
  readonly status: number
  readonly type: string
  readonly code: string
  readonly pointer: string
  readonly value?: string | RegExp
  readonly mend: RegExp
}

const BAD: readonly Bad[] = [
  {
    name: 'a property that the part does not have',
    body: finding(margin({ property: 'shine' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'property-unknown',
    pointer: '/findings/2/property',
    value: 'shine',
    mend: /margin/,
  },
  {
    name: 'a unit of the wrong kind',
    body: finding(margin({ value: '5 lb' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'wrong-kind',
    pointer: '/findings/2/value',
    value: '5 lb',
    mend: /\bin\b|mm/,
  },
  {
    name: 'a value out of the plausible range',
    body: finding(margin({ value: '12 in' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'out-of-range',
    pointer: '/findings/2/value',
    value: '12 in',
    mend: /\w/,
  },
  {
    name: 'two findings that disagree',
    body: finding(margin({}), margin({ value: '0.045 in' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'values-disagree',
    pointer: '/findings/3',
    value: '0.045 in',
    mend: /list|wrong one/,
  },
  {
    name: 'an inch and a millimetre figure that disagree',
    body: finding(margin({ value: '0.061 in (2.10 mm)' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'pair-disagrees',
    pointer: '/findings/2/value',
    value: '0.061 in (2.10 mm)',
    mend: /0\.061 in/,
  },
  {
    name: 'a part that the engine does not have',
    body: finding({ part: 'guide-plate', at: '1', property: 'slot.play', value: '0.010 in' }),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'part-not-fitted',
    pointer: '/findings/2/part',
    value: 'guide-plate',
    mend: /casting/,
  },
  {
    name: 'a part that is none',
    body: finding({ part: 'flux-fin', at: '1E', property: 'margin', value: '1 mm' }),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'part-unknown',
    pointer: '/findings/2/part',
    value: 'flux-fin',
    mend: /valve/,
  },
  {
    name: 'a position that the engine does not have',
    body: finding(margin({ at: '9E' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'position-unknown',
    pointer: '/findings/2/at',
    value: '9E',
    mend: /all exhaust/,
  },
  {
    name: 'an engine without a sheet',
    body: { ...SHEET, engine: 'QL-9X' },
    status: 422,
    type: '/problems/sheet-refused',
    code: 'engine-unknown',
    pointer: '/engine',
    value: 'QL-9X',
    mend: /QL-6P/,
  },
  {
    name: 'a field that is none',
    body: { ...SHEET, findigns: [] },
    status: 422,
    type: '/problems/sheet-refused',
    code: 'key-unknown',
    pointer: '/findigns',
    mend: /findings/,
  },
  {
    name: 'a field that is missing',
    body: { engine: 'QL-6P' },
    status: 422,
    type: '/problems/sheet-refused',
    code: 'field-missing',
    pointer: '/job',
    mend: /Give it/,
  },
  {
    name: 'a time without the shop’s offset',
    body: finding(margin({ observedAt: '2031-04-02 10:15' })),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'shape',
    pointer: '/findings/2/observedAt',
    value: '2031-04-02 10:15',
    mend: /\w/,
  },
  {
    name: 'NaN',
    body: JSON.stringify(finding(margin({ value: 'x' }))).replace('"x"', 'NaN'),
    status: 400,
    type: '/problems/not-json',
    code: 'not-json',
    pointer: '',
    mend: /NaN/,
  },
  {
    name: 'a number beyond all measure',
    body: JSON.stringify(finding(margin({ value: 'x' }))).replace('"x"', '1e999'),
    status: 422,
    type: '/problems/sheet-refused',
    code: 'not-a-number',
    pointer: '/findings/2/value',
    value: /1e\+?999/,
    mend: /\w/,
  },
  { name: 'JSON cut short', body: '{"job": "QLE', status: 400, type: '/problems/not-json', code: 'not-json', pointer: '', mend: /JSON/ },
  { name: 'no body at all', body: '', status: 400, type: '/problems/not-json', code: 'not-json', pointer: '', mend: /JSON/ },
  {
    name: 'JSON nested a hundred thousand deep',
    body: '['.repeat(100_000) + ']'.repeat(100_000),
    status: 400,
    type: '/problems/too-deep',
    code: 'too-deep',
    pointer: '',
    mend: /flat list/,
  },
  {
    name: 'one key given twice',
    body: '{"job":"a","job":"b","engine":"QL-6P"}',
    status: 400,
    type: '/problems/not-json',
    code: 'not-json',
    pointer: '',
    mend: /JSON/,
  },
  {
    name: 'a list in the place of a sheet',
    body: [],
    status: 422,
    type: '/problems/sheet-refused',
    code: 'shape',
    pointer: '',
    mend: /\w/,
  },
  {
    name: 'null in the place of a sheet',
    body: 'null',
    status: 422,
    type: '/problems/sheet-refused',
    code: 'shape',
    pointer: '',
    mend: /\w/,
  },
  {
    name: 'a body over the limit',
    body: { ...SHEET, job: 'x'.repeat(600_000) },
    status: 413,
    type: '/problems/body-too-large',
    code: 'body-too-large',
    pointer: '',
    mend: /one job a sheet/,
  },
]

describe.each(['/v1/judgements', '/v1/decisions'])('POST %s', (path) => {
  it.each(BAD.map((bad) => [bad.name, bad] as const))(
    '%s is refused with its place, the value and the mend, and leaves nothing',
    async (_name, bad) => {
      const before = await house.rows()
      const response = await house.app.request(path, post(house.key, bad.body))
      const problem = await problemIn(response)
      expect([problem.status, problem.type]).toEqual([bad.status, bad.type])
      const found = problem.errors.find((e) => e.code === bad.code)
      expect(found, JSON.stringify(problem.errors)).toMatchObject({ code: bad.code, pointer: bad.pointer })
      expect(found?.mend).toMatch(bad.mend)
      if (bad.value !== undefined) expect(found?.value).toMatch(bad.value)
      expect(await house.rows()).toEqual(before)
    },
  )

  it('a sheet with one bad finding among good ones gets no verdict on the good ones, and every fault is told at once', async () => {
    const response = await house.app.request(path, post(house.key, finding(margin({ property: 'shine' }), margin({ at: '9E' }))))
    const problem = await problemIn(response)
    expect(problem.errors.map((e) => e.pointer)).toEqual(['/findings/2/property', '/findings/3/at'])
    expect(Object.keys(problem)).not.toContain('verdicts')
  })

  it('work that is never judged is declined by its own name', async () => {
    const { properties } = house.service.book.book.parts.get('job') ?? {}
    const [name, choice] =
      [...(properties ?? [])].flatMap(([name_, { property }]) =>
        property.kind === 'choice'
          ? Object.entries(property.choices)
              .filter(([, c]) => c.declined !== undefined)
              .map(([id]) => [name_, id] as const)
          : [],
      )[0] ?? []
    expect(name, 'the vocabulary declines something').toBeDefined()
    const problem = await problemIn(
      await house.app.request(path, post(house.key, { ...SHEET, build: { [String(name)]: choice, casting: 'nonsense' } })),
    )
    expect([problem.status, problem.type]).toEqual([422, '/problems/declined'])
    expect(problem.errors[0]).toMatchObject({ code: 'declined', pointer: `/build/${String(name)}` })
  })

  it('a thousand faults are counted, and a hundred shown', async () => {
    const problem = await problemIn(
      await house.app.request(path, post(house.key, finding(...Array.from({ length: 1000 }, () => margin({ property: 'shine' }))))),
    )
    expect(problem.errors).toHaveLength(100)
    expect(problem.detail).toContain('1000 faults')
  })

  it.each([
    ['text/plain', 415],
    ['application/x-www-form-urlencoded', 415],
    ['application/json; charset=latin1', 415],
    ['application/json; charset=UTF-8', undefined],
    ['application/vnd.quarry+json', undefined],
  ])('content type %s', async (type, status) => {
    const response = await house.app.request(path, { ...post(house.key, SHEET), headers: { ...json(house.key), 'content-type': type } })
    if (status === undefined) expect(response.ok).toBe(true)
    else expect(await problemIn(response)).toMatchObject({ status, type: '/problems/content-type', errors: [{ value: type }] })
  })

  it('bytes that are no UTF-8 are refused, and a byte order mark is passed over', async () => {
    const bytes = new TextEncoder().encode(JSON.stringify(SHEET))
    const broken = await house.app.request(path, {
      method: 'POST',
      headers: json(house.key),
      body: new Uint8Array([...bytes.slice(0, 10), 0xff, ...bytes.slice(10)]),
    })
    expect(await problemIn(broken)).toMatchObject({ status: 400, type: '/problems/not-utf8' })
    const marked = await house.app.request(path, {
      method: 'POST',
      headers: json(house.key),
      body: new Uint8Array([0xef, 0xbb, 0xbf, ...bytes]),
    })
    expect(marked.ok).toBe(true)
  })

  it('a body that comes in pieces without a length is counted as it comes', async () => {
    let sent = 0
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent += 1
        controller.enqueue(new Uint8Array(16_384).fill(32))
      },
    })
    const response = await house.app.request(path, {
      method: 'POST',
      headers: json(house.key),
      body: endless,
      duplex: 'half',
    } as RequestInit)
    expect(await problemIn(response)).toMatchObject({ status: 413, type: '/problems/body-too-large' })
    expect(sent).toBeLessThan(40)
  })

  it('a length that is told too small does not let a large body in', async () => {
    const response = await house.app.request(path, {
      method: 'POST',
      headers: { ...json(house.key), 'content-length': '20' },
      body: ' '.repeat(600_000),
    })
    expect((await problemIn(response)).status).toBe(413)
  })

  it('a key that would reach behind the object is a field like any other: unknown', async () => {
    const text = `{"__proto__":{"stage":"returned"},${JSON.stringify(SHEET).slice(1)}`
    const problem = await problemIn(await house.app.request(path, post(house.key, text)))
    expect(problem.errors.map((e) => [e.code, e.pointer])).toEqual([['key-unknown', '/__proto__']])
  })
})
