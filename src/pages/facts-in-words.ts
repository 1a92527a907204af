import { probabilityWithin } from '../quantity/conformance.ts'
import type { QuantityKind } from '../quantity/measure.ts'
import { show, showWithDoubt } from '../quantity/show.ts'
import type { Rulebook } from '../rulebook/book.ts'
import { factKindOf } from '../rulebook/fact-kind.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import type { LeafTrace } from '../verdict/condition.ts'
import type { StandingLimit } from '../verdict/fact.ts'
import { positionsInWords } from '../verdict/where.ts'
import { labelOf, nameOf } from '../verdict/words.ts'

/** A condition of a rule as the line of a hand calculation. */
export interface FactLine {
  readonly label: string
  /** What stood there: as typed first, then value and doubt. */
  readonly found: string
  /** "at most", "is": how it was held against the limit. */
  readonly operator: string
  readonly against: string
  readonly answer: string
  /** What the limit is called, and where it comes from; a memory has no document to name. */
  readonly limit?: string
  readonly ground?: string
  readonly source?: string
  /** How a computed figure came about. */
  readonly arithmetic?: string
  /** How likely the true value lies on the good side; shown, and decides nothing. */
  readonly probability?: string
}

const OPERATOR: Readonly<Record<LeafTrace['operator'], string>> = {
  'at-most': 'at most',
  above: 'above',
  'at-least': 'at least',
  below: 'below',
  is: 'is',
  'is-not': 'is not',
  among: 'is one of',
  'not-among': 'is none of',
}

/** Words for what a rule asked of one fact of a part, what stood there, and the answer. */
export function factLine(book: Rulebook, record: DecisionRecord, about: string, at: string, leaf: LeafTrace): FactLine {
  const part = book.parts.has(about) ? about : 'job'
  const kind = kindOf(book, part, leaf)
  const known = bodyFact(record, part, at, leaf.fact)
  const { limit } = leaf
  const why = leaf.why === undefined ? '' : (book.phrases.why[leaf.why] ?? leaf.why)
  const probability = probabilityOf(leaf)
  const source = limit?.source === undefined ? undefined : book.sources.get(limit.source)
  return {
    label: labelOf(book, part, leaf.fact),
    found: foundIn(book, part, leaf, kind, known?.typed),
    operator: OPERATOR[leaf.operator],
    against: againstIn(book, part, leaf, kind),
    answer: leaf.answer === 'unknown' ? why || 'not known' : `${leaf.answer}${leaf.safeSide === true ? ', taken on the safe side' : ''}`,
    ...(limit === undefined ? {} : { ground: groundOf(book, limit), limit: labelOf(book, part, limit.id.replace(':', ':limit.')) }),
    ...(source === undefined || source.kind === 'from memory' ? {} : { source: source.title }),
    ...(known?.formula === undefined ? {} : { arithmetic: arithmeticOf(book, record, known.formula, known.inputs ?? []) }),
    ...(probability === undefined ? {} : { probability }),
  }
}

const kindOf = (book: Rulebook, part: string, leaf: LeafTrace): QuantityKind | undefined => {
  const kind = factKindOf(book.parts, part, leaf.fact)
  return kind?.form === 'quantity' ? kind.kind : leaf.limit?.kind
}

type BodyFact = DecisionRecord['body']['facts'][number]

function bodyFact(record: DecisionRecord, part: string, at: string, name: string): BodyFact | undefined {
  const colon = name.indexOf(':')
  const [of, fact] = colon < 0 ? [part, name] : [name.slice(0, colon), name.slice(colon + 1)]
  return record.body.facts.find((f) => f.part === of && f.fact === fact && (f.at.includes(at) || f.at.includes('engine')))
}

function foundIn(
  book: Rulebook,
  part: string,
  leaf: LeafTrace,
  kind: QuantityKind | undefined,
  typed: readonly string[] | undefined,
): string {
  if (leaf.value === undefined) return '—'
  const terms = leaf.value.filter((v): v is string | boolean => typeof v !== 'number')
  if (terms.length > 0 || kind === undefined) return terms.map((t) => termInWords(book, part, leaf.fact, t)).join(', ')
  const readings = leaf.value.flatMap((value, i) =>
    typeof value === 'number' ? [figure(kind, value, leaf.u?.[i] ?? 0, typed?.[i] ?? leaf.limit?.typed)] : [],
  )
  const asTyped = typed === undefined ? '' : `${typed.map((t) => `“${t}”`).join(', ')}: `
  return `${asTyped}${[...new Set(readings)].join('; ')}`
}

const figure = (kind: QuantityKind, value: number, u: number, typed: string | undefined): string =>
  showWithDoubt({ value, u }, kind, typed === undefined ? {} : { typed })

function againstIn(book: Rulebook, part: string, leaf: LeafTrace, kind: QuantityKind | undefined): string {
  if (leaf.limit !== undefined) return show(leaf.limit.value, leaf.limit.kind, { typed: leaf.limit.typed })
  const { against } = leaf
  if (against === undefined) return leaf.why === 'limit not adopted' ? 'a limit that is only remembered' : 'a limit that nobody has given'
  if (typeof against === 'number') return kind === undefined || !Number.isFinite(against) ? String(against) : show(against, kind, {})
  return (Array.isArray(against) ? against : [against as string | boolean])
    .map((t: string | boolean) => termInWords(book, part, leaf.fact, t))
    .join(', ')
}

/** A choice, a card, yes or no, in the catalogue's words. */
export function termInWords(book: Rulebook, part: string, name: string, term: string | boolean): string {
  if (typeof term === 'boolean') return term ? 'yes' : 'no'
  const colon = name.indexOf(':')
  const property = book.parts
    .get(colon < 0 ? part : name.slice(0, colon))
    ?.properties.get(colon < 0 ? name : name.slice(colon + 1))?.property
  return property?.kind === 'choice' ? (property.choices[term]?.says ?? term) : term
}

/** The ground that a limit stands on, as the trade says it. */
export function groundOf(book: Rulebook, limit: StandingLimit): string {
  if (limit.from !== 'trade') return book.phrases.grounds[limit.from] ?? limit.from
  const provenance = limit.provenance === 'from memory' ? 'from memory, adopted by the shop' : (limit.provenance ?? 'from memory')
  return book.phrases.grounds[provenance] ?? provenance
}

/** "tip-stock-left@1 of overall length 4.922 in (125.02 mm), shortest length 4.910 in (124.71 mm)" */
function arithmeticOf(book: Rulebook, record: DecisionRecord, formula: string, inputs: readonly string[]): string {
  const said = inputs.map((address) => {
    const [, part = '', name = '', at = ''] = /^([^:]+):(.+)@([^@]+)$/.exec(address) ?? []
    const label = labelOf(book, part, name)
    const shown = name.startsWith('limit.') ? limitShown(record, part, name) : factShown(book, record, part, name, at)
    return [label, ...(shown === undefined ? [] : [shown])].join(' ')
  })
  return `by ${formula} from ${said.join(', ')}`
}

function factShown(book: Rulebook, record: DecisionRecord, part: string, name: string, at: string): string | undefined {
  const fact = bodyFact(record, part, at, name)
  const kind = factKindOf(book.parts, part, name)
  if (fact === undefined || kind?.form !== 'quantity') return undefined
  return fact.value
    .flatMap((v, i) => (typeof v === 'number' ? [show(v, kind.kind, fact.typed?.[i] === undefined ? {} : { typed: fact.typed[i] })] : []))
    .join(', ')
}

function limitShown(record: DecisionRecord, part: string, name: string): string | undefined {
  const limit = record.body.limits.find((l) => l.id === `${part}:${name.slice('limit.'.length)}`)
  return limit === undefined ? undefined : show(limit.value, limit.kind, { typed: limit.typed })
}

const PERCENT = 100

/** The probability that the least favourable reading is what the condition asks for, in words; none where nothing is in doubt. */
function probabilityOf(leaf: LeafTrace): string | undefined {
  const bound = leaf.limit?.value
  if (bound === undefined || leaf.u === undefined || leaf.value === undefined) return undefined
  const side = leaf.operator === 'at-most' || leaf.operator === 'below' ? 'at-most' : 'at-least'
  const u = leaf.u
  const chances = leaf.value.flatMap((value, i) =>
    typeof value === 'number' && (u[i] ?? 0) > 0 ? [probabilityWithin({ value, u: u[i] ?? 0 }, bound, side)] : [],
  )
  if (chances.length === 0) return undefined
  const least = Math.min(...chances) * PERCENT
  return least > 99.9 ? 'over 99.9 %' : least < 0.1 ? 'under 0.1 %' : `${least.toFixed(1)} %`
}

/** "valve on 3 exhaust": what is at a position, by the rulebook's names. */
export const thingAt = (book: Rulebook, part: string, positions: readonly string[]): string => {
  const where = positionsInWords(positions)
  return where === '' ? nameOf(book, part) : `${nameOf(book, part)}, ${where}`
}
