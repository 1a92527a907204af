import { Engine, Operator as RuleOperator } from 'json-rules-engine'
import type { TopLevelCondition } from 'json-rules-engine'
import type { Condition, Leaf, Operator } from '../rulebook/schema/rule.ts'
import { OPERATORS } from '../rulebook/schema/rule.ts'
import type { Facts, Literals, SafeSide } from './condition.ts'
import type { Answer, Fact, LimitFact } from './fact.ts'

/**
 * The second interpreter: json-rules-engine over the same condition files, run twice, once with operators that mean
 * "certainly" and once "possibly". Since groups are never negated, certain → met, not possible → not met, else unknown.
 *
 * Used in the only way that is safe with it: prepared once per edition and class, one priority, constant facts always
 * supplied, no undefined facts, slim rules, own operators, no listeners, no stop(). So overlapping runs lose nothing.
 */
export interface SecondOpinion {
  /** The answer of every condition by the key it was entered under. */
  answers(facts: Facts): Promise<ReadonlyMap<string, Answer>>
}

export interface Question {
  readonly key: string
  readonly condition: Condition
  readonly safe: SafeSide
}

type Mood = 'certainly' | 'possibly'

/** What json-rules-engine is given for a fact: plain constants. */
interface Constant {
  readonly state: string
  readonly readings: readonly { readonly value: number; readonly lo: number; readonly hi: number; readonly best: boolean }[]
  readonly terms: readonly (string | boolean)[]
  readonly safeSide: boolean
  /** Fewer readings than asked for. */
  readonly incomplete: boolean
}

export function prepareSecondOpinion(questions: readonly Question[], literal: Literals): SecondOpinion {
  const facts = new Set<string>()
  const limits = new Set<string>()
  for (const { condition } of questions) gather(condition, facts, limits)
  const engines = { certainly: engineFor('certainly', questions, literal), possibly: engineFor('possibly', questions, literal) }
  return {
    async answers(source) {
      const constants: Record<string, Constant> = {}
      for (const name of facts) constants[name] = constantFact(source.fact(name))
      for (const name of limits) constants[name] = constantLimit(source.limit(name))
      const certain = await namesThatHold(engines.certainly, constants)
      const possible = await namesThatHold(engines.possibly, constants)
      return new Map(questions.map(({ key }) => [key, certain.has(key) ? 'met' : possible.has(key) ? 'unknown' : 'not met'] as const))
    },
  }
}

async function namesThatHold(engine: Engine, constants: Record<string, Constant>): Promise<ReadonlySet<string>> {
  const { events } = await engine.run(constants)
  return new Set(events.map((event) => event.type))
}

function engineFor(mood: Mood, questions: readonly Question[], literal: Literals): Engine {
  const engine = new Engine([], { allowUndefinedFacts: false })
  for (const operator of OPERATORS) {
    for (const safe of ['met', 'not met'] as const) engine.addOperator(operatorFor(mood, operator, safe))
  }
  for (const { key, condition, safe } of questions) {
    const grouped: Condition = 'fact' in condition ? { all: [condition] } : condition
    engine.addRule({ name: key, conditions: translate(grouped, safe, literal) as TopLevelCondition, event: { type: key } })
  }
  return engine
}

interface TheirLeaf {
  fact: string
  operator: string
  value: unknown
}
type TheirCondition = TheirLeaf | { all: TheirCondition[] } | { any: TheirCondition[] }

function translate(condition: Condition, safe: SafeSide, literal: Literals): TheirCondition {
  if ('fact' in condition)
    return { fact: condition.fact, operator: `${condition.operator} (safe ${safe})`, value: rightHand(condition, literal) }
  if (condition.all !== undefined) return { all: condition.all.map((c) => translate(c, safe, literal)) }
  return { any: (condition.any ?? []).map((c) => translate(c, safe, literal)) }
}

function rightHand(leaf: Leaf, literal: Literals): unknown {
  if (typeof leaf.value === 'object' && 'fact' in leaf.value) return leaf.value
  const bound = literal(leaf)
  return bound === undefined
    ? leaf.value
    : { state: 'known', readings: [{ value: bound, lo: bound, hi: bound, best: false }], terms: [], safeSide: false, incomplete: false }
}

/** An operator of json-rules-engine: does the comparison certainly (or possibly) hold? */
function operatorFor(mood: Mood, operator: Operator, safe: SafeSide): RuleOperator {
  const sure = mood === 'certainly'
  return new RuleOperator(
    `${operator} (safe ${safe})`,
    (left: Constant, right: Constant | string | boolean | readonly string[]): boolean => {
      if (left.state !== 'known') return !sure
      if (operator === 'is' || operator === 'is-not' || operator === 'among' || operator === 'not-among') {
        if (left.terms.length === 0) return !sure
        const list: readonly (string | boolean)[] = Array.isArray(right) ? (right as readonly string[]) : [right as string | boolean]
        const outside = left.terms.filter((t) => !list.includes(Array.isArray(right) ? String(t) : t))
        return operator === 'is' || operator === 'among' ? outside.length === 0 : outside.length > 0
      }
      const bound = right as Constant
      if (bound.state !== 'known' || left.readings.length === 0) return !sure
      const limit = bound.readings[0]?.value
      if (limit === undefined) return !sure
      const holds = left.readings.map((r) => {
        const yes = surely(operator, r, limit)
        if (yes) return true
        const no = surely(COMPLEMENT[operator], r, limit)
        if (no) return false
        return bound.safeSide && r.best ? safe === 'met' : !sure
      })
      if (left.incomplete) holds.push(!sure)
      return operator === 'at-most' || operator === 'at-least' ? holds.every(Boolean) : holds.some(Boolean)
    },
  )
}

const COMPLEMENT = { 'at-most': 'above', above: 'at-most', 'at-least': 'below', below: 'at-least' } as const

/** Beyond doubt: the whole interval lies on that side; an exact value on the limit itself is "at most" and "at least". */
function surely(operator: 'at-most' | 'above' | 'at-least' | 'below', r: { lo: number; hi: number }, limit: number): boolean {
  const exact = r.lo === r.hi
  switch (operator) {
    case 'at-most':
      return r.hi <= limit
    case 'above':
      return exact ? r.lo > limit : r.lo >= limit
    case 'at-least':
      return r.lo >= limit
    case 'below':
      return exact ? r.hi < limit : r.hi <= limit
  }
}

function gather(condition: Condition, facts: Set<string>, limits: Set<string>): void {
  if ('fact' in condition) {
    facts.add(condition.fact)
    if (typeof condition.value === 'object' && 'fact' in condition.value) limits.add(condition.value.fact)
    return
  }
  for (const member of condition.all ?? condition.any ?? []) gather(member, facts, limits)
}

function constantFact(fact: Fact): Constant {
  if (fact.state !== 'known') return { state: fact.state, readings: [], terms: [], safeSide: false, incomplete: false }
  return fact.form === 'quantity'
    ? { state: 'known', readings: fact.readings, terms: [], safeSide: false, incomplete: fact.incomplete ?? false }
    : { state: 'known', readings: [], terms: fact.terms, safeSide: false, incomplete: false }
}

function constantLimit(limit: LimitFact): Constant {
  if (limit.state !== 'known') return { state: limit.state, readings: [], terms: [], safeSide: false, incomplete: false }
  return {
    state: 'known',
    readings: [{ value: limit.value, lo: limit.value, hi: limit.value, best: false }],
    terms: [],
    safeSide: limit.whenTooClose === 'safe-side',
    incomplete: false,
  }
}
