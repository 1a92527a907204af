import { html } from 'hono/html'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import { hazardBox, unseenLines } from './answer-view.ts'
import { findingsTable } from './findings-view.ts'
import { NOTHING, type Markup } from './markup.ts'
import { figureTable, partsTable, returnTable, verdictTable, workTable } from './order-tables.ts'
import { buildBlock, titleBlock } from './order-title.ts'

/** Enough of the hash to tell loose sheets apart; the title block has all of it. */
const HASH_SHOWN = 12

/**
 * The work order of a recorded decision, as it leaves the building: title block, hazards, what every part is to get, the work in
 * its order, the figures to work to, the parts, and what is checked when it comes back, with room to write and to sign. The job and
 * the hash stand at the head of every page: sheets get separated.
 */
export function orderView(book: CompiledBook, record: DecisionRecord, engine: Engine | undefined, shop: string): Markup {
  return html`<article class="order">
    <table class="running" role="presentation">
      <thead>
        <tr>
          <td>
            <span>${record.job} · ${record.engine} · decision ${record.ledger?.seq} · ${record.ledger?.hash.slice(0, HASH_SHOWN)}</span>
          </td>
        </tr>
      </thead>
      <tbody>
        <tr>
          <td>${sections(book, record, engine, shop)}</td>
        </tr>
      </tbody>
      <tfoot>
        <tr>
          <td></td>
        </tr>
      </tfoot>
    </table>
  </article>`
}

const sections = (book: CompiledBook, record: DecisionRecord, engine: Engine | undefined, shop: string): readonly Markup[] => [
  titleBlock(record, engine, shop),
  hazardBox(record.plan.cautions.filter((c) => c.level === 'hazard')),
  buildBlock(book, record),
  verdictTable(record),
  workTable(book, record),
  figureTable(book, record),
  partsTable(book, record),
  list('Tell the shop', record.plan.told),
  returnTable(book, record),
  findingsTable(book.book, record, 'Findings as entered', ['finding']),
  list('Nobody looked at', unseenLines(book, record)),
  list(
    'Take care',
    record.plan.cautions.flatMap((c) => (c.level === 'caution' ? [c.words] : [])),
  ),
  signatures(),
]

const list = (title: string, lines: readonly string[]): Markup =>
  lines.length === 0
    ? NOTHING
    : html`<section>
        <h2>${title}</h2>
        <ul>
          ${lines.map((l) => html`<li>${l}</li>`)}
        </ul>
      </section>`

const signatures = (): Markup =>
  html`<section class="sign">
    <h2>Signed</h2>
    <div>
      ${['Ordered by', 'Machine shop, received', 'Checked on return'].map((who) => html`<p><span>${who}</span><span>Date</span></p>`)}
    </div>
  </section>`
