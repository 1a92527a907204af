import * as z from 'zod'
import { $schema, id, sentence } from './words.ts'

/** rules/job/subjects.json: what set-level verdicts are about ("all stem seals", "the spring kit with this cam"). */
export const subjectsFile = z.strictObject({
  $schema,
  subjects: z.record(
    id,
    z.strictObject({
      one: sentence,
      /** The part class whose own verdicts this one governs when it replaces the set. */
      governs: id.optional(),
      /** The kind of card whose kit supplies the new set ("seals"). */
      suppliedBy: id.optional(),
      /** How the four dispositions read for this subject. */
      reads: z.strictObject({ reuse: sentence, recondition: sentence, replace: sentence, undetermined: sentence }),
    }),
  ),
})
export type SubjectsFile = z.infer<typeof subjectsFile>

/** rules/job/order-of-work.json: the stages in working order. */
export const orderFile = z.strictObject({ $schema, source: id, stages: z.array(z.strictObject({ id, words: sentence })).min(1) })
export type OrderFile = z.infer<typeof orderFile>

/** rules/job/operations.json: what is ordered, in which stage, by whom, and what is checked when it comes back. */
export const operationsFile = z.strictObject({
  $schema,
  operations: z.record(
    id,
    z.strictObject({
      stage: id,
      who: z.enum(['bench', 'machine shop', 'assembly']),
      words: sentence,
      /** Lesser operations that this one makes needless at the same place. */
      insteadOf: z.array(id).default([]),
      /** What to check when the work comes back; absent where nothing is to be checked. */
      check: sentence.optional(),
      cautions: z.array(id).default([]),
    }),
  ),
})
export type OperationsFile = z.infer<typeof operationsFile>

/** rules/cautions.json */
export const cautionsFile = z.strictObject({
  $schema,
  cautions: z.record(
    id,
    z.strictObject({
      level: z.enum(['hazard', 'caution']),
      words: sentence,
      source: id,
      /** Shown on every plan. */
      always: z.boolean().default(false),
    }),
  ),
})
export type CautionsFile = z.infer<typeof cautionsFile>

/** rules/confidence.json: one-sided quantiles z of the normal distribution for the confidences a shop may choose. */
export const confidenceFile = z.strictObject({
  $schema,
  source: id,
  quantiles: z.record(z.string(), z.number().positive()),
  default: z.string(),
})
export type ConfidenceFile = z.infer<typeof confidenceFile>

/** rules/phrases.json: how verdicts are said. {part} and {at} stand for the part's name and its position in words. */
export const phrasesFile = z.strictObject({
  $schema,
  dispositions: z.strictObject({ reuse: sentence, recondition: sentence, replace: sentence, undetermined: sentence }),
  positions: z.strictObject({ valve: sentence, cylinder: sentence, head: z.string(), engine: z.string() }),
  soFar: z.strictObject({ condemned: sentence, clear: sentence, noChecks: sentence }),
  why: z.record(z.string(), sentence),
  grounds: z.record(z.string(), sentence),
  set: sentence,
  safeSide: sentence,
  promise: z.strictObject({ broken: sentence }),
  disagreement: sentence,
  notRecorded: sentence,
})
export type PhrasesFile = z.infer<typeof phrasesFile>
