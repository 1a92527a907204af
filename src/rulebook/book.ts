import type { QuantityKind } from '../quantity/measure.ts'
import type { Instrument } from '../quantity/instrument.ts'
import type { Engine } from './schema/engine.ts'
import type { CautionsFile, ConfidenceFile, OperationsFile, OrderFile, PhrasesFile, SubjectsFile } from './schema/job.ts'
import type { DefaultLimit, Limit } from './schema/limits.ts'
import type { Count, Derived, Place, PropertiesFile, Property } from './schema/properties.ts'
import type { Rule } from './schema/rule.ts'
import type { Source } from './schema/source.ts'

/** A limit with its defaults already read into kept units. */
export interface LimitEntry extends Omit<Limit, 'defaults'> {
  readonly id: string
  readonly defaults: readonly (DefaultLimit & { readonly kept: number })[]
}

/** A property with its plausible range already read into kept units. */
export interface PropertyEntry {
  readonly name: string
  readonly property: Property
  /** Kept unit; only for quantities. */
  readonly plausible?: { readonly lo: number; readonly hi: number }
}

/** One part class: its vocabulary, its limits and its rules, the rules in order of id. */
export interface PartClass {
  readonly id: string
  readonly place: Place
  readonly file: PropertiesFile
  readonly properties: ReadonlyMap<string, PropertyEntry>
  readonly derived: ReadonlyMap<string, Derived>
  readonly counts: ReadonlyMap<string, Count>
  readonly limits: ReadonlyMap<string, LimitEntry>
  readonly rules: readonly Rule[]
}

/** Everything under rules/, read, checked and indexed. Immutable. */
export interface Rulebook {
  readonly sources: ReadonlyMap<string, Source>
  readonly instruments: ReadonlyMap<string, Instrument>
  readonly parts: ReadonlyMap<string, PartClass>
  readonly rules: ReadonlyMap<string, Rule>
  readonly subjects: SubjectsFile['subjects']
  readonly operations: OperationsFile['operations']
  readonly order: OrderFile
  readonly cautions: CautionsFile['cautions']
  readonly confidence: ConfidenceFile
  readonly phrases: PhrasesFile
  readonly engines: ReadonlyMap<string, Engine>
  /** The files as they were, for the edition's content. */
  readonly files: Readonly<Record<string, unknown>>
}

/** The kind of thing a fact holds: a quantity of some kind, or a term (a choice, yes or no, a card). */
export type FactKind =
  { readonly form: 'quantity'; readonly kind: QuantityKind } | { readonly form: 'term'; readonly terms?: readonly (string | boolean)[] }
