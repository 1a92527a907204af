import { ENGINE, portOf, positionsOf } from '../rulebook/positions.ts'
import type { Count } from '../rulebook/schema/properties.ts'
import type { CompiledBook, CompiledRule } from './compiled.ts'
import { dispositionOf } from './disposition.ts'
import type { EnteredSheet } from './entered.ts'
import type { Answer } from './fact.ts'
import { JobFacts } from './facts.ts'
import { openQuestions } from './open.ts'
import { firstConditions, Outcomes, secondConditions, type RuleOutcome } from './outcome.ts'
import { promiseId, type Promised } from './promised.ts'
import { providedOf } from './provided.ts'
import { partsOf } from './sheet-figures.ts'
import type { ShopLayer } from './shop.ts'
import { stepsOf, weakestSource } from './steps.ts'
import type { Verdict } from './verdict.ts'

/** Versions of the two interpreters; a new meaning is a new version, and the old one stays. */
export const EVALUATOR = 'witnessmark-kleene@1'
export const SECOND = 'json-rules-engine@1'

/** What judging a sheet gives: verdicts and the facts they stand on. Nothing here knows a clock, a person's name or a database. */
export interface Judgement {
  readonly verdicts: readonly Verdict[]
  readonly facts: JobFacts
  readonly outcomes: Outcomes
  /** Positions of part classes on this engine that no verdict speaks of, since nobody looked. */
  readonly unseen: readonly { readonly part: string; readonly at: readonly string[] }[]
  readonly secondOpinion: { readonly ran: boolean; readonly agrees: boolean }
}

interface Subject {
  readonly about: string
  /** The part whose facts its rules read. */
  readonly part: string
  readonly at: string
}

export interface JudgeOptions {
  readonly secondOpinion: boolean
  /** For returned work: what had to turn out, by the order that it comes back on. */
  readonly promised?: readonly Promised[]
}

/** Judges every part that the sheet speaks of, what their findings open, and the job's set-level subjects. */
export async function judge(book: CompiledBook, sheet: EnteredSheet, shop: ShopLayer, options: JudgeOptions): Promise<Judgement> {
  const facts = new JobFacts(book.book, sheet, shop)
  const outcomes = new Outcomes(book, facts, firstConditions(facts))
  facts.countBy((count) => countOf(book, sheet, outcomes, count))
  const z = book.book.confidence.quantiles[shop.confidence] ?? 0
  const subjects = subjectsOf(book, sheet, facts, outcomes, options.promised ?? [])

  const second = options.secondOpinion ? await secondOpinion(book, facts, subjects) : undefined
  const verdicts = subjects.map((subject): Verdict => {
    const rules = [...(book.about.get(subject.about) ?? []), ...promisesFor(book, subject, options.promised ?? [])]
    const found = rules.map((rule) => outcomes.of(rule, subject.at))
    const again = second === undefined ? undefined : rules.map((rule) => second.of(rule, subject.at))
    return verdictOf(book, shop, facts, outcomes, subject, found, again, z)
  })
  return {
    verdicts: govern(book, verdicts),
    facts,
    outcomes,
    unseen: unseenOf(book, sheet, subjects, governedBy(book, verdicts)),
    secondOpinion: { ran: second !== undefined, agrees: verdicts.every((v) => v.disagreement === undefined) },
  }
}

/** The lines promised of one subject, as rules. */
function promisesFor(book: CompiledBook, subject: Subject, promised: readonly Promised[]): readonly CompiledRule[] {
  return promised
    .filter((p) => p.part === subject.about && p.at === subject.at)
    .flatMap((p) => book.promises.get(promiseId(p.rule, p.index)) ?? [])
}

function verdictOf(
  book: CompiledBook,
  shop: ShopLayer,
  facts: JobFacts,
  outcomes: Outcomes,
  subject: Subject,
  found: readonly RuleOutcome[],
  again: readonly RuleOutcome[] | undefined,
  z: number,
): Verdict {
  const disagreement =
    again === undefined
      ? []
      : found.flatMap((o, i) =>
          again[i]?.answer === o.answer ? [] : [{ rule: o.compiled.rule.id, first: o.answer, second: again[i]?.answer ?? 'unknown' }],
        )
  const disposition = disagreement.length > 0 ? 'undetermined' : dispositionOf(found)
  const applying = found.filter((o) => o.answer !== 'does not apply')
  const steps = stepsOf(found, z)
  const checks = applying.filter((o) => o.compiled.kind === 'check' || o.compiled.kind === 'promise')
  const restores = disposition === 'recondition' ? applying.filter((o) => o.compiled.kind === 'restores' && o.answer === 'met') : []
  const waiting =
    disposition === 'replace'
      ? []
      : applying.filter(
          (o) =>
            o.answer === 'unknown' && (disposition === 'undetermined' ? o.compiled.kind !== 'advises' : o.compiled.kind === 'restores'),
        )
  return {
    part: subject.about,
    at: subject.at,
    disposition,
    governing: 'part',
    steps,
    open: openQuestions(book, shop, facts, outcomes, waiting),
    provided: restores.flatMap((o) => providedOf(o, facts)),
    opens: [
      ...new Set(
        applying
          .filter((o) => o.answer === 'met')
          .flatMap((o) => o.compiled.rule.then.opens.flatMap((opened) => spotsOpened(book, facts, opened, o.at))),
      ),
    ].sort(),
    tally: {
      checks: checks.length,
      passed: checks.filter((c) => c.answer === 'met').length,
      openChecks: checks.filter((c) => c.answer === 'unknown').length,
      condemned: applying.filter((o) => o.compiled.kind === 'condemns' && o.answer === 'met').length,
    },
    weakestSource: weakestSource(book.book, decidingOr(deciding(steps, disposition), applying)),
    ...(disagreement.length === 0 ? {} : { disagreement }),
  }
}

/** The steps that made the verdict what it is. */
function deciding(steps: Verdict['steps'], disposition: Verdict['disposition']): Verdict['steps'] {
  switch (disposition) {
    case 'replace':
      return steps.filter((s) => (s.kind === 'condemns' && s.outcome === 'met') || (s.kind === 'promise' && s.outcome === 'not met'))
    case 'recondition':
      return steps.filter((s) => (s.kind === 'restores' && s.outcome === 'met') || s.kind === 'check' || s.kind === 'promise')
    default:
      return steps.filter((s) => s.kind === 'check' || s.kind === 'promise')
  }
}

/** Where a verdict stands on no step of its own, it stands on every rule that could have spoken and did not. */
function decidingOr(steps: Verdict['steps'], applying: readonly RuleOutcome[]): Verdict['steps'] {
  if (steps.length > 0) return steps
  return applying
    .filter((o) => o.compiled.kind !== 'advises')
    .map((o) => ({ rule: o.compiled.rule.id, kind: 'check', outcome: o.answer, facts: o.leaves, sources: o.compiled.rule.sources }))
}

function spotsOpened(book: CompiledBook, facts: JobFacts, opened: string, at: string): readonly string[] {
  const part = opened.slice(0, opened.indexOf(':'))
  return facts
    .spots(part, at)
    .filter(() => book.rules.has(opened.replace(':', '.')))
    .map((spot) => `${opened}@${spot}`)
}

/** Parts with a finding, parts that a finding opened, and every set-level subject; in the engine's own order. */
function subjectsOf(
  book: CompiledBook,
  sheet: EnteredSheet,
  facts: JobFacts,
  outcomes: Outcomes,
  promised: readonly Promised[],
): readonly Subject[] {
  const has = partsOf(sheet.engine, sheet.casting)
  const wanted = new Set(sheet.findings.filter((f) => f.part !== 'job').map((f) => `${f.part}@${f.at}`))
  for (const p of promised) wanted.add(`${p.part}@${p.at}`)
  const pending = [...wanted]
  for (let key = pending.pop(); key !== undefined; key = pending.pop()) {
    const [about = '', at = ''] = key.split('@')
    for (const rule of book.about.get(about) ?? []) {
      if (rule.rule.then.opens.length === 0 || outcomes.of(rule, at).answer !== 'met') continue
      for (const opened of rule.rule.then.opens) {
        const target = book.rules.get(opened.replace(':', '.'))
        if (target === undefined || !has.includes(target.part)) continue
        for (const spot of facts.spots(target.part, at)) {
          const next = `${target.rule.about ?? target.part}@${spot}`
          if (!wanted.has(next)) {
            wanted.add(next)
            pending.push(next)
          }
        }
      }
    }
  }
  const subjects: Subject[] = []
  for (const about of Object.keys(book.book.subjects)) {
    const spoken = wanted.has(`${about}@${ENGINE}`) || (book.about.get(about) ?? []).some((rule) => spokenOf(book, facts, outcomes, rule))
    if (spoken) subjects.push({ about, part: 'job', at: ENGINE })
  }
  for (const part of has) {
    const cls = book.book.parts.get(part)
    if (cls === undefined || part === 'job') continue
    for (const at of positionsOf(sheet.engine, cls.place)) if (wanted.has(`${part}@${at}`)) subjects.push({ about: part, part, at })
  }
  return subjects
}

/** Positions of a part with findings that certainly stand so, of all that the engine has. */
function countOf(
  book: CompiledBook,
  sheet: EnteredSheet,
  outcomes: Outcomes,
  count: Count,
): { readonly certain: number; readonly possible: number; readonly of: number } {
  const place = book.book.parts.get(count.part)?.place ?? 'engine'
  const all = positionsOf(sheet.engine, place).filter((at) => count.port === undefined || portOf(at) === count.port)
  const seen = new Set(sheet.findings.filter((f) => f.part === count.part).map((f) => f.at))
  const rules = book.about.get(count.part) ?? []
  const stands = (at: string): Answer => {
    if (typeof count.that === 'object') {
      const rule = book.rules.get(count.that.rule)
      const answer = rule === undefined ? 'not met' : outcomes.of(rule, at).answer
      return answer === 'does not apply' ? 'not met' : answer
    }
    const disposition = dispositionOf(rules.map((rule) => outcomes.of(rule, at)))
    return disposition === 'replace' ? 'met' : disposition === 'undetermined' ? 'unknown' : 'not met'
  }
  const answers = all.filter((at) => seen.has(at)).map(stands)
  return { certain: answers.filter((a) => a === 'met').length, possible: answers.filter((a) => a !== 'not met').length, of: all.length }
}

/** A set-level subject is judged when one of its rules is met, or a build choice that its rules read was stated. */
function spokenOf(book: CompiledBook, facts: JobFacts, outcomes: Outcomes, rule: CompiledRule): boolean {
  if (outcomes.of(rule, ENGINE).answer === 'met' && rule.kind !== 'check') return true
  const roots = (name: string, seen = new Set<string>()): readonly string[] => {
    const inputs = book.book.parts.get('job')?.derived.get(name)?.inputs
    if (inputs === undefined || seen.has(name)) return [name]
    seen.add(name)
    return Object.values(inputs).flatMap((input) => roots(input, seen))
  }
  return rule.ownFacts.flatMap((name) => roots(name)).some((name) => facts.entered('job', name, ENGINE))
}

function unseenOf(
  book: CompiledBook,
  sheet: EnteredSheet,
  subjects: readonly Subject[],
  governed: ReadonlyMap<string, string>,
): Judgement['unseen'] {
  const seen = new Set(subjects.map((s) => `${s.about}@${s.at}`))
  return partsOf(sheet.engine, sheet.casting).flatMap((part) => {
    const cls = book.book.parts.get(part)
    // Nobody need look at what its set replaces.
    if (cls === undefined || part === 'job' || governed.has(part)) return []
    const at = positionsOf(sheet.engine, cls.place).filter((p) => !seen.has(`${part}@${p}`))
    return at.length === 0 ? [] : [{ part, at }]
  })
}

/** Part classes whose set is replaced, and the subject that says so. */
function governedBy(book: CompiledBook, verdicts: readonly Verdict[]): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(book.book.subjects).flatMap(([subject, { governs }]) =>
      governs !== undefined && verdicts.find((v) => v.part === subject)?.disposition === 'replace' ? [[governs, subject] as const] : [],
    ),
  )
}

/** A set that is replaced governs its parts: their own verdicts stand, their open questions close. */
function govern(book: CompiledBook, verdicts: readonly Verdict[]): readonly Verdict[] {
  const governed = governedBy(book, verdicts)
  return verdicts.map((v) => {
    const set = governed.get(v.part)
    return set === undefined ? v : { ...v, governing: 'set', set, open: [] }
  })
}

async function secondOpinion(book: CompiledBook, facts: JobFacts, subjects: readonly Subject[]): Promise<Outcomes> {
  const said = new Map<string, ReadonlyMap<string, Answer>>()
  const ask = async (about: string, part: string, at: string): Promise<void> => {
    const key = `${about}@${at}`
    const opinion = book.second.get(about)
    if (said.has(key) || opinion === undefined) return
    said.set(key, await opinion.answers(facts.of(part, at)))
  }
  for (const subject of subjects) await ask(subject.about, subject.part, subject.at)
  // Openers of dormant rules may sit on parts that the sheet does not name.
  for (const subject of subjects) {
    for (const rule of book.about.get(subject.about) ?? [])
      for (const id of openersOf(book, rule)) {
        const opener = book.rules.get(id)
        if (opener === undefined) continue
        for (const at of facts.spots(opener.part, subject.at)) await ask(opener.rule.about ?? opener.part, opener.part, at)
      }
  }
  return new Outcomes(
    book,
    facts,
    secondConditions((rule, at) => said.get(`${rule.rule.about ?? rule.part}@${at}`) ?? new Map()),
  )
}

/** The openers of a rule, and the openers of those. */
function openersOf(book: CompiledBook, rule: CompiledRule, seen = new Set<string>()): ReadonlySet<string> {
  for (const id of rule.openers) {
    if (seen.has(id)) continue
    seen.add(id)
    const opener = book.rules.get(id)
    if (opener !== undefined) openersOf(book, opener, seen)
  }
  return seen
}
