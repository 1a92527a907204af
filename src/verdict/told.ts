import { show, showWithDoubt } from '../quantity/show.ts'
import type { CompiledBook } from './compiled.ts'
import type { LeafTrace } from './condition.ts'
import type { JobFacts } from './facts.ts'
import type { OpenQuestion, Verdict } from './verdict.ts'
import { atInWords, fill, labelOf, nameOf, reason } from './words.ts'

/** A verdict in words, rendered from the rulebook of its edition. */
export interface ToldVerdict {
  /** The verdict as a sentence. */
  readonly says: string
  /** The reasons of the rules that made it so, figures in both unit systems. */
  readonly because: readonly string[]
  readonly advice: readonly string[]
  /** How far an undetermined part has come. */
  readonly soFar?: string
  readonly provided: readonly string[]
  readonly open: readonly ToldQuestion[]
  readonly ground: string
  readonly set?: string
}

export interface ToldQuestion {
  readonly asks: string
  readonly why: string
  readonly how?: string
  readonly with: readonly string[]
}

export function tell(book: CompiledBook, facts: JobFacts, verdict: Verdict): ToldVerdict {
  const { phrases } = book.book
  const part = nameOf(book.book, verdict.part)
  const subject = book.book.subjects[verdict.part]
  const own = subject === undefined ? verdict.part : 'job'
  const says =
    subject === undefined
      ? fill(phrases.dispositions[verdict.disposition], { part, at: atInWords(book.book, verdict.at) })
      : subjectSays(book, verdict.part, verdict.disposition)
  const reasons = (kinds: readonly string[]): readonly string[] =>
    verdict.steps
      .filter((s) => kinds.includes(s.kind) && s.outcome === 'met')
      .flatMap((s) => {
        const rule = book.rules.get(s.rule)
        if (rule === undefined) return []
        const doubtful = s.facts.find((leaf) => leaf.safeSide === true && leaf.answer === 'met')
        return [doubtful === undefined ? reason(book.book, facts, own, verdict.at, rule.rule.says) : safeSideSays(book, own, doubtful)]
      })
  const { tally } = verdict
  const soFar =
    tally.condemned > 0
      ? fill(phrases.soFar.condemned, { condemned: tally.condemned })
      : fill(tally.checks === 0 ? phrases.soFar.noChecks : phrases.soFar.clear, { open: tally.openChecks, checks: tally.checks })
  const broken = verdict.steps
    .filter((s) => s.kind === 'promise' && s.outcome === 'not met')
    .map((s) => fill(phrases.promise.broken, { line: promiseSays(book, facts, own, verdict.at, s.rule) }))
  const decisive =
    verdict.disposition === 'replace'
      ? ['condemns']
      : verdict.disposition === 'recondition'
        ? subject === undefined
          ? ['restores']
          : ['restores', 'check']
        : ['check']
  return {
    says,
    because:
      verdict.disagreement !== undefined
        ? [phrases.disagreement]
        : verdict.disposition === 'undetermined'
          ? []
          : [...broken, ...reasons(decisive)],
    advice: reasons(['advises']),
    ...(verdict.disposition === 'undetermined' ? { soFar } : {}),
    provided: verdict.provided.map((p) => providedInWords(book, facts, own, verdict.at, p)),
    open: verdict.open.map((q) => ask(book, q)),
    ground: phrases.grounds[verdict.weakestSource] ?? verdict.weakestSource,
    ...(verdict.set === undefined ? {} : { set: fill(phrases.set, { set: subjectSays(book, verdict.set, 'replace') }) }),
  }
}

/** A reading that no instrument could settle, taken on the side that can't hurt: said as that, not as a plain reading. */
function safeSideSays(book: CompiledBook, part: string, leaf: LeafTrace): string {
  const { limit, value = [], u = [] } = leaf
  if (limit === undefined) return ''
  const { kind } = limit
  // Of several readings, the one nearest the limit for its doubt is what nobody could settle.
  const readings = value.flatMap((v, i) => (typeof v === 'number' ? [{ value: v, u: u[i] ?? 0 }] : []))
  const distance = (m: { readonly value: number; readonly u: number }): number => Math.abs(m.value - limit.value) / m.u
  const closest = readings.reduce((a, b) => (distance(b) < distance(a) ? b : a), readings[0] ?? { value: limit.value, u: 0 })
  const label = labelOf(book.book, part, leaf.fact)
  return fill(book.book.phrases.safeSide, {
    label: `${label.charAt(0).toUpperCase()}${label.slice(1)}`,
    reading: showWithDoubt(closest, kind, { typed: limit.typed }),
    limit: show(limit.value, kind, { typed: limit.typed }),
  })
}

/** What had to turn out, from the rule and line that a promise names: "valve.tip-reground/1". */
function promiseSays(book: CompiledBook, facts: JobFacts, part: string, at: string, promise: string): string {
  const [rule = '', line = ''] = promise.split('/')
  return providedInWords(book, facts, part, at, { rule, index: Number(line) - 1 })
}

/** A subject of the job and how its disposition reads, as one sentence: "The set of stem seals is renewed whole." */
function subjectSays(book: CompiledBook, subject: string, disposition: Verdict['disposition']): string {
  const words = book.book.subjects[subject]
  if (words === undefined) return ''
  const sentence = `${words.one} ${words.reads[disposition]}`
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`
}

export function providedInWords(
  book: CompiledBook,
  facts: JobFacts,
  part: string,
  at: string,
  provided: Verdict['provided'][number],
): string {
  const then = book.rules.get(provided.rule)?.rule.then
  const line = then !== undefined && 'restores' in then ? then.provided[provided.index] : undefined
  return line === undefined ? '' : `${reason(book.book, facts, part, at, line.says)}; ${line.otherwise}`
}

/** What to measure next, with what, and why it is open. */
export function ask(book: CompiledBook, question: OpenQuestion): ToldQuestion {
  const property = book.book.parts.get(question.part)?.properties.get(question.fact)?.property
  const suits = question.better ?? (property !== undefined && 'instruments' in property ? property.instruments.slice(0, 1) : [])
  const where = atInWords(book.book, question.at).trim()
  const label = property?.ask ?? labelOf(book.book, question.part, question.fact)
  return {
    asks: `${nameOf(book.book, question.part)}${where === '' ? '' : ` ${where}`}: ${label}`,
    why: book.book.phrases.why[question.why] ?? question.why,
    ...(property?.how === undefined ? {} : { how: property.how }),
    with: suits.map((id) => book.book.instruments.get(id)?.label ?? id),
  }
}
