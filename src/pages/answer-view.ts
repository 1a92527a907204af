import { html } from 'hono/html'
import { askedOf, type AskedAt, type VerdictGroup } from '../usecases/grouped.ts'
import type { DecisionRecord } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import type { Caution } from '../verdict/plan.ts'
import { positionsInWords } from '../verdict/where.ts'
import { labelOf, nameOf } from '../verdict/words.ts'
import type { Answer } from './answer.ts'
import { chain } from './chain-view.ts'
import { thingAt } from './facts-in-words.ts'
import { findingsTable } from './findings-view.ts'
import { mark } from './mark.ts'
import { NOTHING, sentence, type Markup } from './markup.ts'

/** The answer: hazards boxed on top, each verdict as a sentence with its reason, what to measure next, and whether it was recorded. */
export function answerView(book: CompiledBook, answer: Answer, mayEnter: boolean): Markup {
  const { record, groups } = answer
  const open = questionsOf(answer)
  const next = open.filter((q) => !FIGURES.has(q.reason))
  const figures = open.filter((q) => FIGURES.has(q.reason))
  return html`<section class="answer" aria-labelledby="answer">
    <h2 id="answer" class="unseen">The answer</h2>
    ${hazardBox(answer.hazards)}
    ${groups.length === 0 ? html`<p class="lead">Nothing that was entered speaks about this yet.</p>` : groups.map((group, i) => verdictBlock(book, record, group, i === 0))}
    ${measureNext(book, next)}
    ${
      figures.length === 0
        ? NOTHING
        : html`<section class="next">
            <h3>Figures to settle</h3>
            <ul>
              ${figures.map((q) => html`<li><b>${thingAt(book.book, q.part, q.positions)}:</b> ${labelOf(book.book, q.part, q.fact)}: ${q.why}.</li>`)}
            </ul>
          </section>`
    }
    ${
      answer.cautions.length === 0
        ? NOTHING
        : html`<section>
            <h3>Take care</h3>
            <ul>
              ${answer.cautions.map((c) => html`<li>${c.words}</li>`)}
            </ul>
          </section>`
    }
    ${findings(book, record)}
    ${
      record.notes.length === 0
        ? NOTHING
        : html`<details class="notes">
            <summary>How the entries were read</summary>
            <ul>
              ${record.notes.map((n) => html`<li>${n.replace(/^\/[^:]*: /, '')}</li>`)}
            </ul>
          </details>`
    }
    ${recorded(record, mayEnter)}
  </section>`
}

/** Hazards in a boxed note, as on a drawing. */
export const hazardBox = (hazards: readonly Caution[]): Markup =>
  hazards.length === 0
    ? NOTHING
    : html`<section class="hazards" aria-labelledby="hazards">
        <h2 id="hazards">${hazards.length === 1 ? 'Hazard' : 'Hazards'}</h2>
        <ul>
          ${hazards.map((c) => html`<li>${c.words}</li>`)}
        </ul>
      </section>`

function verdictBlock(book: CompiledBook, record: DecisionRecord, group: VerdictGroup, first: boolean): Markup {
  const { verdict } = group
  return html`<article class="verdict ${group.counts}${first ? ' first' : ''}">
    ${mark(group.counts)}
    <div>
      <p class="says">${group.says}</p>
      ${group.own === undefined ? NOTHING : html`<p>${sentence(verdict.setSays ?? '')} ${group.own}</p>`}
      ${verdict.soFar === undefined ? NOTHING : html`<p>${verdict.soFar}</p>`}
      ${verdict.because.map((why) => html`<p>${sentence(why)}</p>`)} ${pending(book, group)}
      ${
        verdict.mustTurnOut.length === 0
          ? NOTHING
          : html`<p class="must"><b>Must turn out:</b></p>
              <ul>
                ${verdict.mustTurnOut.map((words) => html`<li>${words}</li>`)}
              </ul>`
      }
      ${
        verdict.advice.length === 0
          ? NOTHING
          : html`<ul>
              ${verdict.advice.map((words) => html`<li>${sentence(words)}</li>`)}
            </ul>`
      }
      ${verdict.disposition === 'undetermined' ? NOTHING : html`<p class="small">Stands on: ${verdict.ground}.</p>`}
      ${(verdict.disagreement ?? []).map((d) => html`<p class="small"><code>${d.rule}</code>: the first interpreter says ${d.first}, the second ${d.second}.</p>`)}
      ${chain(book, record, verdict)}
    </div>
  </article>`
}

/** Work that a finding calls for already, while other checks still keep the part from being called. */
function pending(book: CompiledBook, { verdict }: VerdictGroup): Markup {
  if (verdict.disposition !== 'undetermined') return NOTHING
  const called = verdict.steps
    .filter((s) => s.kind === 'restores' && s.outcome === 'met')
    .flatMap((s) => book.rules.get(s.rule)?.rule ?? [])
  return called.length === 0
    ? NOTHING
    : html`<p class="must"><b>If the rest is in order:</b></p>
        <ul>
          ${called.map((rule) => html`<li>${rule.words}</li>`)}
        </ul>`
}

/** Open questions of the verdicts shown, in the plan's order. */
function questionsOf({ record, groups }: Answer): readonly AskedAt[] {
  const shown = new Set(groups.map((g) => g.verdict.part))
  return askedOf({ ...record, verdicts: record.verdicts.filter((v) => shown.has(v.part)) })
}

/** A better measurement does not settle these: it is the limit that is wanting. */
const FIGURES: ReadonlySet<AskedAt['reason']> = new Set(['limit not adopted', 'no limit'])

function measureNext(book: CompiledBook, asked: readonly AskedAt[]): Markup {
  if (asked.length === 0) return NOTHING
  const things = new Set(asked.map((q) => thingAt(book.book, q.part, q.positions)))
  const [only] = things.size === 1 ? things : []
  return html`<section class="next">
    <h3>Measure next${only === undefined ? '' : `: ${only}`}</h3>
    <ol>
      ${asked.map((q) => question(book, q, only === undefined))}
    </ol>
  </section>`
}

function question(book: CompiledBook, q: AskedAt, where: boolean): Markup {
  const with_ = q.with.length === 0 ? NOTHING : html`<span class="with">with ${q.with.join(' or ')}</span>`
  const why = q.why === book.book.phrases.why['missing'] ? NOTHING : html`<p class="small">Open: ${q.why}.</p>`
  return html`<li>
    <p>${where ? html`<b>${thingAt(book.book, q.part, q.positions)}:</b> ` : ''}${q.asks} ${with_}</p>
    ${q.how === undefined ? NOTHING : html`<p class="small">${q.how}</p>`}${why}
  </li>`
}

function recorded(record: DecisionRecord, mayEnter: boolean): Markup {
  if (record.recorded)
    return html`<p class="record">
      Entered as number ${record.ledger?.seq} of the ledger. <a href="/decisions/${record.id ?? ''}">The work order, to print</a>
    </p>`
  return html`<p class="record">
    ${record.says ?? ''}${mayEnter ? html` <button form="sheet" name="intent" value="enter">Enter it in the ledger</button>` : ''}
  </p>`
}

/** What was entered, for the paper: on the screen it still stands in the form. */
const findings = (book: CompiledBook, record: DecisionRecord): Markup =>
  html`<div class="on-paper">${findingsTable(book.book, record, 'What was entered', ['build', 'finding'])}</div>`

/** "nobody looked at": what the engine has and no finding speaks of. */
export const unseenLines = (book: CompiledBook, record: DecisionRecord): readonly string[] =>
  record.unseen.map(({ part, at }) => {
    const where = positionsInWords(at)
    return where === '' ? nameOf(book.book, part) : `${book.book.parts.get(part)?.file.many ?? part}: ${where}`
  })
