/** The six properties that hold for every rulebook, over the real one and random sheets. */
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { canonicalText } from '../../src/ledger/canonical.ts'
import { inUnit } from '../../src/quantity/show.ts'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { positionsOf } from '../../src/rulebook/positions.ts'
import { FILES } from '../../src/rulebook/shelf.ts'
import { bodyOf } from '../../src/verdict/body.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { dispositionOf } from '../../src/verdict/disposition.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { JobFacts } from '../../src/verdict/facts.ts'
import { judge } from '../../src/verdict/judge.ts'
import { firstConditions, Outcomes } from '../../src/verdict/outcome.ts'
import { factOnSheet, layersOf, partsOf } from '../../src/verdict/sheet-figures.ts'
import { NOT_MEASURED, sheetFrom } from '../../src/verdict/sheet.ts'
import { adopter, book, dispositions, distinct, entered, findingOn, judged, randomSheet, trade, type RandomFinding } from './sheets.ts'

const RUNS = { numRuns: Number(process.env['PROPERTY_RUNS'] ?? 150) }
const shops = fc.constantFrom(trade, adopter)

describe('what holds for every rulebook', () => {
  it('1: a part with no findings is undetermined, never reuse or recondition', () => {
    fc.assert(
      fc.property(randomSheet, shops, (sheet, shop) => {
        const bare = entered({ ...sheet, findings: [] }, shop)
        const facts = new JobFacts(book.book, bare, shop)
        const outcomes = new Outcomes(book, facts, firstConditions(facts))
        for (const part of partsOf(bare.engine, bare.casting)) {
          const cls = book.book.parts.get(part)
          if (cls === undefined || part === 'job') continue
          for (const at of positionsOf(bare.engine, cls.place)) {
            const found = (book.about.get(part) ?? []).map((rule) => outcomes.of(rule, at))
            expect(dispositionOf(found), `${part}@${at}`).toBe('undetermined')
          }
        }
      }),
      { numRuns: 40 },
    )
  })

  it('2: what an observation condemns stays condemned, whatever else is observed on it', async () => {
    const more = randomSheet.chain((sheet) => {
      const [first] = sheet.findings
      const extra: fc.Arbitrary<RandomFinding[]> =
        first === undefined ? fc.constant([]) : fc.array(findingOn(sheet.engine, first.part, first.at), { maxLength: 8 })
      return extra.map((e) => ({ sheet, extra: e }))
    })
    await fc.assert(
      fc.asyncProperty(more, shops, async ({ sheet, extra }, shop) => {
        const before = await judged(sheet, shop)
        const read = entered(sheet, shop)
        const layers = layersOf(book.book, read)
        const known = new Set(read.findings.map((f) => `${f.part}:${f.property}@${f.at}`))
        // Unchanged specs: what the sheet of the engine says of the part is not observed anew; and no correction.
        const fresh = extra.filter(
          (f) =>
            !known.has(`${f.part}:${f.property}@${f.at}`) &&
            factOnSheet(layers, f.part, f.property, f.at) === undefined &&
            f.property !== 'looked-over',
        )
        const after = dispositions(await judged({ ...sheet, findings: [...sheet.findings, ...distinct(fresh)] }, shop))
        for (const v of before.verdicts)
          if (v.disposition === 'replace' && v.part !== 'job') expect(after.get(`${v.part}@${v.at}`), `${v.part}@${v.at}`).toBe('replace')
      }),
      RUNS,
    )
  })

  it('3: replacing a known fact by "not measured" never moves a verdict to reuse', async () => {
    const gone = randomSheet.chain((sheet) =>
      fc.record({
        sheet: fc.constant(sheet),
        which: fc.nat({ max: Math.max(0, sheet.findings.length + Object.keys(sheet.build).length - 1) }),
      }),
    )
    await fc.assert(
      fc.asyncProperty(gone, shops, async ({ sheet, which }, shop) => {
        fc.pre(sheet.findings.length + Object.keys(sheet.build).length > 0)
        const without =
          which < sheet.findings.length
            ? {
                ...sheet,
                findings: sheet.findings.map((f, i) =>
                  i === which && f.property !== 'looked-over' ? { part: f.part, at: f.at, property: f.property, value: NOT_MEASURED } : f,
                ),
              }
            : {
                ...sheet,
                build: Object.fromEntries(
                  Object.entries(sheet.build).map(([k, v], i) => [
                    k,
                    i === which - sheet.findings.length && k !== 'casting' ? NOT_MEASURED : v,
                  ]),
                ),
              }
        const before = dispositions(await judged(sheet, shop))
        for (const [subject, after] of dispositions(await judged(without, shop))) {
          if (after === 'reuse' && before.has(subject)) expect(before.get(subject), subject).toBe('reuse')
        }
      }),
      { numRuns: RUNS.numRuns * 2 },
    )
  })

  it('4: the order of observations, of rules and of parts does not matter: the same bytes', async () => {
    const shuffled = compileBook(loadRulebook(Object.fromEntries(Object.entries(FILES).reverse())))
    const twice = randomSheet.chain((sheet) =>
      fc.record({ sheet: fc.constant(sheet), order: fc.shuffledSubarray([...sheet.findings], { minLength: sheet.findings.length }) }),
    )
    await fc.assert(
      fc.asyncProperty(twice, shops, async ({ sheet, order }, shop) => {
        const bytes = async (compiled: typeof book, s: typeof sheet): Promise<string> => {
          const read = enterSheet(compiled.book, sheetFrom(s), shop, { name: (t) => t, note: (t) => t })
          return canonicalText(bodyOf(read, await judge(compiled, read, shop, { secondOpinion: false }), 'edition', shop.confidence))
        }
        const build = Object.fromEntries(Object.entries(sheet.build).reverse())
        expect(await bytes(shuffled, { ...sheet, build, findings: order })).toBe(await bytes(book, sheet))
      }),
      { numRuns: 60 },
    )
  })

  it('5: the same sheet, edition and versions give the same bytes, with the second opinion or asked again', async () => {
    await fc.assert(
      fc.asyncProperty(randomSheet, shops, async (sheet, shop) => {
        const read = entered(sheet, shop)
        const one = canonicalText(bodyOf(read, await judge(book, read, shop, { secondOpinion: true }), 'edition', shop.confidence))
        const two = canonicalText(bodyOf(read, await judge(book, read, shop, { secondOpinion: true }), 'edition', shop.confidence))
        expect(two).toBe(one)
      }),
      { numRuns: 40 },
    )
  })

  it('6: inches and millimetres of the same figure with the same doubt give the same verdict', async () => {
    // Ten-thousandths of an inch are whole hundred-thousandths of a millimetre times 254: both can be typed exactly.
    const lengths = [...book.book.parts.values()].flatMap((cls) =>
      [...cls.properties.values()].flatMap((entry) =>
        entry.property.kind === 'length' && entry.property.instruments.length > 0 && cls.id !== 'job' && entry.plausible !== undefined
          ? [{ part: cls.id, place: cls.place, entry, range: entry.plausible, instrument: entry.property.instruments[0] ?? '' }]
          : [],
      ),
    )
    const inchStep = 0.00254
    const one = fc
      .constantFrom(...lengths)
      .chain((l) =>
        fc.integer({ min: Math.ceil(l.range.lo / inchStep), max: Math.floor(l.range.hi / inchStep) }).map((n) => ({ l, mm: n * inchStep })),
      )
    await fc.assert(
      fc.asyncProperty(randomSheet, one, shops, async (sheet, { l, mm }, shop) => {
        const engine = book.book.engines.get(sheet.engine)
        fc.pre(
          engine !== undefined &&
            partsOf(engine, typeof sheet.build['casting'] === 'string' ? sheet.build['casting'] : undefined).includes(l.part),
        )
        const at = engine === undefined ? '' : (positionsOf(engine, l.place)[0] ?? '')
        const typed = (unit: string, decimals: number): string => inUnit(mm, unit, decimals).replace('−', '-')
        const rest = sheet.findings.filter((f) => !(f.part === l.part && f.property === l.entry.name && f.at === at))
        const withValue = (value: string) =>
          judged({ ...sheet, findings: [...rest, { part: l.part, at, property: l.entry.name, value, instrument: l.instrument }] }, shop)
        const [inches, metric] = [await withValue(typed('in', 4)), await withValue(typed('mm', 5))]
        expect(metric.verdicts.map((v) => [v.part, v.at, v.disposition, v.steps.map((s) => [s.rule, s.outcome])])).toEqual(
          inches.verdicts.map((v) => [v.part, v.at, v.disposition, v.steps.map((s) => [s.rule, s.outcome])]),
        )
      }),
      RUNS,
    )
  })
})
