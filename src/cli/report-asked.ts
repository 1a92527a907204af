import { askedOf, partInWords } from '../usecases/grouped.ts'
import { positionsInWords } from '../verdict/where.ts'
import { hanging } from './layout.ts'
import type { Section } from './section.ts'

/** As many as somebody can carry to the bench at once. */
const MOST = 12

/** What to measure next: where, the question, with what, and why it is open where that is not plain. */
export const askedLines: Section = (record, { columns, ink }) => {
  const asked = askedOf(record)
  const lines = asked.slice(0, MOST).flatMap((q, i) => {
    const where = [partInWords(q.part), positionsInWords(q.positions)].filter((w) => w !== '').join(' ')
    const mark = `${String(i + 1).padStart(3)}. `
    const how = [
      ...(q.with.length === 0 ? [] : [`With: ${q.with.join(', or ')}.`]),
      ...(q.how === undefined ? [] : [q.how]),
      ...(q.why === 'not known yet' ? [] : [`Open because: ${q.why}.`]),
    ]
    return [...hanging(mark, `${where}: ${q.asks}`, columns), ...hanging('     ', how.join(' '), columns, ink.faint)]
  })
  const rest = asked.length - MOST
  return rest > 0 ? [...lines, `     and ${rest} more; --json lists them all.`] : lines
}
