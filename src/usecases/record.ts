import { probabilityWithin } from '../quantity/conformance.ts'
import { verdictsOf, type Body } from '../verdict/body.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import type { EnteredSheet } from '../verdict/entered.ts'
import type { Judgement } from '../verdict/judge.ts'
import { planOf, type Plan } from '../verdict/plan.ts'
import { tell, type ToldVerdict } from '../verdict/told.ts'
import type { LeafTrace } from '../verdict/condition.ts'
import type { Step, Verdict } from '../verdict/verdict.ts'

/** What is rendered in words beside a body; kept in the envelope, not hashed. */
export interface Words {
  readonly verdicts: readonly ToldVerdict[]
  /** Units assumed, groups expanded, doubt taken from the typed figure. */
  readonly notes: readonly string[]
}

/** A step with the probability of each comparison beside it: shown, rounded, and deciding nothing. */
export type RecordStep = Omit<Step, 'facts'> & { readonly facts: readonly (LeafTrace & { readonly probability?: readonly number[] })[] }

/** A verdict with its words beside it. `open` stays ids; `asks` says them. */
export type RecordVerdict = Omit<Verdict, 'steps'> & { readonly steps: readonly RecordStep[] } & Omit<
    ToldVerdict,
    'open' | 'provided' | 'set'
  > & {
    readonly asks: ToldVerdict['open']
    readonly mustTurnOut: readonly string[]
    readonly setSays?: string
  }

/** What every door answers with. */
export interface DecisionRecord {
  readonly recorded: boolean
  /** Said when nothing was recorded. */
  readonly says?: string
  readonly id?: string
  readonly job: string
  readonly engine: string
  readonly stage: 'received' | 'returned'
  readonly edition: string
  /** For returned work: the hash of the decision whose order it is checked against. */
  readonly checks?: string
  readonly receivedAt?: string
  readonly verdicts: readonly RecordVerdict[]
  readonly plan: Plan
  readonly notes: readonly string[]
  readonly unseen: Body['unseen']
  readonly ledger?: { readonly seq: number; readonly hash: string }
  /** The hashed body itself: what a sceptic checks. */
  readonly body: Body
}

export function wordsOf(book: CompiledBook, sheet: EnteredSheet, judgement: Judgement): { readonly plan: Plan; readonly words: Words } {
  return {
    plan: planOf(book, sheet, judgement),
    words: { verdicts: judgement.verdicts.map((v) => tell(book, judgement.facts, v)), notes: sheet.notes },
  }
}

export function recordOf(
  body: Body,
  told: { readonly plan: Plan; readonly words: Words },
  entered: { readonly id: string; readonly receivedAt: string; readonly seq: number; readonly hash: string } | { readonly says: string },
): DecisionRecord {
  const verdicts = verdictsOf(body).map((verdict, i): RecordVerdict => {
    const words = told.words.verdicts[i]
    if (words === undefined) throw new Error(`The words of verdict ${i} are missing from the envelope.`)
    const { open, provided, set, ...rest } = words
    return {
      ...verdict,
      steps: verdict.steps.map(withProbability),
      ...rest,
      asks: open,
      mustTurnOut: provided,
      ...(set === undefined ? {} : { setSays: set }),
    }
  })
  const ledger =
    'id' in entered
      ? { id: entered.id, receivedAt: entered.receivedAt, ledger: { seq: entered.seq, hash: entered.hash } }
      : { says: entered.says }
  return {
    recorded: 'id' in entered,
    ...ledger,
    job: body.job,
    engine: body.engine,
    stage: body.stage,
    edition: body.edition,
    ...(body.checks === undefined ? {} : { checks: body.checks }),
    verdicts,
    plan: told.plan,
    notes: told.words.notes,
    unseen: body.unseen,
    body,
  }
}

const DECIMALS = 3

/** How probable it is, by JCGM 106, that the leaf holds, reading by reading. */
function withProbability(step: Step): RecordStep {
  return {
    ...step,
    facts: step.facts.map((leaf) => {
      const { limit, operator, value, u } = leaf
      if (limit === undefined || value === undefined || u === undefined || !u.some((one) => one > 0)) return leaf
      const within = (reading: number, doubt: number): number => {
        const atMost = probabilityWithin({ value: reading, u: doubt }, limit.value, 'at-most')
        return Number((operator === 'at-most' || operator === 'below' ? atMost : 1 - atMost).toFixed(DECIMALS))
      }
      return { ...leaf, probability: value.map((v, i) => within(Number(v), u[i] ?? 0)) }
    }),
  }
}
