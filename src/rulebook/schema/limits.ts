import * as z from 'zod'
import { $schema, day, factName, id, provenance, quantityKind, sentence } from './words.ts'

/** A trade default, for the conditions it holds under (port, duty …); the first that fits speaks. */
const defaultLimit = z.strictObject({
  for: z.record(factName, z.union([z.string(), z.array(z.string())])).default({}),
  value: z.string(),
  provenance,
  source: id,
  where: z.string().optional(),
  verifiedOn: day.optional(),
})
export type DefaultLimit = z.infer<typeof defaultLimit>

const limit = z.strictObject({
  label: sentence,
  kind: quantityKind,
  /**
   * What to do when a reading is too close to call. 'measure': stay unknown and name a better instrument.
   * 'safe-side': once the best instrument can't settle it, take the answer that can't hurt;
   * always so where a failure drops a valve.
   */
  whenTooClose: z.enum(['measure', 'safe-side']),
  /** Empty where the trade has no figure of its own: the maker's sheet or the part's card must give one. */
  defaults: z.array(defaultLimit),
})
export type Limit = z.infer<typeof limit>

/** rules/<part>/limits.json */
export const limitsFile = z.strictObject({ $schema, part: id, limits: z.record(id, limit) })
export type LimitsFile = z.infer<typeof limitsFile>
