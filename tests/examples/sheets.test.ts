/** The demo sheets, decided as the demo shop would, held to verdicts and figures that were worked out by hand. */
import { readFile } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { shopOfKey } from '../../src/usecases/api-key.ts'
import { decideSheet } from '../../src/usecases/decide.ts'
import { judgeSheet } from '../../src/usecases/judge.ts'
import type { DecisionRecord, RecordVerdict } from '../../src/usecases/record.ts'
import { sheetFromText, type Sheet } from '../../src/verdict/sheet.ts'
import { openHouse, type House } from '../http/house.ts'
import { inch, type Comparison, type Expected } from './expected.ts'
import { haulTruck12 } from './haul-truck-12.ts'
import { pumpAtTheWeir } from './pump-at-the-weir.ts'
import { secondPump } from './second-pump.ts'

const SHEETS: readonly (readonly [string, Expected])[] = [
  ['ql-6p-mixed-findings', pumpAtTheWeir],
  ['ql-8s-cam-and-pump', haulTruck12],
  ['ql-6p-mostly-unmeasured', secondPump],
]

/** What the sheets speak of. Other classes and subjects may be in the rulebook; the sheets have no finding on them. */
const CLASSES = ['valve', 'rocker-stud', 'guide-plate', 'rocker', 'stem-seal', 'spring', 'retainer', 'camshaft', 'oil-pump']
const SUBJECTS = [...new Set([...Object.keys(pumpAtTheWeir.job), ...Object.keys(haulTruck12.job)])]
/** Operations on those classes that no sheet has a reason for. */
const UNCALLED = [
  'mushroom-dress',
  'stem-polish',
  'stud-refit',
  'stud-set-replace',
  'no-grinding-tag',
  'rocker-pad-grind',
  'spring-shim',
  'plate-align',
  'lifters-renew',
  'run-in',
]
const OPERATIONS = new Set([...UNCALLED, ...SHEETS.flatMap(([, e]) => e.order.map((line) => line.split(' ')[0] ?? ''))])

/** Warnings for every head that is stripped, washed and proved. */
const ALWAYS = [
  'advice-only',
  'asbestos-gasket',
  'caustic',
  'compressed-spring',
  'hot-parts',
  'leaded-deposit',
  'lifting',
  'maker-first',
  'missed-crack',
  'solvent-fire',
  'test-pressure',
]
/** Warnings that a finding or a choice of the build brings. */
const BY_FINDING = [
  'air-held-valve',
  'beryllium-dust',
  'charred-seal',
  'cutting-die',
  'first-run',
  'gas-isolation',
  'metal-dust-fire',
  'nut-backs-off',
  'sodium-filled-valve',
  'stud-breakage',
  'valve-drop',
  'wet-stud-hole',
]

/** Quantile of the standard normal at 0.95, from any table of it: the shop's confidence. */
const Z = 1.6448536
const CLOSE = 9

let house: House
beforeAll(async () => {
  house = await openHouse()
})
afterAll(() => house.leave())

async function decided(sheet: Sheet): Promise<DecisionRecord> {
  const shop = await shopOfKey(house.service, house.key)
  if (shop === undefined) throw new Error('The demo shop is not there.')
  return (await decideSheet(house.service, shop, sheet, { door: 'cli' })).record
}

const textOf = (name: string): Promise<string> => readFile(new URL(`../../examples/sheets/${name}.json`, import.meta.url), 'utf8')

/** "valve 3E" → its verdict. */
function verdictAt(record: DecisionRecord, at: string): RecordVerdict {
  const found = record.verdicts.find((v) => `${v.part} ${v.at}` === at)
  if (found === undefined) throw new Error(`No verdict on ${at}.`)
  return found
}

const wordsOf = (v: RecordVerdict): string => [...v.because, ...v.advice, ...v.mustTurnOut].join(' ')
const sorted = (positions: readonly string[]): readonly string[] => [...positions].sort((a, b) => (a < b ? -1 : 1))

function compared(record: DecisionRecord, { at, rule, fact }: Comparison): RecordVerdict['steps'][number]['facts'][number] {
  const leaf = verdictAt(record, at)
    .steps.find((s) => s.rule === rule)
    ?.facts.find((f) => f.fact === fact)
  if (leaf === undefined) throw new Error(`${at}: ${rule} compared no ${fact}.`)
  return leaf
}

describe.each(SHEETS)('%s', (name, expected) => {
  let record: DecisionRecord
  beforeAll(async () => {
    record = await decided(sheetFromText(await textOf(name)))
  })

  it('is entered in the ledger, and both interpreters agree', () => {
    expect(record.recorded).toBe(true)
    expect(record.ledger?.hash).toMatch(/^[0-9a-f]{64}$/)
    expect(record.body.evaluator).toMatchObject({ ran: true, agrees: true })
  })

  it('every part has its verdict, and no other part has one', () => {
    const got: Record<string, Record<string, readonly string[]>> = {}
    for (const v of record.verdicts.filter((one) => CLASSES.includes(one.part))) {
      const of = (got[v.part] ??= {})
      of[v.disposition] = sorted([...(of[v.disposition] ?? []), v.at])
    }
    const wanted = Object.fromEntries(
      Object.entries(expected.parts).map(([part, of]) => [
        part,
        Object.fromEntries(Object.entries(of).map(([disposition, at]) => [disposition, sorted(at.split(' '))])),
      ]),
    )
    expect(got).toEqual(wanted)
  })

  it('the job as a whole has its verdicts', () => {
    const got = record.verdicts.filter((v) => SUBJECTS.includes(v.part)).map((v) => [v.part, v.disposition])
    expect(Object.fromEntries(got)).toEqual(expected.job)
  })

  it('a set that is renewed governs its parts and closes their questions; nothing else does', () => {
    for (const v of record.verdicts.filter((one) => CLASSES.includes(one.part))) {
      expect([v.part, v.governing, v.set]).toEqual(
        expected.governed[v.part] === undefined ? [v.part, 'part', undefined] : [v.part, 'set', expected.governed[v.part]],
      )
      if (v.governing === 'set') expect(v.open).toEqual([])
    }
  })

  it.each(expected.comparisons.map((c) => [`${c.at}: ${c.rule}, ${c.fact}`, c] as const))('%s', (_, wanted) => {
    const leaf = compared(record, wanted)
    const { limit, value = [], u = [] } = leaf
    const i = value.findIndex((v) => typeof v === 'number' && Math.abs(v - wanted.value) <= 1e-9 * Math.abs(wanted.value))
    expect(i, `${wanted.value} among ${value.join(', ')}`).toBeGreaterThanOrEqual(0)
    expect(limit?.value).toBeCloseTo(wanted.limit, CLOSE)
    expect([limit?.from, limit?.adoptedBy !== undefined]).toEqual([wanted.from, wanted.adopted ?? false])
    expect([leaf.answer, leaf.safeSide]).toEqual([wanted.answer, wanted.safeSide])
    if (wanted.u === undefined) return
    expect(u[i]).toBeCloseTo(wanted.u, CLOSE)
    // By the shop's odds, worked out anew: clear of the limit, or too close to call.
    const clear = Math.abs(wanted.value - wanted.limit) / wanted.u >= Z
    expect(clear).toBe(wanted.answer !== 'unknown' && wanted.safeSide === undefined)
  })

  it('the words show the figures', () => {
    for (const [at, figures] of Object.entries(expected.says)) {
      const words = wordsOf(verdictAt(record, at))
      for (const figure of figures) expect(words, at).toContain(figure)
    }
  })

  it('what waits asks first for what would settle it', () => {
    for (const [at, { fact, why, better }] of Object.entries(expected.waits)) {
      const [first] = verdictAt(record, at).open
      expect([at, first?.fact, first?.why, first?.better]).toEqual([at, fact, why, better])
    }
  })

  it('the parts list holds what is bought, counted', () => {
    const lines = record.plan.partsList.map((l) => [l.item, l.quantity] as const)
    const others = lines.filter(([item]) => expected.list[item] === undefined)
    expect(Object.fromEntries(lines.filter((l) => !others.includes(l)))).toEqual(expected.list)
    for (const [word, least] of Object.entries(expected.atLeast)) {
      const counted = others.filter(([item]) => item.includes(word)).map(([, quantity]) => quantity)
      expect(Math.max(0, ...counted), word).toBeGreaterThanOrEqual(least)
    }
  })

  it('the work comes in working order, at its positions', () => {
    const got = record.plan.workOrder
      .filter((l) => OPERATIONS.has(l.operation))
      .map((l) => [l.operation, ...l.at.filter((a) => CLASSES.includes(a.part)).flatMap((a) => [a.part, ...sorted(a.positions)])].join(' '))
    expect(got).toEqual(expected.order)
  })

  it('warnings are those of every stripped head and of this job, no others', () => {
    const ids = record.plan.cautions.map((c) => c.id)
    expect(ids).toEqual(expect.arrayContaining(ALWAYS))
    expect(sorted(ids.filter((id) => BY_FINDING.includes(id)))).toEqual(expected.warns)
    // Hazards come before anything else is said.
    const levels = record.plan.cautions.map((c) => c.level)
    expect(levels.lastIndexOf('hazard')).toBeLessThan(levels.indexOf('caution'))
  })
})

describe('what the sheets are made to show', () => {
  it('one load, two testers: what the bench tester leaves open is asked again, and the calibrated one settles it', async () => {
    const sheet = sheetFromText(await textOf('ql-6p-mixed-findings'))
    // A third failing spring takes the set, and then nothing more is asked of any: here the rusted one is left out.
    const two = { ...sheet, findings: sheet.findings.filter((f) => f.property !== 'surface') }
    const record = await decided(two)
    expect(verdictAt(record, 'spring 3I').open).toContainEqual(expect.objectContaining({ fact: 'seat-load', why: 'too close' }))
  })

  it('the same pits: ground out without a mark, condemned with one', async () => {
    const record = await decided(sheetFromText(await textOf('ql-8s-cam-and-pump')))
    const rules = (at: string): readonly string[] =>
      verdictAt(record, at)
        .steps.filter((s) => s.outcome === 'met' && s.kind !== 'check')
        .map((s) => s.rule)
    expect(rules('valve 2E')).toEqual(['valve.face-refaced', 'valve.work-told'])
    expect(rules('valve 6E')).toEqual(expect.arrayContaining(['valve.face-not-ground', 'valve.filled-valve-mark']))
  })

  it('guide tops cut 0.070 are too close by the card, and clear once somebody has measured the room', async () => {
    const text = (await textOf('ql-8s-cam-and-pump')).replace('"guide-top-cut": "0.080 in"', '"guide-top-cut": "0.070 in"')
    const byCard = sheetFromText(text)
    const waits = verdictAt(await decided(byCard), 'seal-choice engine')
    expect([waits.disposition, waits.open[0]?.fact, waits.open[0]?.why]).toEqual(['undetermined', 'retainer-to-guide-top', 'too close'])
    const measured = { part: 'job', at: 'engine', property: 'retainer-to-guide-top', value: '0.621 in', instrument: 'depth-micrometer' }
    const record = await decided({ ...byCard, findings: [...byCard.findings, measured] })
    const leaf = compared(record, {
      at: 'seal-choice engine',
      rule: 'job.guide-top-cut-planned',
      fact: 'seal-clearance',
      answer: 'met',
      value: 0,
      limit: 0,
      from: 'trade',
    })
    // 0.621 − 0.512 − 0.115 + 0.070
    expect([verdictAt(record, 'seal-choice engine').disposition, leaf.answer]).toEqual(['recondition', 'met'])
    expect(leaf.value?.[0]).toBeCloseTo(0.064 * inch, CLOSE)
  })

  it('a stud whose polish opened its rocker leaves the rocker waiting until both checks are answered', async () => {
    const sheet = sheetFromText(await textOf('ql-6p-mixed-findings'))
    const without = (property: string): Sheet => ({
      ...sheet,
      findings: sheet.findings.filter((f) => !(f.part === 'rocker' && f.property === property)),
    })
    for (const property of ['runs-true', 'slot.clearance']) {
      const rocker = verdictAt(await decided(without(property)), 'rocker 5I')
      expect([rocker.disposition, rocker.open.map((q) => q.fact)]).toEqual(['undetermined', [property]])
    }
  })

  it('remembered figures decide where the foreman adopted them, and say so; elsewhere they only wait', async () => {
    const sheet = sheetFromText(await textOf('ql-8s-cam-and-pump'))
    const here = verdictAt(await decided(sheet), 'stud-set engine')
    expect([here.disposition, here.weakestSource]).toEqual(['replace', 'from memory, adopted by the shop'])
    const elsewhere = verdictAt(await judgeSheet(house.service, undefined, sheet), 'stud-set engine')
    expect(elsewhere.disposition).toBe('undetermined')
    expect(elsewhere.open.map((q) => q.why)).toContain('limit not adopted')
  })

  it('the dressing of tips is ordered on every kept valve but the held one', async () => {
    const { plan } = await decided(sheetFromText(await textOf('ql-8s-cam-and-pump')))
    const at = (operation: string): readonly string[] =>
      plan.workOrder.filter((l) => l.operation === operation).flatMap((l) => l.at.flatMap((a) => a.positions))
    expect(at('filled-valve-hold')).toEqual(['4E', '6E'])
    expect(at('tip-dress')).not.toContain('4E')
  })

  it('a stated fuel takes the gas warning away', async () => {
    const sheet = sheetFromText(await textOf('ql-6p-mostly-unmeasured'))
    const record = await decided({ ...sheet, build: { ...sheet.build, fuel: 'petrol' } })
    expect(record.plan.cautions.map((c) => c.id)).not.toContain('gas-isolation')
  })
})
