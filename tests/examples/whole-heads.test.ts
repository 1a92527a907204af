/** Two complete sheets, every part looked at and measured: what comes out, part by part, and how large the record is. */
import { readFile } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { canonicalBytes } from '../../src/ledger/canonical.ts'
import { shopOfKey } from '../../src/usecases/api-key.ts'
import { decideSheet } from '../../src/usecases/decide.ts'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { sheetFromText, type Sheet } from '../../src/verdict/sheet.ts'
import { openHouse, type House } from '../http/house.ts'
import { all, type Disposition } from './expected.ts'

interface Whole {
  /** How many parts of each class have a verdict. */
  readonly parts: Readonly<Record<string, number>>
  /** Parts that do not simply go back, by class: positions apart by spaces. */
  readonly found: Readonly<Record<string, Readonly<Partial<Record<Exclude<Disposition, 'reuse'>, string>>>>>
  readonly mostBytes: number
}

const SHEETS: readonly (readonly [string, Whole])[] = [
  [
    'ql-6p-whole-head',
    {
      parts: {
        valve: 12,
        guide: 12,
        seat: 12,
        spring: 12,
        retainer: 12,
        rocker: 12,
        'rocker-stud': 12,
        pushrod: 12,
        'stem-seal': 12,
        head: 1,
        camshaft: 1,
        'oil-pump': 1,
      },
      found: {
        // Stem 0.3698 at the bottom; margin 56 thou by caliper against 55; burned. Pits, a light chip, a worn tip.
        valve: { replace: '1E 4E 5E', recondition: '2I 3E 6I' },
        // Over new fit on continuous duty with the valves out; 4I out of round.
        guide: { recondition: '1E 2E 4I 4E 5I 6E' },
        // The insert burned with its valve. Pits at 3I; the ring of 6I stands high; the rest follow their guides.
        seat: { replace: '5E', recondition: '1E 2E 3I 4I 4E 5I 6I 6E' },
        // Leans, weak, rusted; 78 lb on the bench tester is too close to nine tenths of 85.
        spring: { replace: '1E 2E 6I', undetermined: '3I' },
        retainer: { replace: '4E', recondition: '2E' },
        // Grooved, stretched; a slack nut, one dinged turn.
        'rocker-stud': { replace: '3E 5I', recondition: '1E 4I' },
        // With its grooved stud; a scuffed pad on a stamped rocker.
        rocker: { replace: '3E 6E' },
        pushrod: { replace: '3I' },
        // Renewed as a set; nobody judges them.
        'stem-seal': { undetermined: all(6) },
      },
      mostBytes: 220_000,
    },
  ],
  [
    'ql-8s-pair-of-heads',
    {
      parts: {
        valve: 16,
        guide: 16,
        seat: 16,
        spring: 16,
        retainer: 16,
        rocker: 16,
        'rocker-stud': 16,
        'guide-plate': 8,
        pushrod: 16,
        'stem-seal': 16,
        head: 2,
        camshaft: 1,
        'oil-pump': 1,
      },
      found: {
        // Filled and chipped; filled and running out; stem under size; margin 33 thou against 35. A plain one pitted, a plain tip worn.
        valve: { replace: '1E 4E 6I 7E', recondition: '4I 5I' },
        // Past 0.0037 in pressed iron; over new fit with its seat to be cut.
        guide: { replace: '3I', recondition: '1E' },
        // A loose insert. 5E too wide, 8I runs out, 5I pitted; 2I by caliper on the ring, too close.
        seat: { replace: '4E', recondition: '1E 3I 5E 5I 8I', undetermined: '2I' },
        spring: { replace: '6I 7I' },
        retainer: { recondition: '3I' },
        'rocker-stud': { recondition: '8I' },
        rocker: { replace: '2E' },
        // The plate and the rod that wore it.
        'guide-plate': { replace: '6' },
        pushrod: { replace: '6I' },
        'stem-seal': { undetermined: all(8) },
        // 0.109 mm out of flat along, where 0.003 in is the most.
        head: { recondition: 'right' },
      },
      mostBytes: 260_000,
    },
  ],
]

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

const sorted = (positions: readonly string[]): string => [...positions].sort((a, b) => (a < b ? -1 : 1)).join(' ')

describe.each(SHEETS)('%s', (name, expected) => {
  let sheet: Sheet
  let record: DecisionRecord
  beforeAll(async () => {
    sheet = sheetFromText(await readFile(new URL(`../../examples/sheets/${name}.json`, import.meta.url), 'utf8'))
    const shop = await shopOfKey(house.service, house.key)
    if (shop === undefined) throw new Error('The demo shop is not there.')
    record = (await decideSheet(house.service, shop, sheet, { door: 'cli' })).record
  })

  it('is a whole head: many readings, by instrument, of several people', () => {
    expect(sheet.findings.length).toBeGreaterThan(150)
    expect(new Set(sheet.findings.map((f) => f.instrument)).size).toBeGreaterThan(6)
    expect(new Set(sheet.findings.map((f) => f.by)).size).toBeGreaterThan(1)
    expect(record.unseen).toEqual([])
  })

  it('every part has a verdict, and both interpreters agree', () => {
    const counted: Record<string, number> = {}
    for (const v of record.verdicts)
      if (house.service.book.book.subjects[v.part] === undefined) counted[v.part] = (counted[v.part] ?? 0) + 1
    expect(counted).toEqual(expected.parts)
    expect(record.body.evaluator).toMatchObject({ ran: true, agrees: true })
  })

  it('what was found comes out where it was found, and nothing else does', () => {
    const got: Record<string, Record<string, string[]>> = {}
    for (const v of record.verdicts) {
      if (v.disposition === 'reuse' || house.service.book.book.subjects[v.part] !== undefined) continue
      const of = (got[v.part] ??= {})
      ;(of[v.disposition] ??= []).push(v.at)
    }
    const flat = Object.fromEntries(
      Object.entries(got).map(([part, of]) => [part, Object.fromEntries(Object.entries(of).map(([d, at]) => [d, sorted(at)]))]),
    )
    const wanted = Object.fromEntries(
      Object.entries(expected.found).map(([part, of]) => [
        part,
        Object.fromEntries(Object.entries(of).map(([d, at]) => [d, sorted(at.split(' '))])),
      ]),
    )
    expect(flat).toEqual(wanted)
  })

  it('the record stays small', () => {
    const bytes = canonicalBytes(record.body).length
    console.log(`${name}: ${record.verdicts.length} verdicts, body of ${bytes} bytes`)
    expect(bytes).toBeLessThan(expected.mostBytes)
  })
})
