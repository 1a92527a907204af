import { groupVerdicts, type VerdictGroup } from '../usecases/grouped.ts'
import type { DecisionRecord, RecordVerdict } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import type { Caution } from '../verdict/plan.ts'
import type { CounterSubject } from './subjects.ts'

/** What of a record answers one question at the counter. */
export interface Answer {
  readonly record: DecisionRecord
  /** The verdicts asked for, then those on parts that they opened. */
  readonly groups: readonly VerdictGroup[]
  /** Hazards of the rules that spoke and of the work that they order. */
  readonly hazards: readonly Caution[]
  /** The same of lesser cautions. */
  readonly cautions: readonly Caution[]
}

/** Picks the verdicts that a question is about; the rest of the job's stand in the record. */
export function answerTo(book: CompiledBook, subject: CounterSubject, record: DecisionRecord): Answer {
  const rank = (v: RecordVerdict): number => {
    const about = subject.about.indexOf(v.part)
    return v.part === subject.part
      ? subject.fields.length > 0
        ? 0
        : subject.about.length + 1
      : v.at === 'engine'
        ? about < 0
          ? -1
          : about + 1
        : subject.about.length + 2
  }
  const verdicts = record.verdicts.filter((v) => rank(v) >= 0).sort((a, b) => rank(a) - rank(b))
  const spoken = cautionsOf(book, record, verdicts)
  const said = record.plan.cautions.filter((c) => spoken.has(c.id))
  return {
    record,
    groups: groupVerdicts(verdicts),
    hazards: said.filter((c) => c.level === 'hazard'),
    cautions: said.filter((c) => c.level === 'caution'),
  }
}

function cautionsOf(book: CompiledBook, record: DecisionRecord, verdicts: readonly RecordVerdict[]): ReadonlySet<string> {
  const ids = new Set<string>()
  const parts = new Set(verdicts.map((v) => v.part))
  for (const verdict of verdicts) {
    for (const step of verdict.steps) {
      // One that can't be excluded speaks up too; the plan has already left out what has no bearing.
      if (step.outcome === 'met' || step.outcome === 'unknown') for (const id of book.rules.get(step.rule)?.rule.cautions ?? []) ids.add(id)
    }
  }
  for (const line of record.plan.workOrder) {
    if (line.at.some((at) => parts.has(at.part))) for (const id of book.book.operations[line.operation]?.cautions ?? []) ids.add(id)
  }
  return ids
}
