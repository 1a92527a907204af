import type { Rulebook } from '../rulebook/book.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import { labelOf } from '../verdict/words.ts'
import { termInWords, thingAt } from './facts-in-words.ts'
import { NOTHING, type Markup } from './markup.ts'
import { row, ruled } from './table.ts'

type BodyFact = DecisionRecord['body']['facts'][number]

/**
 * What was entered, as typed, and with what; what a look by a procedure answered stands in one line.
 * @param origins 'finding', and 'build' where the choices of the job are to be listed too
 */
export function findingsTable(book: Rulebook, record: DecisionRecord, title: string, origins: readonly BodyFact['origin'][]): Markup {
  const { facts } = record.body
  const found = facts.filter((f) => origins.includes(f.origin))
  const looks = new Map<string, BodyFact>()
  for (const f of facts) if (f.origin === 'looked over') looks.set(`${f.part} ${f.procedure ?? ''} ${f.at.join()}`, f)
  if (found.length + looks.size === 0) return NOTHING
  const rows = [
    ...found.map((f) => row(thingAt(book, f.part, f.at), labelOf(book, f.part, f.fact), foundIn(book, f), instrumentOf(book, f))),
    ...[...looks.values()].map((f) => row(thingAt(book, f.part, f.at), f.procedure ?? '', 'looked over, nothing else found', '')),
  ]
  return ruled(title, ['Where', 'What', 'Found', 'With'], rows)
}

const foundIn = (book: Rulebook, f: BodyFact): string =>
  f.u === undefined
    ? f.value.map((v) => (typeof v === 'number' ? String(v) : termInWords(book, f.part, f.fact, v))).join(', ')
    : (f.typed ?? []).join(', ')

const instrumentOf = (book: Rulebook, f: BodyFact): string =>
  f.instrument === undefined ? '' : (book.instruments.get(f.instrument)?.label ?? f.instrument)
