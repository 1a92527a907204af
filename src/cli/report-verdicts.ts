import { decidingSteps, groupVerdicts, partInWords, type VerdictGroup } from '../usecases/grouped.ts'
import type { DecisionRecord, RecordVerdict } from '../usecases/record.ts'
import type { StandingLimit } from '../verdict/fact.ts'
import type { ToldQuestion } from '../verdict/told.ts'
import type { Disposition } from '../verdict/verdict.ts'
import { positionsInWords } from '../verdict/where.ts'
import { hanging, type Ink } from './layout.ts'
import { titleLine, type ReportOptions, type Section } from './section.ts'

/** What must be done first, what is well last. */
const ORDER: readonly (readonly [Disposition, string])[] = [
  ['replace', 'Replace'],
  ['recondition', 'Recondition'],
  ['undetermined', 'Measure first'],
  ['reuse', 'Reuse'],
]

/** A verdict on the job as a whole stands at no position, and what it is about has no part class of its own. */
const ofTheJob = (v: RecordVerdict): boolean => v.at === 'engine'

/** "Replace 3, recondition 1, measure first 12, reuse 10." Parts that a set governs count with the set. */
export function summary(record: DecisionRecord): string {
  const parts = record.verdicts.filter((v) => !ofTheJob(v))
  const counted = ORDER.map(
    ([disposition, words]) =>
      [words.toLowerCase(), parts.filter((v) => v.governing === 'part' && v.disposition === disposition).length] as const,
  )
  const bySet = parts.filter((v) => v.governing === 'set').length
  const said = [...counted, ['renewed as a set', bySet] as const].filter(([, n]) => n > 0).map(([words, n]) => `${words} ${n}`)
  return said.length === 0 ? 'No part has a finding yet.' : `Parts: ${said.join(', ')}.`
}

/** The verdicts: by part and disposition, then those that a set decides, then the job's own. */
export const verdictLines: Section = (record, options) => {
  const parts = record.verdicts.filter((v) => !ofTheJob(v))
  const own = parts.filter((v) => v.governing === 'part')
  const told = new Set(record.verdicts.map((v) => `${v.part}@${v.at}`))
  const block = (title: string, verdicts: readonly RecordVerdict[]): readonly string[] => {
    const groups = groupVerdicts(verdicts)
    return groups.length === 0 ? [] : [titleLine(title, options), ...groups.flatMap((group) => groupLines(group, told, options))]
  }
  const blocks = [
    ...ORDER.map(([disposition, title]) =>
      block(
        title,
        own.filter((v) => v.disposition === disposition),
      ),
    ),
    block(
      'Renewed as a set',
      parts.filter((v) => v.governing === 'set'),
    ),
    block(
      'The job as a whole',
      ORDER.flatMap(([d]) => record.verdicts.filter((v) => ofTheJob(v) && v.disposition === d)),
    ),
  ].filter((lines) => lines.length > 0)
  return blocks.flatMap((lines, i) => (i === 0 ? lines : ['', ...lines]))
}

function groupLines(group: VerdictGroup, told: ReadonlySet<string>, { columns, ink }: ReportOptions): readonly string[] {
  const { verdict } = group
  const line = (mark: string, text: string, style?: Ink['faint']): readonly string[] => hanging(mark, text, columns, style)
  const [next] = group.asks
  return [
    ...line('  • ', group.says, ink.strong),
    ...(group.own === undefined ? [] : line('    its own verdict: ', group.own)),
    ...line('    ', [...(verdict.soFar === undefined ? [] : [verdict.soFar]), ...verdict.because].join(' ')),
    ...verdict.mustTurnOut.flatMap((words) => line('    must turn out: ', words)),
    ...verdict.advice.flatMap((words) => line('    – ', words)),
    ...line('    look at next: ', openedInWords(group, told)),
    ...(verdict.disposition === 'undetermined' && next !== undefined ? line('    first: ', firstInWords(next.question)) : []),
    ...(verdict.disposition === 'undetermined' ? [] : line('    ', groundOf(verdict), ink.faint)),
    ...(verdict.disagreement ?? []).flatMap((d) =>
      line('    ', `${d.rule}: the first interpreter says ${d.first}, the second ${d.second}.`),
    ),
  ]
}

/** Which rules made it so, and what the limits stand on. */
function groundOf(verdict: RecordVerdict): string {
  const steps = decidingSteps(verdict)
  const rules = steps.map((s) => s.rule)
  const figures = steps.flatMap((s) =>
    s.facts.flatMap((f) => (f.limit === undefined ? [] : [`${f.limit.typed} (${groundOfLimit(f.limit)})`])),
  )
  const limits = [...new Set(figures)]
  return [
    `Stands on: ${verdict.ground}.`,
    ...(limits.length === 0 ? [] : [`Limits: ${limits.join(', ')}.`]),
    ...(rules.length === 0 ? [] : [`Rules: ${rules.join(', ')}.`]),
  ].join(' ')
}

const GROUND = { maker: "the maker's sheet", card: 'the card of the part fitted', shop: "the shop's own figure" } as const

/** Where a limit comes from; a remembered one decides only once the shop has adopted it. */
function groundOfLimit(limit: StandingLimit): string {
  if (limit.from !== 'trade') return GROUND[limit.from]
  return limit.provenance === 'from memory' ? 'remembered, adopted by the shop' : (limit.provenance ?? 'remembered')
}

/** The question that settles most, and why it is open where that is more than nobody having looked. */
function firstInWords({ asks, why }: ToldQuestion): string {
  const question = asks.slice(asks.indexOf(': ') + 2)
  return why === 'not known yet' ? question : `${question} (${why})`
}

/** "rocker 3 exhaust (true running, slot clearance)": what was opened, as far as the engine has it. */
function openedInWords(group: VerdictGroup, told: ReadonlySet<string>): string {
  const opened = new Map<string, Set<string>>()
  for (const at of group.verdict.opens) {
    const [, part = '', rule = '', spot = ''] = /^([^:]+):(.+)@(.+)$/.exec(at) ?? []
    if (!told.has(`${part}@${spot}`)) continue
    // What is opened elsewhere than at the first position is opened there for the others likewise.
    const where = spot === group.verdict.at ? positionsInWords(group.positions) : positionsInWords(spotsLike(spot, group))
    const key = [partInWords(part), where].filter((w) => w !== '').join(' ')
    opened.set(key, (opened.get(key) ?? new Set()).add(rule.replaceAll('-', ' ')))
  }
  return [...opened].map(([where, rules]) => `${where} (${[...rules].join(', ')})`).join('; ')
}

const spotsLike = (spot: string, group: VerdictGroup): readonly string[] =>
  spot === group.verdict.at.replace(/[IE]$/, '') ? group.positions.map((p) => p.replace(/[IE]$/, '')) : [spot]
