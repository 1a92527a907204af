import type { Disposition, OpenQuestion } from '../verdict/verdict.ts'
import type { ToldQuestion } from '../verdict/told.ts'
import { positionsInWords } from '../verdict/where.ts'
import type { DecisionRecord, RecordVerdict } from './record.ts'

/** Verdicts that say the same of several positions, told once. */
export interface VerdictGroup {
  /** The first of them; words that name a position name the first one's. */
  readonly verdict: RecordVerdict
  readonly positions: readonly string[]
  /** What counts, as a sentence about all the positions: the verdict, or that the part is renewed with its set. */
  readonly says: string
  /** The part's own verdict as a sentence, where a set governs it: both stand. */
  readonly own?: string
  /** The disposition that counts. */
  readonly counts: Disposition
  /** The first one's open questions; the others have the same at their own positions. */
  readonly asks: readonly { readonly question: ToldQuestion; readonly open: OpenQuestion }[]
}

/** Gathers verdicts that differ in position only, in the order of their first. */
export function groupVerdicts(verdicts: readonly RecordVerdict[]): readonly VerdictGroup[] {
  const groups = new Map<string, RecordVerdict[]>()
  for (const verdict of verdicts) {
    const key = JSON.stringify([verdict.part, verdict.disposition, verdict.governing, told(verdict)])
    groups.set(key, [...(groups.get(key) ?? []), verdict])
  }
  return [...groups.values()].flatMap((group) => {
    const [verdict] = group
    if (verdict === undefined) return []
    const positions = group.map((v) => v.at)
    const own = sentenceAbout(verdict, positions)
    const base = { verdict, positions, asks: questionsOf(verdict) }
    if (verdict.set === undefined) return [{ ...base, says: own, counts: verdict.disposition }]
    // Only a set that is replaced governs its parts.
    const says = `${capital([partInWords(verdict.part), positionsInWords(positions)].filter((w) => w !== '').join(' '))}: renewed with the ${partInWords(verdict.set)}.`
    return [{ ...base, says, own, counts: 'replace' as const }]
  })
}

/** All that a verdict says besides where. */
function told(verdict: RecordVerdict): unknown {
  const open = verdict.open.map((q) => [q.part, q.fact, q.why, q.better])
  const opens = verdict.opens.map((o) => o.slice(0, o.lastIndexOf('@')))
  return [
    verdict.because,
    verdict.advice,
    verdict.soFar,
    verdict.mustTurnOut,
    verdict.ground,
    verdict.setSays,
    open,
    opens,
    verdict.disagreement,
  ]
}

const questionsOf = (verdict: RecordVerdict): VerdictGroup['asks'] =>
  verdict.open.flatMap((open, i) => {
    const question = verdict.asks[i]
    return question === undefined ? [] : [{ question, open }]
  })

/** The first one's sentence with all the positions in it. A subject of the job is named before what is said of it. */
function sentenceAbout(verdict: RecordVerdict, positions: readonly string[]): string {
  const says = verdict.says.replace(positionsInWords([verdict.at]) || /$^/, positionsInWords(positions))
  const sentence = /[.!?]$/.test(says) ? says : `${says}.`
  return /^\p{Ll}/u.test(sentence) ? `${capital(partInWords(verdict.part))}: ${sentence}` : sentence
}

/** The steps that a disposition rests on; what was promised of work and did not turn out replaces the part. */
const DECIDES: Readonly<Record<Disposition, readonly string[]>> = {
  replace: ['condemns met', 'promise not met'],
  recondition: ['restores met'],
  undetermined: [],
  reuse: ['check met', 'promise met'],
}

/** The steps that made a verdict what it is; none where it still waits. */
export const decidingSteps = (verdict: RecordVerdict): RecordVerdict['steps'] =>
  verdict.steps.filter((s) => DECIDES[verdict.disposition].includes(`${s.kind} ${s.outcome}`))

/** A part class or subject by its id, as words: "rocker-stud" is "rocker stud". */
export const partInWords = (part: string): string => part.replaceAll('-', ' ')
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** One question over all the positions where it is open. */
export interface AskedAt {
  readonly part: string
  readonly fact: string
  readonly positions: readonly string[]
  readonly asks: string
  /** Why it is open, in words and by its id. */
  readonly why: string
  readonly reason: OpenQuestion['why']
  readonly how?: string
  readonly with: readonly string[]
}

/**
 * What to measure next, in the plan's order (what settles most first), each question once with every position that waits for it.
 */
export function askedOf(record: DecisionRecord): readonly AskedAt[] {
  const asked = new Map<string, AskedAt & { positions: string[] }>()
  const rank = new Map(record.plan.measureFirst.map((q, i) => [q.asks, i]))
  const ranks = new Map<string, number>()
  for (const verdict of record.verdicts) {
    verdict.open.forEach((open, i) => {
      const question = verdict.asks[i]
      if (question === undefined) return
      const key = JSON.stringify([open.part, open.fact, open.why, open.better])
      ranks.set(key, Math.min(ranks.get(key) ?? Number.MAX_SAFE_INTEGER, rank.get(question.asks) ?? Number.MAX_SAFE_INTEGER))
      const { asks, ...rest } = question
      const entry = asked.get(key) ?? { part: open.part, fact: open.fact, reason: open.why, positions: [], ...rest, asks: bare(asks) }
      if (!entry.positions.includes(open.at)) entry.positions.push(open.at)
      asked.set(key, entry)
    })
  }
  const at = (key: string): number => ranks.get(key) ?? Number.MAX_SAFE_INTEGER
  return [...asked].sort(([a], [b]) => at(a) - at(b)).map(([, entry]) => entry)
}

/** The question without the part and place that stand before it. */
const bare = (asks: string): string => asks.slice(asks.indexOf(': ') + 2)
