import * as z from 'zod'
import { $schema, id, propertyName, sentence, typedValue } from './words.ts'

const engineId = z.string().regex(/^[A-Z0-9][A-Z0-9-]*$/, 'write it like "QL-6P"')

/** A figure off a sheet; `doubt` is the expanded uncertainty (k = 2) where the sheet's figure stands in for a measurement. */
const sheetFact = z.union([typedValue, z.strictObject({ value: typedValue, doubt: z.string() })])

/** Facts by part and name; intake and exhaust apart where they differ. */
const facts = z.record(id, z.record(propertyName, z.union([sheetFact, z.strictObject({ intake: sheetFact, exhaust: sheetFact })])))
/** Limits by part and limit id. */
const limits = z.record(id, z.record(id, z.union([z.string(), z.strictObject({ intake: z.string(), exhaust: z.string() })])))

const layer = { facts: facts.default({}), limits: limits.default({}) }

/** A card of parts on offer (cam, springs, seals): its facts and limits stand over the engine's own. */
const card = z.strictObject({
  says: sentence,
  ...layer,
  /** Lines of a kit for the whole engine. */
  kit: z.array(z.strictObject({ item: sentence, quantity: z.int().min(1) })).default([]),
})

/** rules/engines/<ID>.json: the sheet of an engine family. */
export const engineFile = z.strictObject({
  $schema,
  id: engineId,
  says: sentence,
  /** True for demonstration figures that describe no maker's engine. */
  invented: z.boolean(),
  layout: z.strictObject({
    /** Banks in the engine's own numbering: [[1,2,3,4,5,6]] or left [1,3,5,7], right [2,4,6,8]. */
    banks: z.array(z.strictObject({ id, words: sentence, cylinders: z.array(z.int().min(1)).min(1) })).min(1),
    /** Valves a cylinder; the letters of the positions "3I", "3E". */
    ports: z.array(z.enum(['intake', 'exhaust'])).min(1),
  }),
  /** Part classes that the engine has; a part that it does not have is refused. */
  parts: z.array(id).min(1),
  ...layer,
  /** Variants of the head casting; `castings` is asked when more than one. */
  castings: z.record(z.string(), z.strictObject({ says: sentence, parts: z.array(id).optional(), ...layer })).default({}),
  /** Cards by kind ("camshaft", "springs", "seals"), then by name ("stock", "P-2"). */
  cards: z.record(id, z.record(z.string(), card)).default({}),
})
export type Engine = z.infer<typeof engineFile>
