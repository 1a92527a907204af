import { html } from 'hono/html'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import { positionsInWords } from '../verdict/where.ts'
import { labelOf } from '../verdict/words.ts'
import { termInWords } from './facts-in-words.ts'
import { NOTHING, type Markup } from './markup.ts'

const cell = (name: string, value: string): Markup =>
  html`<div>
    <dt>${name}</dt>
    <dd>${value}</dd>
  </div>`

/** The title block of a work order: whose it is, what it is about, and by which record and edition it can be checked. */
export function titleBlock(record: DecisionRecord, engine: Engine | undefined, shop: string): Markup {
  const { ledger } = record
  return html`<header class="title-block">
    <h1>Work order</h1>
    <dl>
      ${cell('Shop', shop)} ${cell('Job', record.job)} ${cell('Engine', record.engine)} ${cell('Findings as', record.stage)}
      ${cell('Received', timeInWords(record.receivedAt ?? ''))} ${cell('Ledger entry', String(ledger?.seq ?? ''))}
      <div class="wide">
        <dt>Decision</dt>
        <dd>${record.id}</dd>
      </div>
      <div class="wide">
        <dt>Hash of the record</dt>
        <dd class="hash">${ledger?.hash}</dd>
      </div>
      <div class="wide">
        <dt>Edition of the rules</dt>
        <dd class="hash">${record.edition}</dd>
      </div>
    </dl>
    ${engine?.invented === true ? html`<p class="small">${engine.says}</p>` : NOTHING}
  </header>`
}

/** What the machine shop is told of the engine: what will be fitted, and what the engine's sheet says of metal, casting and special valves. */
export function buildBlock(book: CompiledBook, record: DecisionRecord): Markup {
  const { build, facts } = record.body
  const chosen = Object.entries(build).map(([name, value]) =>
    cell(labelOf(book.book, 'job', name), typeof value === 'object' ? value.join(', ') : termInWords(book.book, 'job', name, value)),
  )
  const known = facts.filter((f) => f.origin === 'engine sheet' && f.u === undefined)
  const sheet = known.map(({ part, fact, at, value }) => {
    const label = labelOf(book.book, part, fact)
    const words = value.map((v) => (typeof v === 'number' ? String(v) : termInWords(book.book, part, fact, v))).join(', ')
    return cell(part === 'job' ? label : `${label}, ${where(at)}`, words)
  })
  if (chosen.length + sheet.length === 0) return NOTHING
  return html`<section class="title-block">
    <h2>Engine and build</h2>
    <dl>${[...chosen, ...sheet]}</dl>
  </section>`
}

/** "2031-04-02 10:15 +02:00": to the minute; the record keeps it whole. */
const timeInWords = (time: string): string =>
  time.replace(
    /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})[^Z+-]*(.*)$/,
    (_whole, day: string, minute: string, offset: string) => `${day} ${minute} ${offset === 'Z' ? 'UTC' : offset}`,
  )

const where = (at: readonly string[]): string => positionsInWords(at) || 'engine'
