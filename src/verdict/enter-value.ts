import { fault, type Fault } from '../quantity/fault.ts'
import { instrumentUse } from '../quantity/instrument.ts'
import { readQuantity } from '../quantity/read.ts'
import type { ReadQuantity } from '../quantity/measure.ts'
import type { PropertyEntry, Rulebook } from '../rulebook/book.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { EnteredValue } from './entered.ts'
import { NOT_MEASURED } from './sheet.ts'
import type { ShopLayer } from './shop.ts'

type Scalar = string | boolean
export type ReadValue =
  | { readonly ok: true; readonly value: EnteredValue; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly Fault[] }

interface Typed {
  readonly value: Scalar | readonly Scalar[]
  readonly unit?: string | undefined
  readonly instrument?: string | undefined
}

const bad = (f: Fault): ReadValue => ({ ok: false, faults: [f] })

/** Reads what was typed for one property: a quantity with its unit, a choice by its id or the words people use, yes or no. */
export function readValue(book: Rulebook, engine: Engine, shop: ShopLayer, entry: PropertyEntry, typed: Typed, where: string): ReadValue {
  const { property } = entry
  const only = Array.isArray(typed.value) && typed.value.length === 1 ? (typed.value[0] as Scalar) : typed.value
  if (typeof only === 'string' && only.trim().toLowerCase() === NOT_MEASURED)
    return { ok: true, value: { form: 'not measured' }, notes: [] }
  if (property.kind === 'yes-no' || property.kind === 'choice' || property.kind === 'card') {
    if (typed.unit !== undefined)
      return bad(fault('unit-unwanted', `${where}/unit`, `${property.label} has no unit.`, 'Leave the unit out.', typed.unit))
    if (typeof only !== 'string' && typeof only !== 'boolean')
      return bad(fault('one-value', `${where}/value`, `${property.label} takes one value.`, 'Send it singly.', typed.value))
    return readTerm(engine, entry, only, `${where}/value`)
  }
  const list = Array.isArray(only) ? (only as readonly Scalar[]) : [only as Scalar]
  if (list.length > 1 && property.readings === undefined)
    return bad(
      fault(
        'one-value',
        `${where}/value`,
        `${property.label} takes one reading.`,
        'Send the reading that counts, and say in the note how the others ran.',
        typed.value,
      ),
    )
  const use = typed.instrument === undefined ? undefined : book.instruments.get(typed.instrument)
  // An instrument that nobody knows is said where the finding is read.
  if (typed.instrument !== undefined && use === undefined) return { ok: false, faults: [] }
  if (use !== undefined && (use.kind !== property.kind || (property.instruments.length > 0 && !property.instruments.includes(use.id)))) {
    return bad(
      fault(
        'instrument-unsuited',
        `${where}/instrument`,
        `${property.label} is not read with that.`,
        property.instruments.length > 0
          ? `Use ${property.instruments.join(' or ')}.`
          : 'Leave the instrument out, or name one that reads this.',
        typed.instrument,
      ),
    )
  }
  const readings: ReadQuantity[] = []
  const faults: Fault[] = []
  const notes: string[] = []
  list.forEach((one, i) => {
    const at = list.length > 1 ? `${where}/value/${i}` : `${where}/value`
    if (typeof one === 'boolean') {
      faults.push(fault('wrong-kind', at, `${property.label} is a measurement, not yes or no.`, 'Give the figure with its unit.', one))
      return
    }
    const reading = readQuantity(one, {
      kind: property.kind,
      label: property.label,
      pointer: at,
      ...(typed.unit === undefined ? {} : { unit: typed.unit }),
      ...(entry.plausible === undefined ? {} : { plausible: entry.plausible }),
      ...(use === undefined ? {} : { instrument: instrumentUse(use) }),
      ...(shop.tenths === undefined ? {} : { tenths: shop.tenths }),
    })
    if (reading.ok) {
      const { quantity } = reading
      readings.push(property.stated ? { ...quantity, u: 0, uFrom: 'exact' } : quantity)
      if (!property.stated) notes.push(...quantity.notes)
    } else faults.push(...reading.faults)
  })
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { form: 'quantity', readings }, notes }
}

function readTerm(engine: Engine, entry: PropertyEntry, typed: Scalar, where: string): ReadValue {
  const { property, name } = entry
  const said = String(typed).trim().toLowerCase()
  const term = (value: string | boolean): ReadValue => ({ ok: true, value: { form: 'term', term: value, typed: String(typed) }, notes: [] })
  if (property.kind === 'yes-no') {
    if (/^(true|yes|y|found|felt)$/.test(said)) return term(true)
    if (/^(false|no|n|none)$/.test(said)) return term(false)
    return bad(fault('not-yes-no', where, `${property.label} is answered yes or no.`, 'Write true or false, yes or no.', typed))
  }
  if (property.kind === 'card') {
    const cards = property.cards === 'castings' ? Object.keys(engine.castings) : Object.keys(engine.cards[property.cards] ?? {})
    const card = cards.find((c) => c.toLowerCase() === said)
    return card !== undefined
      ? term(card)
      : bad(
          fault(
            'card-unknown',
            where,
            `The sheet of ${engine.id} has no such ${property.label}.`,
            cards.length === 0 ? 'This engine offers none.' : `It has ${cards.join(', ')}.`,
            typed,
          ),
        )
  }
  if (property.kind !== 'choice')
    return bad(fault('wrong-kind', where, `${property.label} is no choice.`, 'Give the figure with its unit.', typed))
  const spoken = said.replaceAll(' ', '-')
  const choice = Object.entries(property.choices).find(
    ([id, c]) => id === said || id === spoken || c.words.some((w) => w.toLowerCase() === said),
  )
  if (choice === undefined)
    return bad(
      fault(
        'choice-unknown',
        where,
        `${property.label} (${name}) has no such choice.`,
        `Choices are ${Object.keys(property.choices).join(', ')}.`,
        typed,
      ),
    )
  const [id, { declined }] = choice
  return declined === undefined ? term(id) : bad(fault('declined', where, declined, 'This service does not judge such work.', typed))
}
