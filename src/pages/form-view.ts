import { html } from 'hono/html'
import type { Rulebook } from '../rulebook/book.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import { placesOf, type Field, type FieldSet, type Option } from './fields.ts'
import { addressOf } from './layout.ts'
import { NOTHING, type Markup } from './markup.ts'
import { inputs, type FieldFault, type Filled } from './read-form.ts'
import type { CounterSubject } from './subjects.ts'

export interface FormOptions {
  readonly book: Rulebook
  readonly subject: CounterSubject
  readonly engine: Engine
  /** The engines on offer, this one among them. */
  readonly engines: readonly Engine[]
  readonly fields: FieldSet
  readonly filled: Filled
  readonly faults: readonly FieldFault[]
  /** With a shop's key the answer can be entered in its ledger. */
  readonly mayEnter: boolean
}

/** The form of one question: what is asked first, what is seldom needed folded away, and what was typed still there. */
export function formView(options: FormOptions): Markup {
  const { subject, engine, engines, fields, filled, mayEnter } = options
  const touched = fields.more.some(
    (f) => options.faults.some((x) => x.field === f.id) || names(f).some((n) => (filled.get(n) ?? '') !== ''),
  )
  return html`<form id="sheet" class="sheet-form" method="post" action="${addressOf(subject, engine.id)}#answer">
    ${faultSummary(options)}
    <fieldset class="where">
      <legend>Engine and place</legend>
      <p class="engines">
        ${engines.map((e) => (e === engine ? html`<b>${e.id}</b> ` : html`<a href="${addressOf(subject, e.id)}">${e.id}</a> `))}
      </p>
      <p class="small">${engine.says}</p>
      ${position(options)}
    </fieldset>
    ${fields.first.map((field) => fieldView(field, options))} ${look(options)}
    ${
      fields.more.length === 0
        ? NOTHING
        : html`<details class="more" ${touched ? html` open` : ''}>
            <summary>More that can be entered</summary>
            ${fields.more.map((field) => fieldView(field, options))}
          </details>`
    }
    <div class="row names">
      ${textInput('job', mayEnter ? 'Job' : 'Job, if there is one', options)} ${textInput('by', 'Seen by', options)}
    </div>
    <div class="row buttons">
      <button name="intent" value="judge" class="main">Judge it</button
      >${mayEnter ? html`<button name="intent" value="enter">Enter it in the ledger</button>` : NOTHING}
    </div>
  </form>`
}

const names = (field: Field): readonly string[] => [
  ...(field.input.kind === 'figure' ? field.input.readings.map((_, i) => inputs.value(field, i)) : [inputs.value(field)]),
  inputs.notMeasured(field),
]

/** What is wrong, above the form: each fault leads to its field, where it is said in full. */
function faultSummary({ faults, fields }: FormOptions): Markup {
  if (faults.length === 0) return NOTHING
  const said = faults.length === 1 ? 'One thing needs mending' : `${faults.length} things need mending`
  const labels = new Map([...fields.first, ...fields.more].map((f) => [f.id, f.label]))
  const whole = faults.filter((f) => f.field === '')
  const placed = faults.filter((f) => f.field !== '')
  return html`<div class="faults" role="alert">
    <p><b>${said}; nothing was judged.</b></p>
    ${whole.map(faultLine)}
    ${
      placed.length === 0
        ? NOTHING
        : html`<ul>
            ${placed.map((f) => html`<li><a href="#${f.field}-fault">${labels.get(f.field) ?? OWN_INPUTS[f.field] ?? f.field}</a></li>`)}
          </ul>`
    }
  </div>`
}

const OWN_INPUTS: Readonly<Record<string, string>> = { at: 'where on the engine', job: 'job', by: 'seen by', looked: 'looked over' }

const faultLine = ({ fault }: FieldFault): Markup =>
  html`<p class="fault">${fault.value === undefined ? '' : html`<q>${fault.value}</q>: `}${fault.says} ${fault.mend}</p>`

const faultsAt = (id: string, { faults }: FormOptions): readonly FieldFault[] => faults.filter((f) => f.field === id)
const faultLines = (id: string, options: FormOptions): Markup => {
  const own = faultsAt(id, options)
  return own.length === 0 ? NOTHING : html`<div id="${id}-fault">${own.map(faultLine)}</div>`
}
const marked = (id: string, options: FormOptions): Markup =>
  faultsAt(id, options).length === 0 ? NOTHING : html` aria-invalid="true" aria-describedby="${id}-fault"`

function position(options: FormOptions): Markup {
  const { book, engine, subject, filled } = options
  const places = placesOf(book, engine, subject.part)
  if (places.length === 0) return NOTHING
  const at = filled.get('at') ?? ''
  return html`<div class="field">
    <label for="at">Where on the engine?</label>
    <select id="at" name="at" ${marked('at', options)}>
      <option value="">${subject.fields.length === 0 ? 'the whole engine' : 'choose'}</option>
      ${places.map(({ words, options: spots }) => html`<optgroup label="${words}">${spots.map((o) => option(o, at))}</optgroup>`)}
    </select>
    ${faultLines('at', options)}
  </div>`
}

const option = ({ value, says }: Option, chosen: string): Markup =>
  html`<option value="${value}" ${value === chosen ? html` selected` : ''}>${says}</option>`

function fieldView(field: Field, options: FormOptions): Markup {
  const { input } = field
  const own = faultsAt(field.id, options).length > 0 ? ' faulty' : ''
  const how = field.how === undefined ? NOTHING : html`<p class="small">${field.how}</p>`
  if (input.kind === 'yes-no') {
    return html`<fieldset class="field${own}">
      <legend>${field.ask}</legend>
      ${how}
      <p class="choices">
        ${radio(field, 'yes', 'yes', options)}${radio(field, 'no', 'no', options)}${radio(field, 'not measured', 'not looked at', options)}${radio(field, '', 'leave out', options)}
      </p>
      ${faultLines(field.id, options)}
    </fieldset>`
  }
  if (input.kind === 'choice') {
    const chosen = options.filled.get(field.id) ?? ''
    return html`<div class="field${own}">
      <label for="${field.id}">${field.ask}</label>${how}
      <select id="${field.id}" name="${field.id}" ${marked(field.id, options)}>
        ${[{ value: '', says: 'leave out' }, ...input.options, { value: 'not measured', says: 'not looked at' }].map((o) => option(o, chosen))}</select
      >${faultLines(field.id, options)}
    </div>`
  }
  const ticked = options.filled.has(inputs.notMeasured(field))
  return html`<fieldset class="field${own}">
    <legend>${field.ask}</legend>
    ${how}
    <div class="row figures">
      ${input.readings.map((station, i) => figureInput(field, i, station, options))}
      ${
        input.instruments.length === 0
          ? NOTHING
          : html`<label
              >with
              <select name="${inputs.instrument(field)}">
                ${[{ value: '', says: 'no instrument named' }, ...input.instruments].map((o) => option(o, options.filled.get(inputs.instrument(field)) ?? ''))}
              </select></label
            >`
      }
      <label class="tick"
        ><input type="checkbox" name="${inputs.notMeasured(field)}" value="1" ${ticked ? html` checked` : ''} /> not measured</label
      >
    </div>
    <p class="small hint">Likely ${input.hint}.</p>
    ${faultLines(field.id, options)}
  </fieldset>`
}

function figureInput(field: Field, i: number, station: string, options: FormOptions): Markup {
  const name = inputs.value(field, i)
  const value = options.filled.get(name) ?? ''
  const input = html`<input
    class="figure"
    name="${name}"
    value="${value}"
    autocomplete="off"
    spellcheck="false"
    maxlength="60"
    placeholder="figure and unit"
    aria-label="${field.label}${station === '' ? '' : `, ${station}`}"
    ${marked(field.id, options)}
  />`
  return station === '' ? input : html`<label class="station"><span>${station}</span>${input}</label>`
}

function radio(field: Field, value: string, says: string, options: FormOptions): Markup {
  const chosen = options.filled.get(field.id) ?? ''
  return html`<label class="tick"
    ><input type="radio" name="${field.id}" value="${value}" ${chosen === value ? html` checked` : ''} /> ${says}</label
  >`
}

/** "Looked over, nothing else found": the part's own procedures, in their words. */
function look(options: FormOptions): Markup {
  const procedures = Object.entries(options.book.parts.get(options.subject.part)?.file.procedures ?? {})
  if (procedures.length === 0) return NOTHING
  const looked = options.filled.get('looked') ?? ''
  return html`<fieldset class="field">
    <legend>Looked over, and nothing else found?</legend>
    ${procedures.map(([id, { says }]) => html`<label class="tick"><input type="checkbox" name="looked" value="${id}" ${looked === id ? html` checked` : ''} /> ${id}: ${says}</label>`)}${faultLines('looked', options)}
  </fieldset>`
}

const textInput = (name: string, label: string, options: FormOptions): Markup =>
  html`<div class="field">
    <label for="${name}">${label}</label
    ><input
      id="${name}"
      name="${name}"
      value="${options.filled.get(name) ?? ''}"
      maxlength="120"
      autocomplete="off"
      ${marked(name, options)}
    />${faultLines(name, options)}
  </div>`
