import { kleeneAll, kleeneAny } from '../quantity/compare.ts'
import { questionKey, type CompiledBook, type CompiledRule } from './compiled.ts'
import type { LeafTrace } from './condition.ts'
import type { Answer } from './fact.ts'
import type { JobFacts } from './facts.ts'

/** A rule's outcome at one spot. "does not apply" is no evidence either way. */
export type RuleAnswer = Answer | 'does not apply'

export interface RuleOutcome {
  readonly compiled: CompiledRule
  readonly at: string
  readonly answer: RuleAnswer
  /** Leaves of `when`, then those of `appliesWhen` and `wakes` where they left doubt. */
  readonly leaves: readonly LeafTrace[]
  /** Rules whose own doubt keeps this one from being known asleep: "rocker-stud.groove-condemns@3E". */
  readonly waitsFor: readonly { readonly rule: string; readonly at: string }[]
}

/** Answers that one interpreter gives for the conditions of one rule at one spot. */
export type Conditions = (
  compiled: CompiledRule,
  at: string,
) => {
  readonly applies: Answer
  readonly wakes: Answer | undefined
  readonly when: Answer
  readonly leaves?: readonly LeafTrace[]
  readonly doubt?: readonly LeafTrace[]
}

/**
 * Rule outcomes of one job by one interpreter, worked out when first asked. Both interpreters share this step:
 * it only combines three-valued answers, and asks the openers of a dormant rule.
 */
export class Outcomes {
  readonly #book: CompiledBook
  readonly #facts: JobFacts
  readonly #conditions: Conditions
  readonly #known = new Map<string, RuleOutcome>()
  readonly #asking = new Set<string>()

  constructor(book: CompiledBook, facts: JobFacts, conditions: Conditions) {
    this.#book = book
    this.#facts = facts
    this.#conditions = conditions
  }

  of(compiled: CompiledRule, at: string): RuleOutcome {
    const key = `${compiled.rule.id}@${at}`
    const known = this.#known.get(key)
    if (known !== undefined) return known
    if (this.#asking.has(key))
      throw new Error(`Rule ${compiled.rule.id} is opened by itself through other rules; mend the "opens" of those rules.`)
    this.#asking.add(key)
    const outcome = this.#work(compiled, at)
    this.#asking.delete(key)
    this.#known.set(key, outcome)
    return outcome
  }

  #work(compiled: CompiledRule, at: string): RuleOutcome {
    const { applies, wakes, when, leaves = [], doubt = [] } = this.#conditions(compiled, at)
    const awake = compiled.rule.dormant === true ? this.#awake(compiled, at, wakes) : { answer: 'met' as const, waitsFor: [] }
    const atWork = kleeneAll([applies, awake.answer])
    const base = {
      compiled,
      at,
      leaves: atWork === 'unknown' ? [...leaves, ...doubt] : leaves,
      waitsFor: atWork === 'unknown' ? awake.waitsFor : [],
    }
    if (atWork === 'not met') return { ...base, answer: 'does not apply' }
    if (atWork === 'met') return { ...base, answer: when }
    // Not known whether it applies: only the answer that holds either way may stand. A check that passes, passes;
    // a condemnation, restoration or advice that is not met is no evidence either way.
    const holdsEitherWay: Answer = compiled.kind === 'check' ? 'met' : 'not met'
    return { ...base, answer: when === holdsEitherWay ? when : 'unknown' }
  }

  /** A dormant rule wakes by a finding of its own, by its `wakes` condition, or by another rule that opens it. */
  #awake(
    compiled: CompiledRule,
    at: string,
    wakes: Answer | undefined,
  ): { answer: Answer; waitsFor: readonly { rule: string; at: string }[] } {
    if (compiled.ownFacts.some((name) => this.#facts.entered(compiled.part, name, at))) return { answer: 'met', waitsFor: [] }
    const answers: Answer[] = wakes === undefined ? [] : [wakes]
    const waitsFor: { rule: string; at: string }[] = []
    for (const id of compiled.openers) {
      const opener = this.#book.rules.get(id)
      if (opener === undefined) continue
      for (const spot of this.#facts.spots(opener.part, at)) {
        const answer = this.of(opener, spot).answer
        if (answer === 'unknown') waitsFor.push({ rule: id, at: spot })
        answers.push(answer === 'does not apply' ? 'not met' : answer)
      }
    }
    return { answer: kleeneAny(answers), waitsFor }
  }
}

/** The first interpreter's answers, with the trace. */
export function firstConditions(facts: JobFacts): Conditions {
  return (compiled, at) => {
    const view = facts.of(compiled.part, at)
    const applies = compiled.appliesWhen?.(view)
    const wakes = compiled.wakes?.(view)
    const when = compiled.when(view)
    return {
      applies: applies?.answer ?? 'met',
      wakes: wakes?.answer,
      when: when.answer,
      leaves: when.leaves,
      doubt: [...(applies?.leaves ?? []), ...(wakes?.leaves ?? [])].filter((l) => l.answer === 'unknown'),
    }
  }
}

/** The second interpreter's answers, from what json-rules-engine said per spot. */
export function secondConditions(answers: (compiled: CompiledRule, at: string) => ReadonlyMap<string, Answer>): Conditions {
  return (compiled, at) => {
    const said = answers(compiled, at)
    const answer = (which: 'applies' | 'wakes' | 'when'): Answer => said.get(questionKey(compiled.rule.id, which)) ?? 'unknown'
    return {
      applies: compiled.rule.appliesWhen === undefined ? 'met' : answer('applies'),
      wakes: compiled.rule.wakes === undefined ? undefined : answer('wakes'),
      when: answer('when'),
    }
  }
}
