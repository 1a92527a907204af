import { fault, pointer, Refused, type Fault } from '../quantity/fault.ts'
import type { QuantityKind } from '../quantity/measure.ts'
import { readQuantity } from '../quantity/read.ts'
import type { PropertyEntry } from './book.ts'
import { literalMeasure } from './literal.ts'
import type { Engine } from './schema/engine.ts'

/** What a sheet says of a fact at one port, or of both. */
type SheetFact = NonNullable<NonNullable<Engine['facts'][string]>[string]>
type OneFact = Exclude<SheetFact, { readonly intake: unknown }>

interface Figure {
  readonly kind: QuantityKind
  /** In the trade's words: "least margin". */
  readonly label: string
  /** Kept unit; where there is one. */
  readonly plausible?: { readonly lo: number; readonly hi: number }
}

/**
 * What is wrong with a figure of a sheet, as the reader of quantities says it: no unit, another kind, an inch and a millimetre figure
 * that disagree (with both readings). A figure without faults reads the same when it is judged by.
 */
export function figureFaults(text: string, { kind, label, plausible }: Figure, where: string): readonly Fault[] {
  try {
    const value = literalMeasure(text, kind)
    if (plausible === undefined || (value >= plausible.lo && value <= plausible.hi)) return []
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    return faultsOf(text, { kind, label }, where)
  }
  return faultsOf(text, { kind, label, plausible }, where)
}

function faultsOf(text: string, figure: Figure, where: string): readonly Fault[] {
  const reading = readQuantity(text, { ...figure, pointer: where })
  return reading.ok ? [] : reading.faults
}

/** What is wrong with a fact of a sheet: it must be a figure of its property's kind, one of its choices, yes or no, or a card of this sheet. */
export function factFaults(
  entry: PropertyEntry,
  fact: OneFact,
  offered: (cards: string) => readonly string[],
  where: string,
): readonly Fault[] {
  const { property } = entry
  const value = typeof fact === 'object' ? fact.value : fact
  const at = typeof fact === 'object' ? `${where}/value` : where
  const doubt = typeof fact === 'object' ? fact.doubt : undefined
  if (property.kind === 'yes-no' || property.kind === 'choice' || property.kind === 'card') {
    const unwanted =
      doubt === undefined
        ? []
        : [fault('unit-unwanted', `${where}/doubt`, `${property.label} has no doubt.`, 'Write the value alone.', doubt)]
    return [...termFaults(property, value, offered, at), ...unwanted]
  }
  const { kind, label } = property
  const figure = { kind, label, ...(entry.plausible === undefined ? {} : { plausible: entry.plausible }) }
  const wrong = typeof value === 'boolean' ? wrongKind(label, value, at) : figureFaults(value, figure, at)
  return [...wrong, ...(doubt === undefined ? [] : doubtFaults(doubt, { kind, label }, `${where}/doubt`))]
}

const wrongKind = (label: string, value: boolean, at: string): readonly Fault[] => [
  fault('wrong-kind', at, `${label} is a figure, not yes or no.`, 'Give the figure with its unit.', value),
]

function doubtFaults(doubt: string, { kind, label }: Figure, where: string): readonly Fault[] {
  const faults = figureFaults(doubt, { kind, label: `the doubt of ${label}` }, where)
  if (faults.length > 0 || literalMeasure(doubt, kind) >= 0) return faults
  return [
    fault('sign-not-allowed', where, 'A doubt is not less than nothing.', 'Write half the width of the band about the figure.', doubt),
  ]
}

function termFaults(
  property: Extract<PropertyEntry['property'], { kind: 'yes-no' | 'choice' | 'card' }>,
  value: string | boolean,
  offered: (cards: string) => readonly string[],
  where: string,
): readonly Fault[] {
  const { label } = property
  if (property.kind === 'yes-no')
    return typeof value === 'boolean'
      ? []
      : [fault('not-yes-no', where, `${label} is yes or no.`, 'Write true or false, without quotes.', value)]
  if (property.kind === 'card') {
    const cards = offered(property.cards)
    if (typeof value === 'string' && cards.includes(value)) return []
    const known = cards.length === 0 ? 'This sheet offers none; add it.' : `It offers ${cards.join(', ')}.`
    return [fault('card-unknown', where, `This sheet offers no such ${label}.`, known, value)]
  }
  const choice = typeof value === 'string' && Object.hasOwn(property.choices, value) ? property.choices[value] : undefined
  if (choice === undefined)
    return [
      fault('choice-unknown', where, `${label} has no such choice.`, `Choices are ${Object.keys(property.choices).join(', ')}.`, value),
    ]
  return choice.declined === undefined ? [] : [fault('declined', where, choice.declined, 'This service does not judge such work.', value)]
}

/** The same check for a figure that stands for every position, or for one each at intake and exhaust. */
export function atPorts<T>(
  entry: T | { readonly intake: T; readonly exhaust: T },
  perValve: boolean,
  where: string,
  check: (one: T, at: string) => readonly Fault[],
): readonly Fault[] {
  if (typeof entry !== 'object' || entry === null || !('intake' in entry)) return check(entry as T, where)
  const both = [...check(entry.intake, where + pointer('intake')), ...check(entry.exhaust, where + pointer('exhaust'))]
  if (perValve) return both
  return [
    ...both,
    fault('shape', where, 'This is the same for intake and exhaust.', 'Write it once; only what sits at a valve may differ by port.'),
  ]
}
