import { ENGINE } from '../rulebook/positions.ts'
import type { LeafTrace } from './condition.ts'
import type { EnteredSheet, EnteredValue, ShownExpansion } from './entered.ts'
import type { Fact, FactKey, StandingLimit } from './fact.ts'
import { EVALUATOR, SECOND, type Judgement } from './judge.ts'
import { parse } from './open.ts'
import type { Step, Verdict } from './verdict.ts'

/** A known fact as the record keeps it: kept units, what was typed beside it, who and when as commitments. */
export interface BodyFact {
  readonly part: string
  /** Every position where exactly this stands. */
  readonly at: readonly string[]
  readonly fact: string
  readonly origin: string
  readonly value: readonly (number | string | boolean)[]
  readonly u?: readonly number[]
  readonly uFrom?: string
  readonly typed?: readonly string[]
  readonly instrument?: string
  readonly by?: string
  readonly observedAt?: string
  readonly note?: string
  readonly procedure?: string
  readonly formula?: string
  readonly inputs?: readonly string[]
}

/**
 * A leaf as the body keeps it: its question and limit by their places in the body's tables; its reading only where it is
 * not the part's own fact, which stands in the table of facts; what it waits for only where that is another fact.
 */
export interface BodyLeaf extends Omit<LeafTrace, 'fact' | 'operator' | 'against' | 'limit'> {
  readonly asks: number
  readonly limit?: number
}
export interface BodyStep extends Pick<Step, 'rule' | 'outcome' | 'near'> {
  readonly facts: readonly BodyLeaf[]
}
export type BodyVerdict = Omit<Verdict, 'steps'> & { readonly steps: readonly BodyStep[] }

/** What a leaf asks: the fact, the operator, and the literal it is held against. */
export type Asked = Pick<LeafTrace, 'fact' | 'operator' | 'against'>

/**
 * What is hashed: normalised facts, verdicts with their steps, and the versions of everything that made them.
 * Ids and values only; words, times of receipt and people's names stand outside.
 */
export interface Body {
  readonly form: 'witnessmark/body@1'
  readonly job: string
  readonly engine: string
  readonly stage: 'received' | 'returned'
  readonly edition: string
  /** For returned work: the hash of the decision whose order came back. */
  readonly checks?: string
  readonly evaluator: { readonly first: string; readonly second: string; readonly ran: boolean; readonly agrees: boolean }
  readonly formulas: readonly string[]
  readonly confidence: string
  readonly build: Readonly<Record<string, string | readonly string[] | boolean>>
  readonly expansions: readonly ShownExpansion[]
  readonly facts: readonly BodyFact[]
  readonly limits: readonly StandingLimit[]
  readonly asks: readonly Asked[]
  readonly rules: Readonly<Record<string, Pick<Step, 'kind' | 'sources'>>>
  readonly verdicts: readonly BodyVerdict[]
  readonly unseen: Judgement['unseen']
}

export function bodyOf(sheet: EnteredSheet, judgement: Judgement, edition: string, confidence: string, checks?: string): Body {
  const steps = judgement.verdicts.flatMap((v) => v.steps)
  const leaves = steps.flatMap((s) => s.facts)
  const limits = tableOf(leaves.flatMap((l) => (l.limit === undefined ? [] : [l.limit])))
  const asks = tableOf(leaves.map(askedOf))
  const facts = bodyFacts(judgement.facts.consulted())
  const own = ownFacts(facts)
  return {
    form: 'witnessmark/body@1',
    job: sheet.job,
    engine: sheet.engine.id,
    stage: sheet.stage,
    edition,
    ...(checks === undefined ? {} : { checks }),
    evaluator: { first: EVALUATOR, second: SECOND, ...judgement.secondOpinion },
    formulas: [...judgement.facts.formulas].sort(),
    confidence,
    build: Object.fromEntries([...sheet.build].map(([name, value]) => [name, typed(value)])),
    expansions: sheet.expansions,
    facts,
    limits: limits.entries,
    asks: asks.entries,
    rules: Object.fromEntries(steps.map((s) => [s.rule, { kind: s.kind, sources: s.sources }])),
    verdicts: judgement.verdicts.map((v) => compact(v, own, asks.place, limits.place)),
    unseen: judgement.unseen,
  }
}

/** The verdicts of a body with their tables written out again: what the judge made, word for word. */
export function verdictsOf(body: Body): readonly Verdict[] {
  const own = ownFacts(body.facts)
  return body.verdicts.map((v) => ({
    ...v,
    steps: v.steps.map(({ rule, facts: leaves, ...step }): Step => {
      const { kind = 'advises', sources = [] } = body.rules[rule] ?? {}
      return { rule, kind, sources, ...step, facts: leaves.map((leaf) => written(body, own, v, leaf)) }
    }),
  }))
}

function written(body: Body, own: OwnFacts, verdict: BodyVerdict, { asks, limit: index, ...leaf }: BodyLeaf): LeafTrace {
  const asked = body.asks[asks]
  if (asked === undefined) throw new Error(`The body asks a question that it does not list (${asks}).`)
  const fact = own(asked.fact, verdict)
  const limit = index === undefined ? undefined : body.limits[index]
  return {
    ...asked,
    ...(fact === undefined ? {} : { value: fact.value, ...(fact.u === undefined ? {} : { u: fact.u }) }),
    ...leaf,
    ...(limit === undefined ? {} : { limit }),
  }
}

const askedOf = ({ fact, operator, against }: LeafTrace): Asked => ({ fact, operator, ...(against === undefined ? {} : { against }) })

type OwnFacts = (name: string, verdict: Pick<Verdict, 'part' | 'at'>) => BodyFact | undefined

/** A part's own fact from the table; a subject of the job reads the job's. */
function ownFacts(facts: readonly BodyFact[]): OwnFacts {
  const table = new Map(facts.flatMap((f) => f.at.map((at) => [`${f.part}:${f.fact}@${at}`, f] as const)))
  return (name, { part, at }) => table.get(`${part}:${name}@${at}`) ?? (at === ENGINE ? table.get(`job:${name}@${at}`) : undefined)
}

interface Table<T> {
  readonly entries: readonly T[]
  readonly place: (entry: T) => number
}

/** Distinct entries in an order that hangs on themselves alone. */
function tableOf<T>(all: readonly T[]): Table<T> {
  const distinct = new Map(all.map((entry) => [JSON.stringify(entry), entry] as const))
  const keys = [...distinct.keys()].sort()
  const places = new Map(keys.map((key, i) => [key, i] as const))
  return { entries: keys.flatMap((key) => distinct.get(key) ?? []), place: (entry) => places.get(JSON.stringify(entry)) ?? -1 }
}

function compact(verdict: Verdict, ownOf: OwnFacts, asks: Table<Asked>['place'], limits: Table<StandingLimit>['place']): BodyVerdict {
  return {
    ...verdict,
    steps: verdict.steps.map(({ rule, outcome, near, facts }) => ({
      rule,
      outcome,
      ...(near === undefined ? {} : { near }),
      facts: facts.map((leaf): BodyLeaf => {
        const { fact, operator: _operator, against: _against, limit, needs, value, u, ...rest } = leaf
        const inTable = JSON.stringify(value) === JSON.stringify(ownOf(fact, verdict)?.value)
        const another = needs?.filter((n) => n !== `${verdict.part}:${fact}@${verdict.at}`) ?? []
        return {
          asks: asks(askedOf(leaf)),
          ...rest,
          ...(inTable || value === undefined ? {} : { value }),
          ...(inTable || u === undefined ? {} : { u }),
          ...(limit === undefined ? {} : { limit: limits(limit) }),
          ...(another.length === 0 ? {} : { needs: another }),
        }
      }),
    })),
  }
}

/** Facts that stand alike at several positions ("looked over, nothing found") are kept once. */
function bodyFacts(consulted: ReadonlyMap<FactKey, Fact>): readonly BodyFact[] {
  const alike = new Map<string, { readonly fact: Omit<BodyFact, 'at'>; readonly at: string[] }>()
  for (const key of [...consulted.keys()].sort()) {
    const { part, name, at } = parse(key)
    const fact = bodyFact(part, name, consulted.get(key))
    if (fact === undefined) continue
    const text = JSON.stringify(fact)
    const group = alike.get(text) ?? { fact, at: [] }
    group.at.push(at)
    alike.set(text, group)
  }
  return [...alike.values()].map(({ fact, at }) => ({ ...fact, at }))
}

function bodyFact(part: string, name: string, fact: Fact | undefined): Omit<BodyFact, 'at'> | undefined {
  if (fact?.state !== 'known' || fact.origin === 'position') return undefined
  const base = { part, fact: name, origin: fact.origin, ...(fact.observed ?? {}) }
  if (fact.form === 'term') return { ...base, value: fact.terms, ...(fact.procedure === undefined ? {} : { procedure: fact.procedure }) }
  return {
    ...base,
    value: fact.readings.map((r) => r.value),
    u: fact.readings.map((r) => r.u),
    ...(fact.formula === undefined ? {} : { formula: fact.formula }),
    ...(fact.inputs === undefined ? {} : { inputs: fact.inputs }),
  }
}

const typed = (value: EnteredValue): string | readonly string[] | boolean =>
  value.form === 'term' ? value.term : value.form === 'quantity' ? value.readings.map((r) => r.typed) : value.form
