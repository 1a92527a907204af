import type { EnteredSheet, EnteredValue, ShownExpansion } from './entered.ts'
import type { Fact, FactKey } from './fact.ts'
import { EVALUATOR, SECOND, type Judgement } from './judge.ts'
import { parse } from './open.ts'
import type { Verdict } from './verdict.ts'

/** A known fact as the record keeps it: kept units, what was typed beside it, who and when as commitments. */
export interface BodyFact {
  readonly part: string
  readonly at: string
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
  readonly verdicts: readonly Verdict[]
  readonly unseen: Judgement['unseen']
}

export function bodyOf(sheet: EnteredSheet, judgement: Judgement, edition: string, confidence: string): Body {
  const keys = [...judgement.facts.consulted().keys()].sort()
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
    facts: keys.flatMap((key) => bodyFact(key, judgement.facts.consulted().get(key))),
    verdicts: judgement.verdicts,
    unseen: judgement.unseen,
  }
}

function bodyFact(key: FactKey, fact: Fact | undefined): readonly BodyFact[] {
  if (fact?.state !== 'known' || fact.origin === 'position') return []
  const { part, name, at } = parse(key)
  const { observed } = fact
  const base = { part, at, fact: name, origin: fact.origin, ...(observed ?? {}) }
  if (fact.form === 'term') return [{ ...base, value: fact.terms, ...(fact.procedure === undefined ? {} : { procedure: fact.procedure }) }]
  return [
    {
      ...base,
      value: fact.readings.map((r) => r.value),
      u: fact.readings.map((r) => r.u),
      ...(fact.formula === undefined ? {} : { formula: fact.formula }),
      ...(fact.inputs === undefined ? {} : { inputs: fact.inputs }),
    },
  ]
}

const typed = (value: EnteredValue): string | readonly string[] | boolean => (value.form === 'term' ? value.term : value.form === 'quantity' ? value.readings.map((r) => r.typed) : value.form)
