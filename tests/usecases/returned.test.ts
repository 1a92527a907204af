/** Work that comes back, held line by line against the order that it went out on. */
import { readFile } from 'node:fs/promises'
import { beforeAll, describe, expect, it } from 'vitest'
import { shopOfKey } from '../../src/usecases/api-key.ts'
import { decideSheet } from '../../src/usecases/decide.ts'
import type { DecisionRecord, RecordVerdict } from '../../src/usecases/record.ts'
import { sheetFromText, type Finding, type Sheet } from '../../src/verdict/sheet.ts'
import { openHouse } from '../http/house.ts'

const sheets = new URL('../../examples/sheets/', import.meta.url)
const sheetOf = async (path: string): Promise<Sheet> => sheetFromText(await readFile(new URL(path, sheets), 'utf8'))

/** A line accepted, one that did not turn out (the part's other verdict takes effect), one to be measured again. */
type Line = 'accepted' | 'broken' | 'measured again'
const LINE: Readonly<Record<string, Line>> = { met: 'accepted', 'not met': 'broken', unknown: 'measured again' }

interface Returned {
  readonly order: string
  readonly sheet: string
  /** Every line of the order that something had to turn out by, and how it came back: "valve 3E valve.tip-reground/1". */
  readonly lines: Readonly<Record<string, Line>>
  /** Parts that are not accepted, and what becomes of them. */
  readonly notAccepted: Readonly<Record<string, string>>
  /** How many parts are accepted, by class. */
  readonly accepted: Readonly<Record<string, number>>
}

const RETURNED: readonly Returned[] = [
  {
    order: 'ql-6p-mixed-findings.json',
    sheet: 'returned/ql-6p-returned.json',
    lines: {
      'valve 3E valve.tip-reground/1': 'accepted',
      'valve 3E valve.tip-reground/2': 'accepted',
      'valve 4I valve.face-refaced/1': 'broken', // 0.036 in of margin left, 0.040 asked
      'valve 4I valve.face-refaced/2': 'accepted',
      'valve 4I valve.face-refaced/3': 'accepted',
      'valve 4I valve.face-refaced/4': 'accepted',
      'rocker-stud 1E rocker-stud.nut-drag-low/1': 'accepted',
      'rocker-stud 4I rocker-stud.thread-chase/1': 'accepted',
      'rocker-stud 4I rocker-stud.thread-chase/2': 'measured again', // nobody wrote down the nut's drag
      'retainer 6I retainer.single-groove-touch/1': 'accepted',
    },
    notAccepted: {
      'valve 4I': 'replace',
      'rocker-stud 4I': 'undetermined',
      'spring 6E': 'recondition', // 1.722 in installed: the shim was left off
      'finished-head engine': 'recondition', // and so the heights lie too far apart
    },
    accepted: { valve: 11, guide: 12, seat: 12, spring: 11, retainer: 12, 'rocker-stud': 11, rocker: 12, 'stem-seal': 12, head: 1 },
  },
  {
    order: 'ql-8s-cam-and-pump.json',
    sheet: 'returned/ql-8s-returned.json',
    lines: {
      'seal-choice engine job.guide-top-cut-planned/1': 'accepted',
      'seal-choice engine job.guide-top-cut-planned/2': 'accepted',
      'seal-choice engine job.guide-top-for-seal/1': 'accepted',
      'valve 3E valve.tip-reground/1': 'broken', // two tenths left, and a low spot still there
      'valve 3E valve.tip-reground/2': 'broken', // a file bites
      'valve 2E valve.face-refaced/1': 'accepted',
      'valve 2E valve.face-refaced/2': 'accepted',
      'valve 2E valve.face-refaced/3': 'accepted',
      'valve 2E valve.face-refaced/4': 'measured again', // runout not taken after facing
    },
    notAccepted: {
      'valve 3E': 'replace',
      'valve 2E': 'undetermined',
      'rocker-stud 7I': 'recondition', // a wet hole, not sealed
      'finished-head engine': 'recondition', // grey swab, 12 minutes under pressure
    },
    accepted: { valve: 14, guide: 16, seat: 16, spring: 16, retainer: 16, 'rocker-stud': 15, rocker: 16, 'stem-seal': 16, head: 2 },
  },
]

/** Decides the sheets of one job, one after the other, in a database of their own. */
async function decided(...sheets: readonly Sheet[]): Promise<readonly DecisionRecord[]> {
  const house = await openHouse()
  try {
    const shop = await shopOfKey(house.service, house.key)
    if (shop === undefined) throw new Error('The demo shop is not there.')
    const records: DecisionRecord[] = []
    for (const sheet of sheets) records.push((await decideSheet(house.service, shop, sheet, { door: 'cli' })).record)
    return records
  } finally {
    await house.leave()
  }
}

const linesIn = (record: DecisionRecord): Record<string, Line | undefined> =>
  Object.fromEntries(
    record.verdicts.flatMap((v) =>
      v.steps.filter((s) => s.kind === 'promise').map((s) => [`${v.part} ${v.at} ${s.rule}`, LINE[s.outcome]]),
    ),
  )
const verdictAt = (record: DecisionRecord, part: string, at: string): RecordVerdict | undefined =>
  record.verdicts.find((v) => v.part === part && v.at === at)

describe.each(RETURNED)('$sheet', ({ order, sheet, lines, notAccepted, accepted }) => {
  let received: DecisionRecord
  let returned: DecisionRecord
  beforeAll(async () => {
    const [first, second] = await decided(await sheetOf(order), await sheetOf(sheet))
    if (first === undefined || second === undefined) throw new Error('Two decisions were asked for.')
    received = first
    returned = second
  })

  it('names the order that it is held against', () => {
    expect(returned.checks).toBe(received.ledger?.hash)
  })

  it('answers every line of the order, and no other', () => {
    const promised = received.body.verdicts.flatMap((v) => v.provided.map((p) => `${v.part} ${v.at} ${p.rule}/${p.index + 1}`))
    expect(Object.keys(lines).sort()).toEqual(promised.sort())
    expect(linesIn(returned)).toEqual(lines)
  })

  it('accepts what is shown by figures, and says what becomes of the rest', () => {
    const rest = returned.verdicts.filter((v) => v.disposition !== 'reuse').map((v) => [`${v.part} ${v.at}`, v.disposition])
    expect(Object.fromEntries(rest)).toEqual(notAccepted)
    const counted = Object.keys(accepted).map((part) => [
      part,
      returned.verdicts.filter((v) => v.part === part && v.disposition === 'reuse').length,
    ])
    expect(Object.fromEntries(counted)).toEqual(accepted)
  })

  it('a broken line is said in words, with its figure', () => {
    for (const [line, answer] of Object.entries(lines)) {
      const [part = '', at = ''] = line.split(' ')
      const says = verdictAt(returned, part, at)?.because.join(' ') ?? ''
      expect(says.includes('What had to turn out did not')).toBe(
        Object.entries(lines).some(([l, a]) => a === 'broken' && l.startsWith(`${part} ${at} `)),
      )
      if (answer === 'broken') expect(says).toMatch(/\d/)
    }
  })

  it('the two interpreters agree', () => {
    expect(returned.verdicts.filter((v) => v.disagreement !== undefined)).toEqual([])
  })
})

/** The sheet with one finding changed, or left out. */
const changed = (sheet: Sheet, { part, at, property }: Pick<Finding, 'part' | 'at' | 'property'>, more: readonly Finding[]): Sheet => ({
  ...sheet,
  findings: [...sheet.findings.filter((f) => f.part !== part || f.at !== at || f.property !== property), ...more],
})

describe('the QL-6P, with one thing otherwise', () => {
  const sent = async (...changes: readonly ((sheet: Sheet) => Sheet)[]): Promise<DecisionRecord> => {
    const sheet = await sheetOf('returned/ql-6p-returned.json')
    const records = await decided(await sheetOf('ql-6p-mixed-findings.json'), ...changes.map((change) => change(sheet)))
    const last = records[records.length - 1]
    if (last === undefined) throw new Error('Nothing was decided.')
    return last
  }

  it('sent back, shimmed and measured again, the spring and the finished head are accepted', async () => {
    const at = { part: 'spring', at: '6E', property: 'installed-height' }
    const shimmed = [
      { ...at, value: '1.702 in', instrument: 'height-micrometer' },
      { ...at, property: 'shim.total', value: '0.020 in' },
      { ...at, property: 'shim.hardened', value: true },
    ]
    const record = await sent(
      (s) => s,
      (s) => changed(s, at, shimmed),
    )
    expect(linesIn(record)['spring 6E spring.height-shim/1']).toBe('accepted')
    expect([verdictAt(record, 'spring', '6E')?.disposition, verdictAt(record, 'finished-head', 'engine')?.disposition]).toEqual([
      'reuse',
      'reuse',
    ])
  })

  it('a margin too close to call after facing is taken on the safe side: the valve is replaced', async () => {
    const at = { part: 'valve', at: '4I', property: 'margin' }
    const record = await sent((s) => changed(s, at, [{ ...at, value: '0.041 in', instrument: 'caliper' }]))
    expect(linesIn(record)['valve 4I valve.face-refaced/1']).toBe('broken')
    expect(verdictAt(record, 'valve', '4I')?.disposition).toBe('replace')
  })

  it('a drag that is written down at last decides the chased stud, either way', async () => {
    const at = { part: 'rocker-stud', at: '4I', property: 'nut.drag' }
    const drag = (record: DecisionRecord): readonly (string | undefined)[] => [
      linesIn(record)['rocker-stud 4I rocker-stud.thread-chase/2'],
      verdictAt(record, 'rocker-stud', '4I')?.disposition,
    ]
    const held = await sent((s) => changed(s, at, [{ ...at, value: '14 lb in' }]))
    expect(drag(held)).toEqual(['accepted', 'reuse'])
    const low = [
      { ...at, value: '6 lb in' },
      { ...at, property: 'nut.new-drag', value: '5 lb in' },
    ]
    expect(drag(await sent((s) => changed(s, at, low)))).toEqual(['broken', 'replace'])
  })

  it('a line that nobody speaks of is measured again: silence is not acceptance', async () => {
    const record = await sent((s) => changed(s, { part: 'retainer', at: '6I', property: 'keepers.halves-touch' }, []))
    expect(linesIn(record)['retainer 6I retainer.single-groove-touch/1']).toBe('measured again')
    expect(verdictAt(record, 'retainer', '6I')?.disposition).toBe('undetermined')
  })
})

it('a return without an order behind it is judged by its own figures, and names none', async () => {
  const [record] = await decided({ ...(await sheetOf('returned/ql-6p-returned.json')), job: 'a head that nobody sent out' })
  if (record === undefined) throw new Error('Nothing was decided.')
  expect(record.checks).toBeUndefined()
  expect(linesIn(record)).toEqual({})
  expect(verdictAt(record, 'valve', '4I')?.disposition).toBe('replace') // its margin is under the least all the same
})
