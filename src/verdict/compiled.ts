import type { PartClass, Rulebook } from '../rulebook/book.ts'
import { literalMeasure } from '../rulebook/literal.ts'
import { factKindOf } from '../rulebook/fact-kind.ts'
import type { Rule } from '../rulebook/schema/rule.ts'
import type { CompiledRule, RuleKind } from './compiled-rule.ts'
import { leavesOf } from './condition-leaves.ts'
import { compile, type Literals, type SafeSide } from './condition.ts'
import { linesOf, promiseId, promisesOf } from './promised.ts'
import { prepareSecondOpinion, type Question, type SecondOpinion } from './second-opinion.ts'

export const kindOf = (rule: Rule): RuleKind =>
  'condemns' in rule.then ? 'condemns' : 'restores' in rule.then ? 'restores' : 'check' in rule.then ? 'check' : 'advises'

/** A rulebook ready to judge: every condition compiled for both interpreters, once per edition. */
export interface CompiledBook {
  readonly book: Rulebook
  readonly rules: ReadonlyMap<string, CompiledRule>
  /** What restoring rules promise, by the line's id: asked of returned work only. */
  readonly promises: ReadonlyMap<string, CompiledRule>
  /** By what the verdict is about: a part class, or a subject of the job. */
  readonly about: ReadonlyMap<string, readonly CompiledRule[]>
  readonly second: ReadonlyMap<string, SecondOpinion>
}

/** A failed check and a met condemnation are what can't hurt. */
export const safeSideOf = (kind: RuleKind): SafeSide => (kind === 'check' || kind === 'promise' ? 'not met' : 'met')

export const QUESTIONS = ['applies', 'wakes', 'when'] as const
export const questionKey = (rule: string, which: (typeof QUESTIONS)[number]): string => `${rule} ${which}`

export function compileBook(book: Rulebook): CompiledBook {
  const openers = new Map<string, string[]>()
  for (const rule of book.rules.values()) {
    for (const opened of rule.then.opens) {
      const id = opened.replace(':', '.')
      openers.set(id, [...(openers.get(id) ?? []), rule.id])
    }
  }
  const rules = new Map<string, CompiledRule>()
  const promises = new Map<string, CompiledRule>()
  const about = new Map<string, CompiledRule[]>()
  const questions = new Map<string, Question[]>()
  const literals = new Map<string, Literals>()
  for (const cls of book.parts.values()) {
    const literal = literalsOf(book, cls)
    for (const rule of cls.rules) {
      const kind = kindOf(rule)
      const safe = safeSideOf(kind)
      const one: CompiledRule = {
        rule,
        kind,
        part: cls.id,
        // Whether a rule applies is never taken on the safe side of anything: "met" keeps the rule at work.
        ...(rule.appliesWhen === undefined ? {} : { appliesWhen: compile(rule.appliesWhen, 'met', literal) }),
        ...(rule.wakes === undefined ? {} : { wakes: compile(rule.wakes, 'met', literal) }),
        when: compile(rule.when, safe, literal),
        ownFacts: [
          ...new Set(
            leavesOf(rule.when)
              .map((l) => l.fact)
              .filter((f) => !f.includes(':')),
          ),
        ],
        openers: openers.get(rule.id) ?? [],
      }
      rules.set(rule.id, one)
      for (const promise of promisesOf(rule, cls.id, literal)) promises.set(promise.rule.id, promise)
      const subject = rule.about ?? cls.id
      about.set(subject, [...(about.get(subject) ?? []), one])
      literals.set(subject, literal)
      questions.set(subject, [...(questions.get(subject) ?? []), ...questionsOf(rule, safe)])
    }
  }
  const second = new Map(
    [...questions].map(([subject, asked]) => [subject, prepareSecondOpinion(asked, literals.get(subject) ?? (() => undefined))] as const),
  )
  return { book, rules, promises, about, second }
}

function questionsOf(rule: Rule, safe: SafeSide): Question[] {
  const asked: Question[] = [{ key: questionKey(rule.id, 'when'), condition: rule.when, safe }]
  if (rule.appliesWhen !== undefined) asked.push({ key: questionKey(rule.id, 'applies'), condition: rule.appliesWhen, safe: 'met' })
  if (rule.wakes !== undefined) asked.push({ key: questionKey(rule.id, 'wakes'), condition: rule.wakes, safe: 'met' })
  linesOf(rule).forEach(({ holds }, i) => {
    if (holds !== undefined) asked.push({ key: questionKey(promiseId(rule.id, i), 'when'), condition: holds, safe: 'not met' })
  })
  return asked
}

/** Reads a leaf's literal figure by the kind of the fact it is held against. */
function literalsOf(book: Rulebook, cls: PartClass): Literals {
  return (leaf) => {
    if (typeof leaf.value !== 'string') return undefined
    const kind = factKindOf(book.parts, cls.id, leaf.fact)
    return kind?.form === 'quantity' ? literalMeasure(leaf.value, kind.kind) : undefined
  }
}

export type { CompiledRule, RuleKind }
