import type { DecisionRecord } from '../usecases/record.ts'
import { positionsInWords } from '../verdict/where.ts'
import { partInWords } from '../usecases/grouped.ts'
import { boxed, hanging, PLAIN, plainly, wrap } from './layout.ts'
import { titleLine, type ReportOptions, type Section } from './section.ts'
import { cautionLines, partsLines, returnLines, toldLines, workLines } from './report-plan.ts'
import { summary, verdictLines } from './report-verdicts.ts'
import { askedLines } from './report-asked.ts'

const DEFAULTS: ReportOptions = { columns: 88, ink: PLAIN }

/**
 * A decision as an inspector reads it: hazards first, then what must be done and why, the order of work, what to measure next,
 * and last how to find the record again. Ends with a line break.
 */
export function report(record: DecisionRecord, options: Partial<ReportOptions> = {}): string {
  const with_: ReportOptions = { ...DEFAULTS, ...options }
  const sections: readonly (readonly [string | undefined, Section])[] = [
    [undefined, heading],
    [undefined, hazards],
    [undefined, verdictLines],
    ['Order of work', workLines],
    ['Parts', partsLines],
    ['Tell the shop', toldLines],
    ['When the work comes back', returnLines],
    ['Cautions', cautionLines],
    ['Measure next', askedLines],
    ['Nobody looked at', unseen],
    ['How the sheet was read', notes],
    ['Record', reference],
  ]
  const blocks = sections.flatMap(([title, section]) => {
    const lines = section(record, with_)
    if (lines.length === 0) return []
    return [title === undefined ? lines : [titleLine(title, with_), ...lines]]
  })
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`
}

const heading: Section = (record, { columns, ink }) => [
  ...wrap(`Job ${record.job}`, columns).map(ink.strong),
  ...wrap(`Engine ${record.engine}, findings as ${record.stage}.`, columns),
  ...(record.says === undefined ? [] : wrap(record.says, columns)),
  ...wrap(summary(record), columns),
]

const hazards: Section = (record, { columns, ink }) => {
  const words = record.plan.cautions.filter((c) => c.level === 'hazard').map((c) => c.words)
  return words.length === 0 ? [] : boxed(words.length === 1 ? 'HAZARD' : 'HAZARDS', words, columns, ink.hazard)
}

const unseen: Section = (record, { columns }) =>
  record.unseen.flatMap(({ part, at }) => {
    const where = positionsInWords(at)
    return hanging('  – ', where === '' ? partInWords(part) : `${partInWords(part)}: ${where}`, columns)
  })

/** Groups on the sheet, units assumed, doubt taken from the typed figure; what holds of several places is said once. */
const notes: Section = (record, { columns }) => {
  const groups = record.body.expansions.map((e) => `${partInWords(e.part)}, "${plainly(e.said)}": ${positionsInWords(e.positions)}`)
  const places = new Map<string, string[]>()
  for (const note of new Set(record.notes)) {
    const [, place = '', says = note] = /^(\/\S*): (.*)$/s.exec(note) ?? []
    places.set(says, [...(places.get(says) ?? []), ...(place === '' ? [] : [place])])
  }
  const said = [...places].map(([says, at]) => `${says}${at.length === 0 ? '' : ` (${at.join(', ')})`}`)
  return [...new Set([...groups, ...said])].flatMap((note) => hanging('  – ', note, columns))
}

const reference: Section = (record, { columns }) => {
  const { id, ledger, receivedAt } = record
  const entered =
    id === undefined || ledger === undefined
      ? [['decision', 'none: nothing was recorded']]
      : [
          ['decision', id],
          ['entry', `${ledger.seq}, received ${receivedAt ?? ''}`],
          ['hash', ledger.hash],
        ]
  return [...entered, ['edition', record.edition]].flatMap(([name = '', value = '']) => hanging(`  ${name.padEnd(9)} `, value, columns))
}
