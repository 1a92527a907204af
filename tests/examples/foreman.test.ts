/** The foreman's test: worked cases with the trade's own answer, written down before the service was asked. */
import { readdir, readFile } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import * as z from 'zod'
import { Refused } from '../../src/quantity/fault.ts'
import type { Shop } from '../../src/store/shops.ts'
import { shopOfKey } from '../../src/usecases/api-key.ts'
import { judgeSheet } from '../../src/usecases/judge.ts'
import type { DecisionRecord, RecordVerdict } from '../../src/usecases/record.ts'
import { sheetFromText } from '../../src/verdict/sheet.ts'
import { openHouse, type House } from '../http/house.ts'

const words = z.string().min(3)
/** A part and its position: "valve@3E", "head@left", "seal-choice@engine". */
const spot = z.string().regex(/^[a-z-]+@[0-9a-zIE]+$/)

const caseFile = z.strictObject({
  name: words,
  why: words,
  sheet: z.record(z.string(), z.unknown()),
  expect: z
    .strictObject({
      verdicts: z.record(spot, z.enum(['reuse', 'recondition', 'replace', 'undetermined'])).default({}),
      /** Words that the report must hold: in the verdicts named here, or in what the shop is told. */
      reasons: z.array(words).default([]),
      /** What is asked first of a part, and with what. */
      first: z.record(spot, words).default({}),
      hazards: z.array(z.string()).default([]),
      /** Operations on the order: "seat-cut seat@3E", or "second-pressure-test" wherever it is. */
      orders: z.array(z.string()).default([]),
      /** Operations that would do harm here. */
      never: z.array(z.string()).default([]),
      parts: z.record(z.string(), z.int()).default({}),
      /** Code of the fault for which the whole sheet is refused. */
      refused: z.string().optional(),
    })
    .refine((e) => Object.keys(e.verdicts).length > 0 || e.refused !== undefined, 'A case expects a verdict or a refusal.'),
})
type Case = z.infer<typeof caseFile>

const folder = new URL('../../examples/foreman/', import.meta.url)
const files = (await readdir(folder)).sort()
const read = async (file: string): Promise<readonly [string, Case]> => {
  const parsed = caseFile.parse(JSON.parse(await readFile(new URL(file, folder), 'utf8')))
  return [file.replace(/\.json$/, ''), parsed]
}
const cases = await Promise.all(files.map(read))
const answered = cases.filter(([, c]) => c.expect.refused === undefined)
const refused = cases.filter(([, c]) => c.expect.refused !== undefined)

let house: House
let shop: Shop
beforeAll(async () => {
  house = await openHouse()
  const found = await shopOfKey(house.service, house.key)
  if (found === undefined) throw new Error('The demo shop is not there.')
  shop = found
})
afterAll(() => house.leave())

const judged = (c: Case): Promise<DecisionRecord> => judgeSheet(house.service, shop, sheetFromText(JSON.stringify(c.sheet)))

function verdictAt(record: DecisionRecord, at: string): RecordVerdict {
  const found = record.verdicts.find((v) => `${v.part}@${v.at}` === at)
  if (found === undefined) throw new Error(`No verdict on ${at}.`)
  return found
}

/** Every sentence that the report says of a verdict. */
const saidOf = (v: RecordVerdict): readonly string[] => [
  v.says,
  ...v.because,
  ...v.advice,
  ...v.mustTurnOut,
  ...v.asks.flatMap((a) => [a.asks, a.how ?? '', a.with.join(', ')]),
]

/** "seat-cut", and "seat-cut seat@3E" for each place. */
const ordered = (record: DecisionRecord): readonly string[] =>
  record.plan.workOrder.flatMap((l) => [
    l.operation,
    ...l.at.flatMap((a) => a.positions.map((position) => `${l.operation} ${a.part}@${position}`)),
  ])

describe('the cases', () => {
  it('are thirty or more, each with its lesson for a name', () => {
    expect(cases.length).toBeGreaterThanOrEqual(30)
    for (const file of files) expect(file).toMatch(/^[a-z0-9]+(-[a-z0-9]+)+\.json$/)
    expect(new Set(cases.map(([, c]) => c.name)).size).toBe(cases.length)
  })

  it('ask about every class of part and both engines', () => {
    const spots = answered.flatMap(([, c]) => Object.keys(c.expect.verdicts).map((at) => at.split('@')[0]))
    const classes = ['guide', 'head', 'pushrod', 'retainer', 'rocker', 'rocker-stud', 'seat', 'spring', 'stem-seal', 'valve']
    expect(classes.filter((part) => !spots.includes(part))).toEqual([])
    expect(new Set(cases.map(([, c]) => c.sheet['engine']))).toEqual(new Set(['QL-6P', 'QL-8S']))
  })

  it('name only operations and cautions that there are', () => {
    const { operations, cautions } = house.service.book.book
    const named = answered.flatMap(([, c]) => [...c.expect.orders, ...c.expect.never].map((o) => o.split(' ')[0] ?? ''))
    expect(named.filter((o) => operations[o] === undefined)).toEqual([])
    expect(answered.flatMap(([, c]) => c.expect.hazards).filter((h) => cautions[h] === undefined)).toEqual([])
  })
})

describe.each(answered)('%s', (_, one) => {
  let record: DecisionRecord
  beforeAll(async () => {
    record = await judged(one)
  })

  it(one.name, () => {
    const got = Object.fromEntries(Object.keys(one.expect.verdicts).map((at) => [at, verdictAt(record, at).disposition]))
    expect(got).toEqual(one.expect.verdicts)
    expect(record.body.evaluator).toMatchObject({ ran: true, agrees: true })
  })

  it('says why', () => {
    const said = [...Object.keys(one.expect.verdicts).flatMap((at) => saidOf(verdictAt(record, at))), ...record.plan.told].join('\n')
    for (const reason of one.expect.reasons) expect(said).toContain(reason)
  })

  it('asks for the right thing next, orders what helps and nothing that harms', () => {
    for (const [at, asked] of Object.entries(one.expect.first)) {
      const [first] = verdictAt(record, at).asks
      expect([first?.asks, first?.how, ...(first?.with ?? [])].join(' '), at).toContain(asked)
    }
    const order = ordered(record)
    expect(order).toEqual(expect.arrayContaining(one.expect.orders))
    expect(order.filter((o) => one.expect.never.includes(o))).toEqual([])
    const bought = Object.fromEntries(record.plan.partsList.map((l) => [l.item, l.quantity]))
    expect(bought).toMatchObject(one.expect.parts)
  })

  it('shows hazards, before any other caution', () => {
    const { cautions } = record.plan
    expect(cautions.filter((c) => c.level === 'hazard').map((c) => c.id)).toEqual(expect.arrayContaining(one.expect.hazards))
    const levels = cautions.map((c) => c.level)
    expect(levels.lastIndexOf('hazard')).toBeLessThan(levels.indexOf('caution'))
  })
})

describe.each(refused)('%s', (_, one) => {
  it(one.name, async () => {
    const faults = await judged(one).then(
      () => [],
      (error: unknown) => (error instanceof Refused ? error.faults : Promise.reject(error)),
    )
    expect(faults.map((f) => f.code)).toContain(one.expect.refused)
    const said = faults.map((f) => `${f.says} ${f.mend}`).join('\n')
    for (const reason of one.expect.reasons) expect(said).toContain(reason)
  })
})
