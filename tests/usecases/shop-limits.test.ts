/** Remembered limits adopted by name, and figures of the shop's own: what they decide, and what the trace says of them. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { Refused, type Fault } from '../../src/quantity/fault.ts'
import { eraseDisclosure } from '../../src/store/disclosures.ts'
import { adoptionsOf, limitsOf } from '../../src/store/limits.ts'
import { shopById, type Shop } from '../../src/store/shops.ts'
import { adoptLimit } from '../../src/usecases/adopt-limit.ts'
import { judgeSheet } from '../../src/usecases/judge.ts'
import { listLimits } from '../../src/usecases/limits.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { setShopLimit } from '../../src/usecases/set-shop-limit.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { openHouse, SHEET, type House } from '../http/house.ts'

let house: House
/** A shop that has adopted nothing; the demo shop has adopted the groove's depth. */
let shop: Shop
let demo: Shop
beforeEach(async () => {
  let tick = 0
  house = await openHouse(() => ({ now: () => `2031-04-02T08:00:${String(tick++).padStart(2, '0')}Z` }))
  const [a, b] = [await shopById(house.service.db, 'mill-race'), await shopById(house.service.db, 'quarry-lane')]
  if (a === undefined || b === undefined) throw new Error('A shop is missing.')
  ;[shop, demo] = [a, b]
})
afterEach(() => house.leave())

const by = 'the millwright (invented)'
const GROOVE = ['rocker-stud', 'groove-depth-max'] as const
const adopt = (entry: unknown = { by }, of: Shop = shop) => adoptLimit(house.service, of, ...GROOVE, entry)
const set = (value: unknown, more: object = {}) => setShopLimit(house.service, shop, ...GROOVE, { value, by, ...more })

/** A groove of so much, by a depth micrometer, judged. */
const judged = (depth: string, of: Shop = shop): Promise<DecisionRecord> =>
  judgeSheet(
    house.service,
    of,
    sheetFrom({
      ...SHEET,
      findings: [{ part: 'rocker-stud', at: '4I', property: 'shoulder.groove-depth', value: depth, instrument: 'depth-micrometer' }],
    }),
  )
const stud = (record: DecisionRecord) => record.verdicts.find((v) => v.part === 'rocker-stud' && v.at === '4I')
const leafOf = (record: DecisionRecord) =>
  stud(record)
    ?.steps.filter((s) => s.rule === 'rocker-stud.groove-measured')
    .flatMap((s) => s.facts)
    .find((f) => f.fact === 'shoulder.groove-depth')

const faultsOf = async (doing: Promise<unknown>): Promise<readonly Fault[]> => {
  try {
    await doing
    return []
  } catch (error) {
    if (error instanceof Refused) return error.faults
    throw error
  }
}

describe('adopting a limit that the trade only remembers', () => {
  it('turns its leaf from unknown to an answer, and the trace says whose adoption it was', async () => {
    const before = await judged('0.020 in')
    expect(leafOf(before)).toMatchObject({ answer: 'unknown', why: 'limit not adopted' })
    expect(stud(before)?.disposition).toBe('undetermined')
    await adopt()
    const after = await judged('0.020 in')
    const [adoption] = await adoptionsOf(house.service.db, shop.id)
    expect(leafOf(after)).toMatchObject({ answer: 'met', limit: { from: 'trade', provenance: 'from memory', adoptedBy: adoption?.by } })
    expect(stud(after)?.disposition).toBe('replace')
    expect(after.edition).not.toBe(before.edition)
    expect(JSON.stringify(after)).not.toContain(by)
  })

  it('answers with the limit, its figure and its source', async () => {
    expect(await adopt()).toMatchObject({
      part: 'rocker-stud',
      limit: 'groove-depth-max',
      label: expect.stringContaining('groove'),
      defaults: [
        {
          value: '0.005 in',
          shows: '0.005 in (0.13 mm)',
          provenance: 'from memory',
          source: { id: 'memory', title: 'From memory' },
          decides: true,
        },
      ],
      adopted: { by, on: '2031-04-02T08:00:00Z' },
    })
  })

  it('again under the same name changes nothing; under another, that person answers for it', async () => {
    await adopt()
    const { edition } = await judged('0.020 in')
    expect(await adopt({ by: `  ${by} ` })).toMatchObject({ adopted: { by, on: '2031-04-02T08:00:00Z' } })
    expect((await judged('0.020 in')).edition).toBe(edition)
    expect(await adopt({ by: 'the owner (invented)' })).toMatchObject({
      adopted: { by: 'the owner (invented)', on: '2031-04-02T08:00:01Z' },
    })
    expect(await adoptionsOf(house.service.db, shop.id)).toHaveLength(1)
  })

  it('counts in the shop that adopted it, and in no other', async () => {
    expect(leafOf(await judged('0.020 in', demo))?.answer).toBe('met')
    expect(leafOf(await judged('0.020 in'))?.answer).toBe('unknown')
    const groove = async (of: Shop) => (await listLimits(house.service, of)).find((l) => l.part === GROOVE[0] && l.limit === GROOVE[1])
    expect((await groove(demo))?.adopted?.by).toBe('the foreman (invented)')
    expect((await groove(shop))?.adopted).toBeUndefined()
    expect((await groove(shop))?.defaults.map((d) => d.decides)).toEqual([false])
  })

  it.each([
    ['nobody named', {}, 'field-missing', '/by'],
    ['an empty name', { by: '  ' }, 'shape', '/by'],
    ['a name without a letter', { by: '7' }, 'shape', '/by'],
    ['a name that is no text', { by: true }, 'shape', '/by'],
    ['a field that is none', { by, value: '0.005 in' }, 'key-unknown', '/value'],
    ['no entry', null, 'shape', ''],
  ])('%s is refused, and nothing is adopted', async (_name, entry, code, pointer) => {
    const faults = await faultsOf(adopt(entry))
    expect(faults[0]).toMatchObject({ code, pointer })
    expect(await adoptionsOf(house.service.db, shop.id)).toEqual([])
  })

  it('a limit that rests on more, or on nothing, has nothing to adopt; one that is not there is not there', async () => {
    const { parts } = house.service.book.book
    const all = [...parts.values()].flatMap((cls) =>
      [...cls.limits.values()].map((l) => ({ part: cls.id, id: l.id, defaults: l.defaults })),
    )
    const firm = all.find(
      (l) => l.defaults.some((d) => d.provenance === 'published') && l.defaults.every((d) => d.provenance !== 'from memory'),
    )
    const none = all.find((l) => l.defaults.length === 0)
    for (const limit of [firm, none]) {
      if (limit === undefined) throw new Error('The rulebook has no such limit.')
      const faults = await faultsOf(adoptLimit(house.service, shop, limit.part, limit.id, { by }))
      expect(faults.map((f) => f.code)).toEqual(['nothing-to-adopt'])
    }
    expect(await adoptLimit(house.service, shop, 'valve', 'shine-min', { by })).toBeUndefined()
    expect(await adoptLimit(house.service, shop, 'constructor', 'name', { by })).toBeUndefined()
  })
})

describe('a figure of the shop’s own', () => {
  it('decides without an adoption, as the shop’s, and stands over the trade’s', async () => {
    expect(await set('12 thou')).toMatchObject({ own: { value: '12 thou', shows: '0.012 in (0.30 mm)', by } })
    expect(leafOf(await judged('0.020 in'))).toMatchObject({ answer: 'met', limit: { from: 'shop', typed: '12 thou' } })
    await adopt()
    // Over the trade's figure, which the demo shop goes by, and under this shop's own.
    expect(stud(await judged('0.008 in', demo))?.disposition).toBe('replace')
    expect(stud(await judged('0.008 in'))?.disposition).toBe('undetermined')
  })

  it('is kept under a maker’s sheet, which still speaks first', async () => {
    const margin = async (): Promise<unknown> => {
      const { verdicts } = await judgeSheet(house.service, shop, sheetFrom(SHEET))
      const leaf = verdicts.find((v) => v.part === 'valve' && v.at === '3E')?.steps.flatMap((s) => s.facts)
      return leaf?.find((f) => f.limit?.id === 'valve:margin-min')?.limit?.from
    }
    await setShopLimit(house.service, shop, 'valve', 'margin-min', { value: '0.500 in', by })
    expect(await limitsOf(house.service.db, shop.id)).toMatchObject([{ part: 'valve', limit: 'margin-min', value: '0.500 in' }])
    expect(await margin()).toBe('maker')
  })

  it('is shown with its note, and a later one takes its place; the same again changes nothing', async () => {
    await set('0.010 in', { note: 'two broke' })
    const { edition } = await judged('0.020 in')
    expect(await set('0.010 in', { note: 'two broke' })).toMatchObject({ own: { on: '2031-04-02T08:00:00Z', note: 'two broke' } })
    expect((await judged('0.020 in')).edition).toBe(edition)
    const later = await set('0.009 in')
    expect([later?.own?.value, later?.own?.note]).toEqual(['0.009 in', undefined])
    expect((await judged('0.020 in')).edition).not.toBe(edition)
  })

  it.each([
    ['an inch and a millimetre figure that disagree', '0.012 in (0.50 mm)', 'pair-disagrees', /0\.012 in .*against 0\.50 mm/],
    ['no unit', '12', 'unit-missing', /no unit/],
    ['another kind', '12 lb', 'wrong-kind', /lb/],
    ['tenths, whatever the shop means by them', 'two tenths', 'tenths', /tenth/],
    ['no figure', 'deep', 'not-a-number', /\w/],
    ['two figures', '3-5 thou', 'not-one-figure', /\w/],
  ])('%s is refused at its place', async (_name, value, code, says) => {
    const faults = await faultsOf(set(value))
    expect(faults.map((f) => [f.code, f.pointer])).toEqual([[code, '/value']])
    expect(faults[0]?.says).toMatch(says)
    expect(await limitsOf(house.service.db, shop.id)).toEqual([])
  })

  it('a pair that agrees is one figure, and decides as such', async () => {
    expect((await set('0.012 in (0.30 mm)'))?.own).toMatchObject({ value: '0.012 in (0.30 mm)', shows: '0.012 in (0.30 mm)' })
    expect(leafOf(await judged('0.020 in'))?.limit?.value).toBe(0.3048)
  })

  it('every fault of an entry is told at once', async () => {
    const faults = await faultsOf(setShopLimit(house.service, shop, ...GROOVE, { value: 12, note: '', why: 'x' }))
    expect(faults.map((f) => `${f.code} ${f.pointer}`).sort()).toEqual([
      'field-missing /by',
      'key-unknown /why',
      'shape /note',
      'shape /value',
    ])
  })

  it('of a limit that is not there is not kept', async () => {
    expect(await setShopLimit(house.service, shop, 'valve', 'shine-min', { value: '1 mm', by })).toBeUndefined()
  })
})

describe('the limits as they stand for a shop', () => {
  it('are all of the rulebook’s, each with its defaults and their sources', async () => {
    const { parts, sources } = house.service.book.book
    const listed = await listLimits(house.service, shop)
    expect(listed.map((l) => `${l.part}:${l.limit}`)).toEqual(
      [...parts.values()]
        .flatMap((cls) => [...cls.limits.keys()].map((id) => `${cls.id}:${id}`))
        .sort((a, b) => {
          const [x = '', y = ''] = [a.split(':')[0], b.split(':')[0]]
          return x === y ? (a < b ? -1 : 1) : x < y ? -1 : 1
        }),
    )
    for (const { defaults } of listed)
      for (const d of defaults) {
        expect(d.source.title).toBe(sources.get(d.source.id)?.title)
        expect(d.decides).toBe(d.provenance !== 'from memory')
      }
  })

  it('show no name that was erased', async () => {
    await adopt()
    const [adoption] = await adoptionsOf(house.service.db, shop.id)
    await eraseDisclosure(house.service.db, shop.id, adoption?.by ?? '', '2031-05-01')
    const line = (await listLimits(house.service, shop)).find((l) => l.limit === GROOVE[1])
    expect(line?.adopted).toEqual({ by: null, on: '2031-04-02T08:00:00Z' })
    expect(line?.defaults.map((d) => d.decides)).toEqual([true])
  })
})
