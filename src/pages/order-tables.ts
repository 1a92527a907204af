import { html } from 'hono/html'
import { groupVerdicts, type VerdictGroup } from '../usecases/grouped.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import type { StandingLimit } from '../verdict/fact.ts'
import type { WorkLine } from '../verdict/plan.ts'
import type { Disposition } from '../verdict/verdict.ts'
import { positionsInWords } from '../verdict/where.ts'
import { labelOf } from '../verdict/words.ts'
import { groundOf, thingAt } from './facts-in-words.ts'
import { mark } from './mark.ts'
import { NOTHING, sentence, type Markup } from './markup.ts'
import { row, ruled, WRITE } from './table.ts'

const ORDER: readonly Disposition[] = ['replace', 'recondition', 'undetermined', 'reuse']

/** What every part is to get and why: what must be done first, the job's own verdicts last. */
export function verdictTable(record: DecisionRecord): Markup {
  const rank = (g: VerdictGroup): number =>
    g.verdict.at === 'engine' ? ORDER.length : ORDER.indexOf(g.counts) + (g.own === undefined ? 0 : 0.5)
  const groups = [...groupVerdicts(record.verdicts)].sort((a, b) => rank(a) - rank(b))
  const rows = groups.map(({ verdict, says, own, counts }) => {
    const why = [own === undefined ? '' : `Its own verdict: ${own}`, verdict.soFar ?? '', ...verdict.because]
      .filter((w) => w !== '')
      .map(sentence)
    const must = verdict.mustTurnOut.map((words) => html`<br /><i>Must turn out:</i> ${words}`)
    return row(mark(counts), html`<b>${says}</b> ${why.join(' ')}${must}`, verdict.disposition === 'undetermined' ? '' : verdict.ground)
  })
  return ruled('Verdicts', ['', 'Verdict and reason', 'Stands on'], rows, 'verdicts')
}

const placesInWords = (book: CompiledBook, at: WorkLine['at']): string =>
  at.flatMap(({ part, positions }) => (positionsInWords(positions) === '' ? [] : [thingAt(book.book, part, positions)])).join('; ') ||
  'whole job'

/** The work in its order, stage by stage, with room to tick it off. */
export function workTable(book: CompiledBook, record: DecisionRecord): Markup {
  const stages = [...new Set(record.plan.workOrder.map((l) => l.stage))]
  const rows = stages.map((stage, i) => {
    const lines = record.plan.workOrder.filter((l) => l.stage === stage)
    const must = (line: WorkLine): readonly Markup[] =>
      line.provided.map((p) => html`<br /><i>Must turn out, ${thingAt(book.book, p.part, [p.at])}:</i> ${p.words}`)
    return html`<tbody>
      <tr class="stage">
        <th scope="rowgroup">${i + 1}</th>
        <th colspan="4" scope="rowgroup">${stage}</th>
      </tr>
      ${lines.map((line) => row('', html`${line.words}${must(line)}`, placesInWords(book, line.at), line.who, WRITE))}
    </tbody>`
  })
  return ruled('Order of work', ['No.', 'Work', 'Where', 'By', 'Done'], rows)
}

/** The limits that the verdicts were held against, and where each holds: what the machine shop works to. */
export function figureTable(book: CompiledBook, record: DecisionRecord): Markup {
  const held = new Map<string, { readonly limit: StandingLimit; readonly at: Set<string> }>()
  for (const verdict of record.verdicts) {
    for (const { limit } of verdict.steps.flatMap((step) => step.facts)) {
      if (limit === undefined) continue
      const key = `${limit.id} ${limit.typed} ${groundOf(book.book, limit)}`
      const entry = held.get(key) ?? { limit, at: new Set() }
      entry.at.add(verdict.at)
      held.set(key, entry)
    }
  }
  if (held.size === 0) return NOTHING
  const rows = [...held.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, { limit, at }]) => {
      const [part = ''] = limit.id.split(':')
      const what = labelOf(book.book, part, limit.id.replace(':', ':limit.'))
      return row(thingAt(book.book, part, [...at]), what, html`<span class="figure">${limit.typed}</span>`, groundOf(book.book, limit))
    })
  return ruled('Figures to work to', ['Where', 'Limit', 'Figure', 'Stands on'], rows)
}

/** What is ordered, for which positions, and what is held back until a choice is clear. */
export function partsTable(book: CompiledBook, record: DecisionRecord): Markup {
  const lines = record.plan.partsList
  if (lines.length === 0) return NOTHING
  const rows = lines.map((line) => {
    const hold = line.hold === undefined ? '' : html` <b>Hold until this is clear: ${line.hold}.</b>`
    return row(line.quantity, html`${line.item}${hold}`, forInWords(book, line.for), WRITE)
  })
  return ruled('Parts', ['No.', 'Part', 'For', 'Got'], rows)
}

function forInWords(book: CompiledBook, lines: readonly string[]): string {
  const at = new Map<string, string[]>()
  for (const line of lines) {
    const [part = line, position] = line.split('@')
    at.set(part, [...(at.get(part) ?? []), ...(position === undefined ? [] : [position])])
  }
  return [...at].map(([part, positions]) => thingAt(book.book, part, positions)).join('; ')
}

/** Numbers, not ticks: each check has room for the figure found, and for whoever found it. */
export function returnTable(book: CompiledBook, record: DecisionRecord): Markup {
  const lines = new Map<string, readonly [string, string, string]>()
  for (const { operation, words, at } of record.plan.returnChecks) {
    const line = [operation.replaceAll('-', ' '), words, placesInWords(book, at)] as const
    lines.set(line.join(), line)
  }
  if (lines.size === 0) return NOTHING
  const rows = [...lines.values()].map((line) => row(...line, WRITE, WRITE))
  return ruled('When the work comes back', ['Work', 'Check', 'Where', 'Found (figure)', 'By'], rows)
}
