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

/** A leaf as the body keeps it: its limit by place in the body's table of limits, what it waits for only where that is another fact. */
export type BodyLeaf = Omit<LeafTrace, 'limit'> & { readonly limit?: number }
export type BodyStep = Omit<Step, 'facts'> & { readonly facts: readonly BodyLeaf[] }
export type BodyVerdict = Omit<Verdict, 'steps'> & { readonly steps: readonly BodyStep[] }

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
  readonly evaluator: { readonly first: string; readonly second: string; readonly ran: boolean; readonly agrees: boolean }
  readonly formulas: readonly string[]
  readonly confidence: string
  readonly build: Readonly<Record<string, string | readonly string[] | boolean>>
  readonly expansions: readonly ShownExpansion[]
  readonly facts: readonly BodyFact[]
  readonly limits: readonly StandingLimit[]
  readonly verdicts: readonly BodyVerdict[]
  readonly unseen: Judgement['unseen']
}

export function bodyOf(sheet: EnteredSheet, judgement: Judgement, edition: string, confidence: string): Body {
  const limits = limitTable(judgement.verdicts)
  return {
    form: 'witnessmark/body@1',
    job: sheet.job,
    engine: sheet.engine.id,
    stage: sheet.stage,
    edition,
    evaluator: { first: EVALUATOR, second: SECOND, ...judgement.secondOpinion },
    formulas: [...judgement.facts.formulas].sort(),
    confidence,
    build: Object.fromEntries([...sheet.build].map(([name, value]) => [name, typed(value)])),
    expansions: sheet.expansions,
    facts: bodyFacts(judgement.facts.consulted()),
    limits: limits.map(({ limit }) => limit),
    verdicts: judgement.verdicts.map((v) => compact(v, limits)),
    unseen: judgement.unseen,
  }
}

/** The verdicts of a body with their limits written out again. */
export function verdictsOf(body: Body): readonly Verdict[] {
  return body.verdicts.map((v) => ({
    ...v,
    steps: v.steps.map((step) => ({
      ...step,
      facts: step.facts.map(({ limit: index, ...leaf }): LeafTrace => {
        const limit = index === undefined ? undefined : body.limits[index]
        return limit === undefined ? leaf : { ...leaf, limit }
      }),
    })),
  }))
}

interface TableLine {
  readonly key: string
  readonly limit: StandingLimit
}

function limitTable(verdicts: readonly Verdict[]): readonly TableLine[] {
  const table = new Map<string, StandingLimit>()
  for (const v of verdicts) for (const s of v.steps) for (const { limit } of s.facts) if (limit !== undefined) table.set(JSON.stringify(limit), limit)
  return [...table].map(([key, limit]) => ({ key, limit })).sort((a, b) => (a.limit.id < b.limit.id ? -1 : a.limit.id > b.limit.id ? 1 : a.key < b.key ? -1 : 1))
}

function compact(verdict: Verdict, limits: readonly TableLine[]): BodyVerdict {
  return {
    ...verdict,
    steps: verdict.steps.map((step) => ({
      ...step,
      facts: step.facts.map(({ limit, needs, ...leaf }): BodyLeaf => {
        const key = JSON.stringify(limit)
        const another = needs?.filter((n) => n !== `${verdict.part}:${leaf.fact}@${verdict.at}`) ?? []
        return {
          ...leaf,
          ...(limit === undefined ? {} : { limit: limits.findIndex((l) => l.key === key) }),
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

const typed = (value: EnteredValue): string | readonly string[] | boolean => (value.form === 'term' ? value.term : value.form === 'quantity' ? value.readings.map((r) => r.typed) : value.form)
