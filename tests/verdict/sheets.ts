import * as fc from 'fast-check'
import { inUnit } from '../../src/quantity/show.ts'
import { keptUnit } from '../../src/quantity/units.ts'
import { FILES } from '../../src/rulebook/shelf.ts'
import { loadRulebook } from '../../src/rulebook/load.ts'
import type { PartClass, PropertyEntry } from '../../src/rulebook/book.ts'
import { positionsOf } from '../../src/rulebook/positions.ts'
import type { Engine } from '../../src/rulebook/schema/engine.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { enterSheet, LOOKED_OVER } from '../../src/verdict/enter.ts'
import type { EnteredSheet } from '../../src/verdict/entered.ts'
import { judge, type Judgement } from '../../src/verdict/judge.ts'
import { partsOf } from '../../src/verdict/sheet-figures.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { NO_SHOP, type ShopLayer } from '../../src/verdict/shop.ts'

/** The real rulebook, compiled once for all properties. */
export const book = compileBook(loadRulebook(FILES))
export const trade = NO_SHOP(book.book.confidence.default)

/** A shop that has adopted every remembered limit, so that the properties reach those rules too. */
export const adopter: ShopLayer = {
  ...trade,
  adoptions: [...book.book.parts.values()].flatMap((cls) =>
    [...cls.limits.keys()].map((limit) => ({ part: cls.id, limit, by: 'adopter', on: '2031-01-01' })),
  ),
}

export interface RandomFinding {
  readonly part: string
  readonly at: string
  readonly property: string
  readonly value: string | boolean | readonly string[]
  readonly instrument?: string
}

export interface RandomSheet {
  readonly job: string
  readonly engine: string
  readonly build: Readonly<Record<string, string | boolean>>
  readonly findings: readonly RandomFinding[]
}

const DECIMALS = 4
const STEPS = 1_000_000

/** A value that somebody could have entered for a property; undefined where the engine offers none. */
export function valueFor(engine: Engine, entry: PropertyEntry): fc.Arbitrary<Pick<RandomFinding, 'value' | 'instrument'>> | undefined {
  const { property } = entry
  if (property.kind === 'yes-no') return fc.boolean().map((value) => ({ value }))
  if (property.kind === 'choice') {
    const choices = Object.entries(property.choices).filter(([, c]) => c.declined === undefined)
    return fc.constantFrom(...choices.map(([id]) => ({ value: id })))
  }
  if (property.kind === 'card') {
    const cards = property.cards === 'castings' ? Object.keys(engine.castings) : Object.keys(engine.cards[property.cards] ?? {})
    return cards.length === 0 ? undefined : fc.constantFrom(...cards.map((value) => ({ value })))
  }
  const { lo = 0, hi = 1 } = entry.plausible ?? {}
  const unit = keptUnit(property.kind).id
  const decimals = property.kind === 'count' ? 0 : DECIMALS
  const typed = fc
    .integer({ min: 0, max: STEPS })
    .map((n) => inUnit(lo + ((hi - lo) * n) / STEPS, unit, decimals).replace('−', '-'))
    // Written out, the ends of a range may round to just outside it.
    .filter((text) => Number.parseFloat(text) >= lo && Number.parseFloat(text) <= hi)
  const value =
    property.readings === undefined
      ? typed
      : fc.array(typed, { minLength: 1, maxLength: property.readings.stations.length * property.readings.axes.length })
  const instrument =
    property.instruments.length === 0 ? fc.constant(undefined) : fc.option(fc.constantFrom(...property.instruments), { nil: undefined })
  return fc
    .record({ value, instrument })
    .map(({ value: v, instrument: i }) => (i === undefined ? { value: v } : { value: v, instrument: i }))
}

function findingFor(engine: Engine, cls: PartClass, at: string): fc.Arbitrary<RandomFinding> {
  const named = [...cls.properties.values()].flatMap((entry) => {
    const value = valueFor(engine, entry)
    return value === undefined ? [] : [value.map((v) => ({ part: cls.id, at, property: entry.name, ...v }))]
  })
  const looks = Object.keys(cls.file.procedures).map((p) => fc.constant({ part: cls.id, at, property: LOOKED_OVER, value: p }))
  return fc.oneof(...named, ...looks)
}

/** Distinct observations: two of the same property at one place would be a contradiction. */
export const distinct = (findings: readonly RandomFinding[]): readonly RandomFinding[] => [
  ...new Map(findings.map((f) => [`${f.part}:${f.property}@${f.at}`, f])).values(),
]

/** An observation on a part, of a kind that the sheet may or may not have already. */
export function findingOn(engineId: string, part: string, at: string): fc.Arbitrary<RandomFinding> {
  const engine = book.book.engines.get(engineId)
  const cls = book.book.parts.get(part)
  if (engine === undefined || cls === undefined) throw new Error(`No ${part} on ${engineId}.`)
  return findingFor(engine, cls, at)
}

/** Random sheets over the real vocabulary: some build choices, a few parts at a few positions, values all over their plausible ranges. */
export const randomSheet: fc.Arbitrary<RandomSheet> = fc.constantFrom(...book.book.engines.values()).chain((engine) => {
  const job = book.book.parts.get('job')
  const choices = [...(job?.properties.values() ?? [])].flatMap((entry) => {
    const value = valueFor(engine, entry)
    return value === undefined ? [] : [value.map((v) => [entry.name, v.value] as const)]
  })
  const stated = fc
    .array(fc.oneof(...choices), { maxLength: 12 })
    .map((pairs) => Object.fromEntries(pairs.filter((p): p is readonly [string, string | boolean] => !Array.isArray(p[1]))))
  return stated.chain((build) => {
    const casting = typeof build['casting'] === 'string' ? build['casting'] : undefined
    const spots = partsOf(engine, casting).flatMap((part) => {
      const cls = book.book.parts.get(part)
      return cls === undefined || part === 'job'
        ? []
        : positionsOf(engine, cls.place)
            .slice(0, 2)
            .map((at) => [cls, at] as const)
    })
    const findings = fc.array(
      fc.constantFrom(...spots).chain(([cls, at]) => findingFor(engine, cls, at)),
      { maxLength: 40 },
    )
    return findings.map((f) => ({ job: 'random', engine: engine.id, build, findings: distinct(f) }))
  })
})

export function entered(sheet: RandomSheet, shop: ShopLayer): EnteredSheet {
  return enterSheet(book.book, sheetFrom(sheet), shop, { name: (t) => `name of ${t}`, note: (t) => `note ${t}` })
}

export function judged(sheet: RandomSheet, shop: ShopLayer, secondOpinion = false): Promise<Judgement> {
  return judge(book, entered(sheet, shop), shop, { secondOpinion })
}

export const dispositions = (judgement: Judgement): ReadonlyMap<string, string> =>
  new Map(judgement.verdicts.map((v) => [`${v.part}@${v.at}`, v.disposition]))
