import { compare, kleeneAll, kleeneAny } from '../quantity/compare.ts'
import type { Condition, Leaf, Operator } from '../rulebook/schema/rule.ts'
import type { Answer, Fact, FactKey, LimitFact, StandingLimit } from './fact.ts'

/** What a condition is asked about: facts and limits by the names that the rule uses. */
export interface Facts {
  fact(name: string): Fact
  limit(name: string): LimitFact
}

/** Which answer can't hurt when a reading is too close to call under a `safe-side` limit: a condemnation, or a failed check. */
export type SafeSide = 'met' | 'not met'

export type Why =
  'missing' | 'not measured' | 'too close' | 'too few readings' | 'limit not adopted' | 'no limit' | 'out of range' | 'not applicable'

/** The trace of one leaf: what was asked, what stood there, and the answer. */
export interface LeafTrace {
  readonly fact: string
  readonly operator: Operator
  readonly answer: Answer
  /** Why the answer is unknown. */
  readonly why?: Why
  /** Readings of a quantity, or the terms. */
  readonly value?: readonly (number | string | boolean)[]
  readonly u?: readonly number[]
  /** The limit it was held against, or the literal. */
  readonly limit?: StandingLimit
  readonly against?: string | boolean | number | readonly string[]
  /** Set when a too-close reading was taken on the safe side. */
  readonly safeSide?: true
  /** Observations that would settle it. */
  readonly needs?: readonly FactKey[]
}

export interface ConditionTrace {
  readonly answer: Answer
  readonly leaves: readonly LeafTrace[]
}

export type Compiled = (facts: Facts) => ConditionTrace

/** A literal of a rule in kept units ("0 in" is 0 mm), read once per edition. */
export type Literals = (leaf: Leaf) => number | undefined

/**
 * The first interpreter: compiles a condition once into closures that answer in Kleene's strong three-valued logic and
 * write the trace. No code generation (workerd forbids it). Every leaf is evaluated, so that the trace is whole.
 */
export function compile(condition: Condition, safe: SafeSide, literal: Literals): Compiled {
  if ('fact' in condition) return compileLeaf(condition, safe, literal(condition))
  const all = condition.all !== undefined
  const members = (condition.all ?? condition.any ?? []).map((member) => compile(member, safe, literal))
  return (facts) => {
    const traces = members.map((member) => member(facts))
    const answers = traces.map((t) => t.answer)
    return { answer: all ? kleeneAll(answers) : kleeneAny(answers), leaves: traces.flatMap((t) => t.leaves) }
  }
}

const ORDERING: ReadonlySet<Operator> = new Set(['at-most', 'above', 'at-least', 'below'])

function compileLeaf(leaf: Leaf, safe: SafeSide, literal: number | undefined): Compiled {
  const { fact: name, operator } = leaf
  const one = (trace: LeafTrace): ConditionTrace => ({ answer: trace.answer, leaves: [trace] })
  const unknown = (why: Why, rest: Partial<LeafTrace> = {}): ConditionTrace =>
    one({ fact: name, operator, answer: 'unknown', why, ...rest })

  if (!ORDERING.has(operator)) {
    const wanted = leaf.value as string | boolean | readonly string[]
    return (facts) => {
      const fact = facts.fact(name)
      if (fact.state === 'missing') return unknown(fact.why, { needs: fact.needs, against: wanted })
      if (fact.state === 'not applicable' || fact.form !== 'term') return unknown('not applicable', { against: wanted })
      const hit = (term: string | boolean): boolean => (Array.isArray(wanted) ? wanted.includes(String(term)) : term === wanted)
      // "is" and "among" speak of all the terms seen, "is-not" and "not-among" of any: so each stays the other's complement.
      const every = fact.terms.every(hit)
      const answer: Answer = (operator === 'is' || operator === 'among') === every ? 'met' : 'not met'
      return one({ fact: name, operator, answer, value: fact.terms, against: wanted })
    }
  }

  const ordering = operator as 'at-most' | 'above' | 'at-least' | 'below'
  const every = ordering === 'at-most' || ordering === 'at-least'
  return (facts) => {
    const fact = facts.fact(name)
    const limit = typeof leaf.value === 'object' && 'fact' in leaf.value ? facts.limit(leaf.value.fact) : undefined
    const against = limit === undefined ? { against: literal ?? Number.NaN } : limit.state === 'known' ? { limit } : {}
    if (fact.state === 'missing') return unknown(fact.why, { needs: fact.needs, ...against })
    if (fact.state === 'not applicable' || fact.form !== 'quantity') return unknown('not applicable', against)
    const shown = { value: fact.readings.map((r) => r.value), u: fact.readings.map((r) => r.u), ...against }
    if (limit?.state === 'missing') return unknown(limit.why, { needs: limit.needs, ...shown })
    const bound = limit?.value ?? literal
    if (bound === undefined) return unknown('no limit', shown)
    const combine = every ? kleeneAll : kleeneAny
    // Readings still to be taken may fall either way.
    const toCome: readonly Answer[] = fact.incomplete === true ? ['unknown'] : []
    const plain = fact.readings.map((reading) => compare(ordering, reading, bound))
    const settled = plain.map((answer, i): Answer =>
      answer === 'unknown' && limit?.whenTooClose === 'safe-side' && fact.readings[i]?.best === true ? safe : answer,
    )
    const answer = combine([...settled, ...toCome])
    // Only where the plain readings leave it open does the safe side decide anything.
    const safeSide = combine([...plain, ...toCome]) === 'unknown' && answer !== 'unknown' ? { safeSide: true as const } : {}
    return answer === 'unknown'
      ? unknown(fact.incomplete === true ? 'too few readings' : 'too close', {
          ...shown,
          needs: fact.origin === 'computed' ? needsOf(fact) : [],
        })
      : one({ fact: name, operator, answer, ...shown, ...safeSide })
  }
}

const needsOf = (fact: { readonly inputs?: readonly string[] }): readonly FactKey[] =>
  (fact.inputs ?? []).filter((i): i is FactKey => !i.includes('limit.'))
