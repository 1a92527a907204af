import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openHouse, post, problemIn, SHEET, type House } from './house.ts'

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

interface Answer {
  readonly recorded: boolean
  readonly says?: string
  readonly id?: string
  readonly edition: string
  readonly verdicts: readonly { readonly part: string; readonly at: string; readonly disposition: string }[]
  readonly ledger?: { readonly seq: number; readonly hash: string }
  readonly body: unknown
}

const bodyOf = async <T>(response: Response): Promise<T> => (await response.json()) as T
const get = (path: string, key = house.key): Response | Promise<Response> =>
  house.app.request(path, { headers: { authorization: `Bearer ${key}` } })
const groovedStud = (answer: Answer): string | undefined =>
  answer.verdicts.find((v) => v.part === 'rocker-stud' && v.at === '3E')?.disposition

describe('POST /v1/judgements', () => {
  it('answers, says that nothing was recorded, and records nothing', async () => {
    const before = await house.rows()
    const response = await house.app.request('/v1/judgements', post(house.key, SHEET))
    const answer = await bodyOf<Answer>(response)
    expect([response.status, answer.recorded, groovedStud(answer)]).toEqual([200, false, 'replace'])
    expect(answer.says).toMatch(/not recorded/i)
    expect(await house.rows()).toEqual(before)
  })
})

describe('POST /v1/decisions', () => {
  it('answers 201 with the record, which then stands under its Location just as it was answered', async () => {
    const response = await house.app.request('/v1/decisions', post(house.key, SHEET))
    const answer = await bodyOf<Answer>(response)
    expect([response.status, answer.recorded, groovedStud(answer)]).toEqual([201, true, 'replace'])
    expect(response.headers.get('location')).toBe(`/v1/decisions/${answer.id}`)
    const stored = await get(response.headers.get('location') ?? '')
    expect(stored.status).toBe(200)
    expect(await bodyOf<Answer>(stored)).toEqual(answer)
  })

  it('numbers a shop’s decisions one after the other, and the same sheet has the same hash', async () => {
    const [a, b] = [
      await bodyOf<Answer>(await house.app.request('/v1/decisions', post(house.key, SHEET))),
      await bodyOf<Answer>(await house.app.request('/v1/decisions', post(house.key, SHEET))),
    ]
    expect(b.ledger?.seq).toBe((a.ledger?.seq ?? 0) + 1)
    expect(b.ledger?.hash).toBe(a.ledger?.hash)
    expect(b.id).not.toBe(a.id)
  })

  it('ten at once all come in, each with a number of its own', async () => {
    const all = await Promise.all(
      Array.from({ length: 10 }, async () =>
        bodyOf<Answer>(await house.app.request('/v1/decisions', post(house.key, { ...SHEET, job: 'ten at once' }))),
      ),
    )
    expect(new Set(all.map((a) => a.ledger?.seq)).size).toBe(10)
  })

  it('keeps the name of who measured out of the hashed body', async () => {
    const answer = await bodyOf<Answer>(await house.app.request('/v1/decisions', post(house.key, SHEET)))
    expect(JSON.stringify(answer.body)).not.toContain('bench 2')
  })
})

describe('GET /v1/decisions?job=…', () => {
  it('lists a job’s decisions, oldest first', async () => {
    const sheet = { ...SHEET, job: 'QLE & 7/8 of a job' }
    const made = [
      await bodyOf<Answer>(await house.app.request('/v1/decisions', post(house.key, sheet))),
      await bodyOf<Answer>(await house.app.request('/v1/decisions', post(house.key, sheet))),
    ]
    const response = await get(`/v1/decisions?job=${encodeURIComponent(sheet.job)}`)
    const { job, decisions } = await bodyOf<{ job: string; decisions: { id: string; ledger: unknown }[] }>(response)
    expect([response.status, job]).toEqual([200, sheet.job])
    expect(decisions.map((d) => [d.id, d.ledger])).toEqual(made.map((m) => [m.id, m.ledger]))
  })

  it('a job that nobody knows has none', async () => {
    expect(await bodyOf(await get('/v1/decisions?job=none'))).toEqual({ job: 'none', decisions: [] })
  })

  it('asks for the job', async () => {
    expect(await problemIn(await get('/v1/decisions'))).toMatchObject({
      status: 400,
      type: '/problems/query-refused',
      errors: [{ code: 'field-missing', pointer: '/job' }],
    })
  })
})

describe('what belongs to one shop', () => {
  it('is not there for another', async () => {
    const { id, job } = await bodyOf<Answer & { job: string }>(
      await house.app.request('/v1/decisions', post(house.key, { ...SHEET, job: 'ours alone' })),
    )
    const [theirs, none] = [
      await problemIn(await get(`/v1/decisions/${id}`, house.otherKey)),
      await problemIn(await get('/v1/decisions/no-such-id', house.otherKey)),
    ]
    expect(theirs).toEqual(none)
    expect(theirs).toMatchObject({ status: 404, type: '/problems/not-found' })
    expect(await bodyOf(await get(`/v1/decisions?job=${encodeURIComponent(job)}`, house.otherKey))).toMatchObject({ decisions: [] })
  })

  it('its adopted limits count for it and for nobody else', async () => {
    const sheet = {
      ...SHEET,
      findings: [{ part: 'rocker-stud', at: '4I', property: 'shoulder.groove-depth', value: '0.020 in', instrument: 'depth-micrometer' }],
    }
    const verdict = async (key: string): Promise<[string | undefined, string]> => {
      const answer = await bodyOf<Answer>(await house.app.request('/v1/judgements', post(key, sheet)))
      return [answer.verdicts.find((v) => v.part === 'rocker-stud' && v.at === '4I')?.disposition, answer.edition]
    }
    const [[ours, edition], [theirs, otherEdition]] = [await verdict(house.key), await verdict(house.otherKey)]
    expect([ours, theirs]).toEqual(['replace', 'undetermined'])
    expect(edition).not.toBe(otherEdition)
  })
})

describe('what is public', () => {
  it('GET /v1/vocabulary: every property of every part, without a key', async () => {
    const response = await house.app.request('/v1/vocabulary')
    const { parts, engines } = await bodyOf<{
      parts: { part: string; properties: Record<string, { label: string }> }[]
      engines: { id: string }[]
    }>(response)
    expect(response.status).toBe(200)
    expect(parts.find((p) => p.part === 'rocker-stud')?.properties['shoulder.groove-felt']).toHaveProperty('label')
    expect(engines.map((e) => e.id)).toEqual(expect.arrayContaining(['QL-6P', 'QL-8S']))
  })

  it('GET /v1/rulebook and GET /v1/rulebook/rules/{id}', async () => {
    const { edition, rules } = await bodyOf<{ edition: string; rules: { id: string }[] }>(await house.app.request('/v1/rulebook'))
    expect(edition).toMatch(/^[0-9a-f]{64}$/)
    expect(rules.length).toBe(house.service.book.rules.size)
    const rule = await bodyOf<{ id: string; words: string; sources: { id: string }[] }>(
      await house.app.request('/v1/rulebook/rules/rocker-stud.groove-condemns'),
    )
    expect(rule).toMatchObject({ id: 'rocker-stud.groove-condemns', kind: 'condemns' })
    expect(rule.sources.length).toBeGreaterThan(0)
  })

  it('every rule of the list can be read', async () => {
    for (const id of house.service.book.rules.keys()) expect((await house.app.request(`/v1/rulebook/rules/${id}`)).status, id).toBe(200)
  })

  it('a rule that is none is 404', async () => {
    expect(await problemIn(await house.app.request('/v1/rulebook/rules/valve.polished'))).toMatchObject({
      status: 404,
      type: '/problems/not-found',
    })
  })

  it('GET /healthz', async () => {
    expect(await bodyOf(await house.app.request('/healthz'))).toEqual({ status: 'ok', rules: house.service.book.rules.size })
  })
})

describe('round every route', () => {
  it('an address that is none is 404, and a method that does not fit 405 with those that do', async () => {
    expect(await problemIn(await house.app.request('/v2/decisions'))).toMatchObject({ status: 404, type: '/problems/not-found' })
    const response = await house.app.request('/v1/vocabulary', { method: 'DELETE' })
    expect(response.headers.get('allow')).toBe('GET, HEAD')
    expect(await problemIn(response)).toMatchObject({ status: 405, type: '/problems/method-not-allowed' })
    const put = await house.app.request('/v1/decisions', { method: 'PUT', headers: { authorization: `Bearer ${house.key}` } })
    expect([put.status, put.headers.get('allow')?.split(', ').sort()]).toEqual([405, ['GET', 'HEAD', 'POST']])
  })

  it.each(['/healthz', '/v1/judgements', '/v1/nowhere', '/problems/shape'])(
    '%s has a request id and the security headers, also where it fails',
    async (path) => {
      const { headers } = await house.app.request(path)
      expect(headers.get('x-request-id')).toMatch(/^[\w-]{8,}$/)
      expect(headers.get('x-content-type-options')).toBe('nosniff')
      expect(headers.get('x-frame-options')).toBe('DENY')
      expect(headers.get('content-security-policy')).toContain("default-src 'none'")
      expect(headers.get('referrer-policy')).toBe('no-referrer')
    },
  )

  it('the page at / is mounted, and keeps the policy that it sets itself', async () => {
    const { status, headers } = await house.app.request('/')
    expect([status, headers.get('content-type')]).toEqual([200, expect.stringMatching(/^text\/html/)])
    expect(headers.get('content-security-policy')).toContain("form-action 'self'")
    // Without a referrer a browser would not name its origin with a form either.
    expect(headers.get('referrer-policy')).toBe('same-origin')
    expect(headers.get('x-frame-options')).toBe('DENY')
  })

  it('a request id that is safe is taken over, another is not', async () => {
    const id = async (given: string): Promise<string | null> =>
      (await house.app.request('/healthz', { headers: { 'x-request-id': given } })).headers.get('x-request-id')
    expect(await id('bench-7')).toBe('bench-7')
    expect(await id('<b>7</b>')).not.toBe('<b>7</b>')
  })
})
