import { Refused } from '../quantity/fault.ts'
import { factKindOf } from '../rulebook/fact-kind.ts'
import type { PropertyEntry } from '../rulebook/book.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import { positionsOf, sameSpot } from '../rulebook/positions.ts'
import type { RuleCase } from '../rulebook/schema/rule.ts'
import type { CompiledBook, CompiledRule } from './compiled.ts'
import { readValue } from './enter-value.ts'
import type { EnteredFinding, EnteredSheet, EnteredValue } from './entered.ts'
import { JobFacts } from './facts.ts'
import { firstConditions, Outcomes, type RuleOutcome } from './outcome.ts'
import { NO_SHOP, type ShopLayer } from './shop.ts'

/** An engine of one cylinder with every part, for cases that lean on no engine's sheet. */
const bareEngine = (book: CompiledBook): Engine => ({
  id: 'BARE',
  says: 'An engine without a sheet, for rule cases.',
  invented: true,
  layout: { banks: [{ id: 'only', words: 'the only bank', cylinders: [1] }], ports: ['intake', 'exhaust'] },
  parts: [...book.book.parts.keys()],
  facts: {},
  limits: {},
  castings: {},
  cards: {},
})

/**
 * Runs one case of a rule as it stands in the rule's own file.
 * @throws Refused when a given fact can't be read, as it would be on a sheet
 */
export function runCase(book: CompiledBook, compiled: CompiledRule, one: RuleCase): RuleOutcome {
  const engine = one.engine === undefined ? bareEngine(book) : book.book.engines.get(one.engine)
  if (engine === undefined) throw new Error(`Case "${one.name}" of ${compiled.rule.id} names an engine without a sheet: ${one.engine}.`)
  const base = NO_SHOP(book.book.confidence.default)
  const shop: ShopLayer = { ...base, adoptions: one.adopted.map((a) => adoption(compiled.part, a)) }
  const place = book.book.parts.get(compiled.part)?.place ?? 'engine'
  const at = one.at ?? (place === 'valve' ? '1E' : (positionsOf(engine, place)[0] ?? ''))
  const build = new Map<string, EnteredValue>()
  const findings: EnteredFinding[] = []
  for (const [name, given] of Object.entries(one.given)) {
    const colon = name.indexOf(':')
    const [part, property] = colon < 0 ? [compiled.part, name] : [name.slice(0, colon), name.slice(colon + 1)]
    const typed = typeof given === 'object' && !Array.isArray(given) ? given : { value: given }
    const read = readValue(book.book, engine, shop, entryFor(book, part, property), typed, `/given/${name}`)
    if (!read.ok) throw new Refused(read.faults)
    if (part === 'job') build.set(property, read.value)
    else
      for (const spot of sameSpot(engine, at, book.book.parts.get(part)?.place ?? 'engine'))
        findings.push({ part, at: spot, property, value: read.value })
  }
  const casting = build.get('casting')
  const sheet: EnteredSheet = {
    job: 'a case',
    stage: 'received',
    engine,
    ...(casting?.form === 'term' ? { casting: String(casting.term) } : {}),
    build,
    findings,
    expansions: [],
    notes: [],
  }
  const facts = new JobFacts(book.book, sheet, shop)
  return new Outcomes(book, facts, firstConditions(facts)).of(compiled, at)
}

const adoption = (part: string, said: string): ShopLayer['adoptions'][number] => {
  const colon = said.indexOf(':')
  const [of, limit] = colon < 0 ? [part, said] : [said.slice(0, colon), said.slice(colon + 1)]
  return { part: of, limit, by: 'the case', on: 'the case' }
}

/** A case may give a computed figure outright; then it is read as a quantity of its kind. */
function entryFor(book: CompiledBook, part: string, name: string): PropertyEntry {
  const entry = book.book.parts.get(part)?.properties.get(name)
  if (entry !== undefined) return entry
  const kind = factKindOf(book.book.parts, part, name)
  if (kind?.form !== 'quantity') throw new Error(`A case gives ${part}:${name}, which is no property and no computed figure.`)
  return {
    name,
    property: {
      kind: kind.kind,
      label: name,
      words: [],
      ask: name,
      visual: false,
      effort: 1,
      stated: false,
      plausible: ['', ''],
      instruments: [],
    },
  }
}
