import { html } from 'hono/html'
import { decidingSteps } from '../usecases/grouped.ts'
import type { DecisionRecord, RecordVerdict } from '../usecases/record.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import type { Step } from '../verdict/verdict.ts'
import { factLine, type FactLine } from './facts-in-words.ts'
import { NOTHING, type Markup } from './markup.ts'
import { strip } from './strip.ts'

const KIND: Readonly<Record<Step['kind'], string>> = {
  condemns: 'condemns the part',
  restores: 'calls for work',
  check: 'is a required check',
  advises: 'advises',
  promise: 'had to turn out',
}
const OUTCOME: Readonly<Record<Step['outcome'], string>> = {
  met: 'met',
  'not met': 'not met',
  unknown: 'not known',
  'does not apply': 'does not apply',
}

/**
 * How a verdict was worked out, like the lines of a hand calculation: a rule a step, its conditions under it, its sources in the margin.
 * Where a part is replaced, rules that still wait for facts settle nothing and are only counted.
 */
export function chain(book: CompiledBook, record: DecisionRecord, verdict: RecordVerdict): Markup {
  const decided = verdict.disposition === 'replace'
  const shown = verdict.steps.filter((s) => !(decided && s.outcome === 'unknown'))
  const waiting = verdict.steps.length - shown.length
  const deciding = decidingSteps(verdict)
  const order = (s: Step): number =>
    deciding.includes(s) ? 0 : s.outcome === 'met' ? 1 : s.near === true ? 2 : s.outcome === 'unknown' ? 3 : 4
  const steps = [...shown].sort((a, b) => order(a) - order(b))
  return html`<details class="chain">
    <summary>How this was worked out</summary>
    <ol class="calc">
      ${steps.map((step) => stepLines(book, record, verdict, step))}
    </ol>
    ${waiting === 0 ? NOTHING : html`<p class="small">${waiting} more rule${waiting === 1 ? '' : 's'} wait${waiting === 1 ? 's' : ''} for facts; none of them could change this verdict.</p>`}
  </details>`
}

function stepLines(book: CompiledBook, record: DecisionRecord, verdict: RecordVerdict, step: Step): Markup {
  const rule = (book.rules.get(step.rule) ?? book.promises.get(step.rule))?.rule
  const deciding = decidingSteps(verdict).includes(step)
  const sources = step.sources.map((id) => ({ id, source: book.book.sources.get(id) }))
  return html`<li class="step">
    <div class="worked">
      <p class="rule"><b>${OUTCOME[step.outcome]}</b> ${rule?.words ?? step.rule}</p>
      <p class="small"><code>${step.rule}</code> ${KIND[step.kind]}.${step.near === true ? ' Not met, but close.' : ''}</p>
      ${step.facts.map((leaf) => leafLines(factLine(book.book, record, verdict.part, verdict.at, leaf), leaf, deciding))}
    </div>
    <ul class="margin" aria-label="Sources">
      ${sources.map(({ id, source }) => html`<li>${source?.title ?? id}${source === undefined ? '' : html` <i>(${source.kind})</i>`}</li>`)}
    </ul>
  </li>`
}

function leafLines(line: FactLine, leaf: Step['facts'][number], decided: boolean): Markup {
  const readings = (leaf.value ?? []).flatMap((value, i) => (typeof value === 'number' ? [{ value, u: leaf.u?.[i] ?? 0 }] : []))
  const drawn = leaf.limit !== undefined && readings.length > 0
  return html`<div class="line${decided && leaf.answer === 'met' ? ' decided' : ''}">
    <p>
      ${line.label}: <span class="found">${line.found}</span> <span class="op">(${line.operator} ${line.against}?)</span>
      <span class="answer-said">${line.answer}</span>
    </p>
    ${line.arithmetic === undefined ? NOTHING : html`<p class="small">${line.arithmetic}</p>`}
    ${drawn ? strip(readings, leaf.limit?.value ?? 0, `${line.label}: ${line.found}; ${line.operator} ${line.against}: ${line.answer}`) : NOTHING}
    ${line.ground === undefined ? NOTHING : html`<p class="small">The limit, ${line.limit ?? ''}: ${line.ground}${line.source === undefined ? '' : `, ${line.source}`}${leaf.limit?.from === 'trade' ? '' : `, as “${leaf.limit?.typed ?? ''}”`}.${line.probability === undefined ? '' : ` Chance that the true value is on that side of it: ${line.probability}, which decides nothing.`}</p>`}
  </div>`
}
