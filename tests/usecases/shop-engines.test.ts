/** What comes of a shop's own engine sheet: it decides, the trace says whose figure it was, and the edition is another one. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { canonicalText } from '../../src/ledger/canonical.ts'
import { Refused } from '../../src/quantity/fault.ts'
import type { Engine } from '../../src/rulebook/schema/engine.ts'
import { saveEngine } from '../../src/store/engines.ts'
import { editionByHash } from '../../src/store/editions.ts'
import { shopById, type Shop } from '../../src/store/shops.ts'
import { decideSheet } from '../../src/usecases/decide.ts'
import { listEngines, readEngine } from '../../src/usecases/engines.ts'
import { judgeSheet } from '../../src/usecases/judge.ts'
import { putEngine } from '../../src/usecases/put-engine.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { openHouse, SHEET, type House } from '../http/house.ts'
import { disclosure } from '../store/sample.ts'

let house: House
let ours: Shop
let theirs: Shop
beforeEach(async () => {
  house = await openHouse()
  const [a, b] = [await shopById(house.service.db, 'quarry-lane'), await shopById(house.service.db, 'mill-race')]
  if (a === undefined || b === undefined) throw new Error('A shop is missing.')
  ;[ours, theirs] = [a, b]
})
afterEach(() => house.leave())

const sheet = (change: object = {}) => sheetFrom({ ...SHEET, ...change })
const judged = (shop: Shop, change: object = {}): Promise<DecisionRecord> => judgeSheet(house.service, shop, sheet(change))
const by = 'the foreman (invented)'

/** The rulebook's sheet of QL-6P with one limit changed. */
function copy(marginExhaust = '0.070 in', change: Partial<Engine> = {}): Engine {
  const own = structuredClone(house.service.book.book.engines.get('QL-6P'))
  if (own === undefined) throw new Error('QL-6P is missing.')
  const valve = { ...own.limits['valve'], 'margin-min': { intake: '0.040 in', exhaust: marginExhaust } }
  return { ...own, limits: { ...own.limits, valve }, ...change }
}

/** The margin's limit as the trace of 3 exhaust has it, and the valve's verdict. */
function marginOf(record: DecisionRecord): { disposition: string | undefined; limit: unknown } {
  const verdict = record.verdicts.find((v) => v.part === 'valve' && v.at === '3E')
  const leaf = verdict?.steps.flatMap((s) => s.facts).find((f) => f.limit?.id === 'valve:margin-min')
  return { disposition: verdict?.disposition, limit: leaf?.limit && { from: leaf.limit.from, typed: leaf.limit.typed } }
}

const faultsOf = async (doing: Promise<unknown>): Promise<readonly { code: string; pointer: string; says: string; value?: string }[]> => {
  try {
    await doing
    return []
  } catch (error) {
    if (error instanceof Refused) return error.faults
    throw error
  }
}

describe('a copy of QL-6P with one limit changed', () => {
  it('decides in its shop, as the maker’s figure, under another edition; and in no other shop', async () => {
    const [before, other] = [await judged(ours), await judged(theirs)]
    expect(marginOf(before)).toEqual({ disposition: 'undetermined', limit: { from: 'maker', typed: '0.055 in' } })
    const put = await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    expect(put).toMatchObject({ kind: 'added', engine: { own: true, standsOver: true, put: { by } } })
    const after = await judged(ours)
    expect(marginOf(after)).toEqual({ disposition: 'replace', limit: { from: 'maker', typed: '0.070 in' } })
    expect(after.edition).not.toBe(before.edition)
    expect(await judged(theirs)).toEqual(other)
  })

  it('stands in the edition that is kept with the decision, and only there where it was needed', async () => {
    await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    await putEngine(house.service, ours, 'AB-4', { by, sheet: { ...copy(), id: 'AB-4' } })
    const decided = await decideSheet(house.service, ours, sheet(), { door: 'http' })
    const kept = await editionByHash(house.service.db, decided.record.edition)
    const { shop } = JSON.parse(kept?.content ?? '{}') as { shop: { engines: Record<string, Engine> } }
    expect(Object.keys(shop.engines)).toEqual(['QL-6P'])
    expect(canonicalText(shop.engines['QL-6P'])).toBe(canonicalText(copy()))
    expect(kept?.content).not.toContain(by)
  })

  it('leaves the editions of work on other engines as they are', async () => {
    const eight = { engine: 'QL-8S', build: { casting: 'QS-1' }, findings: [] }
    const before = await judged(ours, eight)
    await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    expect((await judged(ours, eight)).edition).toBe(before.edition)
  })

  it('put again is unchanged, changed again gives another edition, and changed back the first one', async () => {
    const editions: string[] = []
    for (const [margin, kind] of [
      ['0.070 in', 'added'],
      ['0.070 in', 'unchanged'],
      ['0.065 in', 'changed'],
      ['0.070 in', 'changed'],
    ] as const) {
      expect((await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy(margin) })).kind).toBe(kind)
      editions.push((await judged(ours)).edition)
    }
    expect([editions[1] === editions[0], editions[2] === editions[0], editions[3] === editions[0]]).toEqual([true, false, true])
  })

  it('put by another person is a change of who answers for it, and of nothing that decides', async () => {
    await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    const { edition } = await judged(ours)
    const put = await putEngine(house.service, ours, 'QL-6P', { by: 'the owner (invented)', sheet: copy() })
    expect(put).toMatchObject({ kind: 'changed', engine: { put: { by: 'the owner (invented)' } } })
    expect((await judged(ours)).edition).toBe(edition)
  })

  it('stands over the card no more than the maker’s own did: a card still speaks first', async () => {
    const own = copy('0.055 in')
    const springs = own.cards['springs']
    const [name, card] = Object.entries(springs ?? {})[0] ?? []
    if (springs === undefined || name === undefined || card === undefined) throw new Error('QL-6P has no spring card.')
    const limits = { ...card.limits, valve: { 'margin-min': '0.080 in' } }
    await putEngine(house.service, ours, 'QL-6P', {
      by,
      sheet: { ...own, cards: { ...own.cards, springs: { ...springs, [name]: { ...card, limits } } } },
    })
    const record = await judged(ours, { build: { ...SHEET.build, springs: name } })
    expect(marginOf(record).limit).toEqual({ from: 'card', typed: '0.080 in' })
  })
})

describe('an engine that the rulebook does not have', () => {
  it('can be judged once its shop has put a sheet, with its own castings and cards; and by no other shop', async () => {
    const castings = { 'A-9': { says: 'A-9: the only casting', facts: { seat: { make: 'integral' } }, limits: {} } }
    const work = { engine: 'AB-4', build: { casting: 'A-9' } }
    expect((await faultsOf(judged(ours, work))).map((f) => [f.code, f.pointer])).toEqual([['engine-unknown', '/engine']])
    await putEngine(house.service, ours, 'AB-4', { by, sheet: { ...copy(), id: 'AB-4', castings } })
    expect(marginOf(await judged(ours, work)).limit).toEqual({ from: 'maker', typed: '0.070 in' })
    expect((await faultsOf(judged(ours, { engine: 'AB-4', build: { casting: 'QP-1' } }))).map((f) => [f.code, f.pointer])).toEqual([
      ['card-unknown', '/build/casting'],
    ])
    const leak = await faultsOf(judged(theirs, work))
    expect(leak.map((f) => f.code)).toEqual(['engine-unknown'])
    expect(JSON.stringify(leak.map((f) => ({ ...f, value: undefined })))).not.toContain('AB-4')
  })

  it('is listed with the rulebook’s, the shop’s own in their place', async () => {
    await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    await putEngine(house.service, ours, 'AB-4', { by, sheet: { ...copy(), id: 'AB-4' } })
    const line = (e: { id: string; own: boolean; standsOver?: boolean }): unknown[] => [e.id, e.own, e.standsOver]
    expect((await listEngines(house.service, ours)).map(line)).toEqual([
      ['AB-4', true, false],
      ['QL-6P', true, true],
      ['QL-8S', false, undefined],
    ])
    expect((await listEngines(house.service, theirs)).map(line)).toEqual([
      ['QL-6P', false, undefined],
      ['QL-8S', false, undefined],
    ])
    expect(await readEngine(house.service, theirs, 'AB-4')).toBeUndefined()
    expect((await readEngine(house.service, theirs, 'QL-6P'))?.sheet).toEqual(house.service.book.book.engines.get('QL-6P'))
  })
})

describe('a sheet that can’t be used', () => {
  it('is refused whole with the faults of the entry and of the sheet, and what stood before stands', async () => {
    await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    const bad = { ...copy('0.070 in (1.20 mm)'), id: 'QL-6Q', notes: 'x' }
    const faults = await faultsOf(putEngine(house.service, ours, 'QL-6P', { sheet: bad, reason: 'y' }))
    expect(faults.map((f) => `${f.code} ${f.pointer}`).sort()).toEqual([
      'field-missing /by',
      'id-not-address /sheet/id',
      'key-unknown /reason',
      'key-unknown /sheet/notes',
      'pair-disagrees /sheet/limits/valve/margin-min/exhaust',
    ])
    expect(marginOf(await judged(ours)).limit).toEqual({ from: 'maker', typed: '0.070 in' })
  })

  it.each([
    ['nothing', undefined],
    ['a list', []],
    ['a sheet without its envelope', { id: 'QL-6P' }],
    ['text for a sheet', { by, sheet: 'QL-6P' }],
    ['half a surrogate pair', { by, sheet: { ...{ id: 'AB-4' }, says: '\ud800 bad' } }],
  ])('%s is refused', async (_name, entry) => {
    expect((await faultsOf(putEngine(house.service, ours, 'AB-4', entry))).length).toBeGreaterThan(0)
    expect(await readEngine(house.service, ours, 'AB-4')).toBeUndefined()
  })

  it('a name that can’t be used is not repeated', async () => {
    const faults = await faultsOf(putEngine(house.service, ours, 'QL-6P', { by: 'n'.repeat(500), sheet: copy() }))
    expect(faults.map((f) => [f.code, f.pointer, f.value])).toEqual([['shape', '/by', undefined]])
  })

  it('text with half a surrogate pair is refused at its place', async () => {
    const faults = await faultsOf(putEngine(house.service, ours, 'QL-6P', { by, sheet: { ...copy(), says: 'half \ud800 a pair' } }))
    expect(faults.map((f) => [f.code, f.pointer])).toEqual([['not-canonical', '/sheet/says']])
  })
})

describe('a sheet that the rulebook has outgrown', () => {
  beforeEach(async () => {
    // As one stands that was put under an older rulebook, which had a limit of that name.
    const old = copy('0.070 in', { limits: { valve: { 'shine-min': '0.010 in' } } })
    await saveEngine(
      house.service.db,
      { shop: 'quarry-lane', id: 'QL-6P', content: canonicalText(old), on: '2031-01-01T08:00:00Z' },
      disclosure('c-old', 'the old foreman', '0c'.repeat(16)),
    )
  })

  it('is not judged by, and the rulebook’s does not stand in for it', async () => {
    const [fault, ...more] = await faultsOf(judged(ours))
    expect(more).toEqual([])
    expect(fault).toMatchObject({ code: 'engine-unfit', pointer: '/engine' })
    expect(fault?.says).toContain('/limits/valve/shine-min')
    expect(marginOf(await judged(theirs)).limit).toEqual({ from: 'maker', typed: '0.055 in' })
  })

  it('is listed with its faults, can be read to mend it, and does not stop work on other engines', async () => {
    const [six] = await listEngines(house.service, ours)
    expect(six?.faults?.map((f) => f.pointer)).toEqual(['/limits/valve/shine-min'])
    expect((await readEngine(house.service, ours, 'QL-6P'))?.put).toEqual({ by: 'the old foreman', on: '2031-01-01T08:00:00Z' })
    expect((await judged(ours, { engine: 'QL-8S', build: {}, findings: [] })).engine).toBe('QL-8S')
    await putEngine(house.service, ours, 'QL-6P', { by, sheet: copy() })
    expect(marginOf(await judged(ours)).limit).toEqual({ from: 'maker', typed: '0.070 in' })
  })
})
