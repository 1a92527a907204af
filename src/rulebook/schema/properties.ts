import * as z from 'zod'
import { $schema, factName, id, limitName, propertyName, quantityKind, ruleId, sentence, typedValue } from './words.ts'

/** Where a part sits: at each valve, at each cylinder, on each head, or once for the engine (the job's own choices too). */
export const place = z.enum(['valve', 'cylinder', 'head', 'engine'])
export type Place = z.infer<typeof place>

/** 1 a look, 2 one instrument, 3 a set-up. */
const MOST_EFFORT = 3

const common = {
  label: sentence,
  /** Words people use for it at the counter. */
  words: z.array(z.string()).default([]),
  /** The question that asks for it. */
  ask: sentence,
  /** How it is measured or looked at, in a line or two. */
  how: z.string().optional(),
  /** Found by looking; a visual procedure may answer it. */
  visual: z.boolean().default(false),
  /** Work at the bench: 1 a look, 2 one instrument, 3 a set-up. Easier questions are asked first. */
  effort: z.int().min(1).max(MOST_EFFORT).default(1),
}

const quantityProperty = z.strictObject({
  kind: quantityKind,
  ...common,
  /** Outside this the entry is questioned, never computed with: [least, most] as typed. */
  plausible: z.tuple([z.string(), z.string()]),
  /** Stated, not measured (a planned cut, a nominal ratio): the figure as typed, without doubt. */
  stated: z.boolean().default(false),
  /** Instruments that suit, by id; the first is the one to ask for. */
  instruments: z.array(id).default([]),
  /** Set where several readings belong together: stations along the part and axes across it. */
  readings: z.strictObject({ stations: z.array(z.string()).min(1), axes: z.array(z.string()).min(1), least: z.int().min(1) }).optional(),
})

const yesNoProperty = z.strictObject({ kind: z.literal('yes-no'), ...common })

const choiceProperty = z.strictObject({
  kind: z.literal('choice'),
  ...common,
  /** Each choice with the words people use for it. */
  choices: z.record(id, z.strictObject({ says: sentence, words: z.array(z.string()).default([]), declined: sentence.optional() })),
})

/** A card of the parts fitted ("P-2", "K-2"): the choices are the cards of the engine's sheet. */
const cardProperty = z.strictObject({ kind: z.literal('card'), ...common, cards: id })

export const property = z.discriminatedUnion('kind', [quantityProperty, yesNoProperty, choiceProperty, cardProperty])
export type Property = z.infer<typeof property>
export type QuantityProperty = z.infer<typeof quantityProperty>

/** A figure computed from facts and limits by a formula of src/compute ("tip-stock-left@1"). */
const derived = z.strictObject({
  label: sentence,
  formula: z.string().regex(/^[a-z0-9-]+@\d+$/),
  inputs: z.record(z.string(), z.union([factName, limitName])),
  /**
   * For a formula over a grid of heights: the property whose readings, row by row of its stations and axes, are the heights.
   * Rows and columns count as equally spaced, which leaves a flatness as it is.
   */
  grid: propertyName.optional(),
})
export type Derived = z.infer<typeof derived>

/**
 * How many positions of a part certainly stand so: replaced by their own verdict, or with a rule met. What may still turn
 * out so is not counted. As a share it is of all positions of that part (and port) on the engine.
 */
const count = z.strictObject({
  label: sentence,
  part: id,
  port: z.enum(['intake', 'exhaust']).optional(),
  that: z.union([z.literal('replaced'), z.strictObject({ rule: ruleId })]),
  as: z.enum(['number', 'share']).default('number'),
})
export type Count = z.infer<typeof count>

/** One look by a named procedure that answers several visual properties at once: "looked over, nothing found". */
const procedure = z.strictObject({
  says: sentence,
  words: z.array(z.string()).default([]),
  answers: z.record(propertyName, typedValue),
})

/** rules/<part>/properties.json: the vocabulary of one part class. */
export const propertiesFile = z.strictObject({
  $schema,
  part: id,
  place,
  one: sentence,
  many: sentence,
  said: z.array(z.string()).default([]),
  properties: z.record(propertyName, property),
  derived: z.record(propertyName, derived).default({}),
  /** The job's only: counts over the parts' own verdicts, for rules about sets. */
  counts: z.record(propertyName, count).default({}),
  procedures: z.record(z.string(), procedure).default({}),
  /** Operations that every kept part gets (a sound tip is still dressed); no recondition by themselves. */
  routine: z.array(id).default([]),
  /** Operations that a new part calls for (a new valve's contact is checked). */
  fitting: z.array(id).default([]),
  /** What is renewed together with the part when it is replaced, each by the piece. */
  renews: z.array(z.strictObject({ item: sentence, each: z.int().min(1) })).default([]),
})
export type PropertiesFile = z.infer<typeof propertiesFile>
