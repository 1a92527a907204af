import { show } from '../quantity/show.ts'
import type { PropertyEntry, Rulebook } from '../rulebook/book.ts'
import { positionsOf } from '../rulebook/positions.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { QuantityProperty } from '../rulebook/schema/properties.ts'
import { positionsInWords } from '../verdict/where.ts'
import type { CounterSubject } from './subjects.ts'

/** One entry of a form, as the property catalogue describes it. */
export interface Field {
  /** Its name in the form: "valve:length", "job:oil-pump". */
  readonly id: string
  readonly part: string
  readonly property: string
  readonly ask: string
  readonly label: string
  readonly how?: string
  readonly input: FieldInput
}

export type FieldInput =
  | { readonly kind: 'choice'; readonly options: readonly Option[] }
  | { readonly kind: 'yes-no' }
  | {
      readonly kind: 'figure'
      /** What is likely, in both systems; what lies outside is asked back. */
      readonly hint: string
      readonly instruments: readonly Option[]
      /** Station and axis of each reading where several belong together; one unnamed reading elsewhere. */
      readonly readings: readonly string[]
    }

export interface Option {
  readonly value: string
  readonly says: string
}

/** The fields of one subject on one engine: what is asked first, and what is seldom needed. */
export interface FieldSet {
  readonly first: readonly Field[]
  readonly more: readonly Field[]
}

export function fieldsOf(book: Rulebook, engine: Engine, subject: CounterSubject): FieldSet {
  const fields = (part: string, names: readonly string[]): readonly Field[] =>
    names.flatMap((name) => {
      const entry = book.parts.get(part)?.properties.get(name)
      return entry === undefined ? [] : [fieldOf(book, engine, part, entry)]
    })
  return {
    first: [...fields('job', castingProperty(book, engine)), ...fields('job', subject.build), ...fields(subject.part, subject.fields)],
    more: [...fields('job', subject.moreBuild), ...fields(subject.part, subject.moreFields)],
  }
}

/** Where several castings carry different parts, which one it is comes first. */
function castingProperty(book: Rulebook, engine: Engine): readonly string[] {
  if (Object.keys(engine.castings).length < 2) return []
  return [...(book.parts.get('job')?.properties ?? [])].flatMap(([name, { property }]) =>
    property.kind === 'card' && property.cards === 'castings' ? [name] : [],
  )
}

function fieldOf(book: Rulebook, engine: Engine, part: string, entry: PropertyEntry): Field {
  const { property, name } = entry
  const { ask, label, how } = property
  return {
    id: `${part}:${name}`,
    part,
    property: name,
    ask,
    label,
    ...(how === undefined ? {} : { how }),
    input: inputOf(book, engine, entry),
  }
}

function inputOf(book: Rulebook, engine: Engine, { property, plausible }: PropertyEntry): FieldInput {
  switch (property.kind) {
    case 'yes-no':
      return { kind: 'yes-no' }
    case 'choice':
      return {
        kind: 'choice',
        options: Object.entries(property.choices).flatMap(([value, { says, declined }]) =>
          declined === undefined ? [{ value, says }] : [],
        ),
      }
    case 'card':
      return { kind: 'choice', options: cardsOf(engine, property.cards) }
    default:
      return {
        kind: 'figure',
        hint: hintOf(property, plausible),
        instruments: instrumentsOf(book, property),
        readings: readingsOf(property),
      }
  }
}

function cardsOf(engine: Engine, kind: string): readonly Option[] {
  const cards = kind === 'castings' ? engine.castings : (engine.cards[kind] ?? {})
  return Object.entries(cards).map(([value, { says }]) => ({ value, says }))
}

function hintOf(property: QuantityProperty, plausible: PropertyEntry['plausible']): string {
  const [lo, hi] = property.plausible
  return plausible === undefined
    ? `${lo} to ${hi}`
    : `${show(plausible.lo, property.kind, { typed: lo })} to ${show(plausible.hi, property.kind, { typed: hi })}`
}

const instrumentsOf = (book: Rulebook, property: QuantityProperty): readonly Option[] =>
  property.instruments.map((value) => ({ value, says: book.instruments.get(value)?.label ?? value }))

const readingsOf = ({ readings }: QuantityProperty): readonly string[] =>
  readings === undefined ? [''] : readings.stations.flatMap((station) => readings.axes.map((axis) => `${station}, ${axis}`))

/** Where a part can be said to sit: bank by bank, one by one, and groups. Empty for a part that the engine has once. */
export function placesOf(
  book: Rulebook,
  engine: Engine,
  part: string,
): readonly { readonly words: string; readonly options: readonly Option[] }[] {
  const place = book.parts.get(part)?.place ?? 'engine'
  const all = positionsOf(engine, place)
  if (place === 'engine') return []
  const groups = place === 'valve' ? ['all', ...engine.layout.ports.map((port) => `all ${port}`)] : ['all']
  return [
    ...engine.layout.banks.map((bank) => ({
      words: bank.words,
      options: all
        .filter((at) => bank.cylinders.includes(Number(at.replace(/[IE]$/, ''))))
        .map((at) => ({ value: at, says: positionsInWords([at]) })),
    })),
    { words: 'several at once', options: groups.map((value) => ({ value, says: value })) },
  ]
}
