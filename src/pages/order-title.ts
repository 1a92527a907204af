import { html } from 'hono/html'
import type { DecisionRecord } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import { positionsInWords } from '../verdict/where.ts'
import { labelOf } from '../verdict/words.ts'
import { termInWords } from './facts-in-words.ts'
import { NOTHING, type Markup } from './markup.ts'

/** The title block of a work order: whose it is, what it is about, and by which record and edition it can be checked. */
export function titleBlock(book: CompiledBook, record: DecisionRecord, shop: string): Markup {
  const { body } = record
  const engine = book.book.engines.get(record.engine)
  const build = Object.entries(body.build).map(
    ([name, value]) =>
      [labelOf(book.book, 'job', name), typeof value === 'object' ? value.join(', ') : termInWords(book.book, 'job', name, value)] as const,
  )
  const known = body.facts.filter((f) => f.origin === 'engine sheet' && f.u === undefined)
  const facts = known.map(
    (f) =>
      [
        f.part === 'job' ? labelOf(book.book, 'job', f.fact) : `${labelOf(book.book, f.part, f.fact)}, ${where(f.at)}`,
        f.value.map((v) => (typeof v === 'number' ? String(v) : termInWords(book.book, f.part, f.fact, v))).join(', '),
      ] as const,
  )
  const cell = ([name, value]: readonly [string, string]): Markup =>
    html`<div>
      <dt>${name}</dt>
      <dd>${value}</dd>
    </div>`
  return html`<header class="title-block">
    <h1>Work order</h1>
    <dl>
      ${[
        ['Shop', shop],
        ['Job', record.job],
        ['Engine', record.engine],
        ['Findings as', record.stage],
        ['Received', timeInWords(record.receivedAt ?? '')],
        ['Ledger entry', String(record.ledger?.seq ?? '')],
      ].map(([name = '', value = '']) => cell([name, value]))}
      <div class="wide">
        <dt>Decision</dt>
        <dd>${record.id}</dd>
      </div>
      <div class="wide">
        <dt>Hash of the record</dt>
        <dd class="hash">${record.ledger?.hash}</dd>
      </div>
      <div class="wide">
        <dt>Edition of the rules</dt>
        <dd class="hash">${record.edition}</dd>
      </div>
    </dl>
    ${engine?.invented === true ? html`<p class="small">${engine.says}</p>` : NOTHING}
    <dl class="build">${[...build, ...facts].map(cell)}</dl>
  </header>`
}

/** "2031-04-02 10:15 +02:00": to the minute; the record keeps it whole. */
const timeInWords = (time: string): string =>
  time.replace(
    /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})[^Z+-]*(.*)$/,
    (_whole, day: string, minute: string, offset: string) => `${day} ${minute} ${offset === 'Z' ? 'UTC' : offset}`,
  )

const where = (at: readonly string[]): string => positionsInWords(at) || 'engine'
