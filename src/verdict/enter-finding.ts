import { fault, type Fault } from '../quantity/fault.ts'
import type { PartClass } from '../rulebook/book.ts'
import type { EnteredFinding, EnteredValue } from './entered.ts'
import type { Finding } from './sheet.ts'

/** The property under which a visual procedure is entered: {part, at, property: "looked-over", value: "bench look"}. */
export const LOOKED_OVER = 'looked-over'

/** Commitments that stand for people's names and notes in the hashed body. */
export interface Commitments {
  name(text: string): string
  note(text: string): string
}

/** Enters one finding; the same thing said twice is one, two different values are a fault. */
export function enter(
  entered: Map<string, { finding: EnteredFinding; where: string }>,
  finding: EnteredFinding,
  where: string,
  faults: Fault[],
): void {
  const key = `${finding.part}:${finding.property}@${finding.at}`
  const before = entered.get(key)
  if (before === undefined) {
    entered.set(key, { finding, where })
    return
  }
  if (sameValue(before.finding.value, finding.value)) {
    // The same thing said twice is one observation; which of the two stands must not hang on their order.
    if (JSON.stringify(finding) < JSON.stringify(before.finding)) entered.set(key, { finding, where: before.where })
    return
  }
  faults.push(
    fault(
      'values-disagree',
      where,
      `Two values for ${finding.property} at ${finding.at}, and they disagree (the other is at ${before.where}).`,
      'Send several readings of one property as a list, or take the wrong one out.',
      typedOf(finding.value),
    ),
  )
}

/** Enters what a named look answers, for everything that was not named singly. */
export function enterLook(
  look: { finding: Finding; where: string; part: PartClass; positions: readonly string[] },
  entered: Map<string, { finding: EnteredFinding; where: string }>,
  commitments: Commitments,
  faults: Fault[],
): void {
  const { finding, where, part, positions } = look
  const said = String(finding.value).trim().toLowerCase()
  const procedures = Object.entries(part.file.procedures)
  const found = procedures.find(([id, p]) => id.toLowerCase() === said || p.words.some((w) => w.toLowerCase() === said))
  if (found === undefined) {
    faults.push(
      fault(
        'procedure-unknown',
        `${where}/value`,
        `No way of looking over a ${part.file.one} is called that.`,
        procedures.length === 0
          ? 'This part has none; enter its findings singly.'
          : `Known are ${procedures.map(([id]) => `"${id}"`).join(', ')}.`,
        said,
      ),
    )
    return
  }
  const [procedure, { answers }] = found
  for (const at of positions) {
    for (const [property, answer] of Object.entries(answers)) {
      // What was named singly stands: "looked over, nothing else found".
      const key = `${part.id}:${property}@${at}`
      const before = entered.get(key)?.finding
      if (before !== undefined && before.procedure === undefined) continue
      const value: EnteredValue = { form: 'term', term: answer, typed: procedure }
      const look: EnteredFinding = { part: part.id, at, property, value, procedure, ...whoAndWhen(finding, commitments) }
      // Looked over twice is one look; which of the two stands must not hang on their order.
      if (before === undefined || JSON.stringify(look) < JSON.stringify(before)) entered.set(key, { finding: look, where })
    }
  }
}

/** Who saw it, with what and when; people and notes as commitments. */
export function whoAndWhen(finding: Finding, commitments: Commitments): Pick<EnteredFinding, 'instrument' | 'by' | 'observedAt' | 'note'> {
  return {
    ...(finding.instrument === undefined ? {} : { instrument: finding.instrument }),
    ...(finding.by === undefined ? {} : { by: commitments.name(finding.by) }),
    ...(finding.observedAt === undefined ? {} : { observedAt: finding.observedAt }),
    ...(finding.note === undefined ? {} : { note: commitments.note(finding.note) }),
  }
}

/** The same value, as it was read. */
export function sameValue(a: EnteredValue, b: EnteredValue): boolean {
  if (a.form === 'quantity' && b.form === 'quantity') {
    return (
      a.readings.length === b.readings.length && a.readings.every((r, i) => r.value === b.readings[i]?.value && r.u === b.readings[i]?.u)
    )
  }
  return a.form === 'term' && b.form === 'term' ? a.term === b.term : a.form === b.form
}

const typedOf = (value: EnteredValue): string =>
  value.form === 'quantity' ? value.readings.map((r) => r.typed).join(', ') : value.form === 'term' ? value.typed : value.form
