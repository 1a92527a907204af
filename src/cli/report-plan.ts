import type { WorkLine } from '../verdict/plan.ts'
import { capital, partInWords } from '../usecases/grouped.ts'
import { positionsInWords } from '../verdict/where.ts'
import { hanging } from './layout.ts'
import type { Section } from './section.ts'

/** "valve 2 exhaust; rocker stud 3 exhaust"; '' for work on the whole job. */
function placesInWords(at: WorkLine['at']): string {
  return at
    .flatMap(({ part, positions }) => {
      const where = positionsInWords(positions)
      return where === '' ? [] : [`${partInWords(part)} ${where}`]
    })
    .join('; ')
}

/** "valve 3 exhaust: the tip cleans up …"; without a place where the whole job is meant. */
function placed({ part, at, words }: WorkLine['provided'][number]): string {
  return `${[partInWords(part), positionsInWords([at])].filter((w) => w !== '').join(' ')}: ${words}`
}

/** The work in working order: stages numbered, who does it, where, and what must turn out. */
export const workLines: Section = (record, { columns, ink }) => {
  const stages = [...new Set(record.plan.workOrder.map((l) => l.stage))]
  return stages.flatMap((stage, i) => [
    ...hanging(`${String(i + 1).padStart(3)}. `, stage, columns, ink.strong),
    ...record.plan.workOrder
      .filter((l) => l.stage === stage)
      .flatMap((l) => {
        const where = placesInWords(l.at)
        return [
          ...hanging('     – ', `${where === '' ? '' : `${where}: `}${l.words} (${l.who})`, columns),
          ...l.because.flatMap((b) => hanging('       why: ', placed(b), columns)),
          ...l.provided.flatMap((p) => hanging('       must turn out: ', placed(p), columns)),
        ]
      }),
  ])
}

/** Parts to order, with what each line is for; a line on hold says what it waits for. */
export const partsLines: Section = (record, { columns }) =>
  record.plan.partsList.flatMap((line) => {
    const hold = line.hold === undefined ? '' : ` HOLD until this is clear: ${line.hold}.`
    return hanging(`${String(line.quantity).padStart(5)}  `, `${line.item} — ${forInWords(line.for)}.${hold}`, columns)
  })

/** "valve@3E" and "valve@5E" as "valve 3 and 5 exhaust"; a card or a set as it stands. */
function forInWords(lines: readonly string[]): string {
  const at = new Map<string, string[]>()
  for (const line of lines) {
    const [part = line, position] = line.split('@')
    at.set(part, [...(at.get(part) ?? []), ...(position === undefined ? [] : [position])])
  }
  return [...at]
    .map(([part, positions]) =>
      positions.length === 0
        ? part.startsWith('card ')
          ? part
          : partInWords(part)
        : `${partInWords(part)} ${positionsInWords(positions)}`.trim(),
    )
    .join('; ')
}

export const toldLines: Section = (record, { columns }) => record.plan.told.flatMap((words) => hanging('  – ', words, columns))

/** What is checked when the work comes back, figures and not ticks. */
export const returnLines: Section = (record, { columns }) => {
  const lines = record.plan.returnChecks.map(({ operation, at, words }) => {
    const where = placesInWords(at)
    return `${[capital(partInWords(operation)), ...(where === '' ? [] : [where])].join(', ')}: ${words}`
  })
  return [...new Set(lines)].flatMap((words) => hanging('  [ ] ', words, columns))
}

export const cautionLines: Section = (record, { columns }) =>
  record.plan.cautions.filter((c) => c.level === 'caution').flatMap((c) => hanging('  – ', c.words, columns))
