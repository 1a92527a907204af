import * as z from 'zod'
import { $schema, day, id, provenance, sentence } from './words.ts'

/** rules/sources/<id>.json: a document, a practice or a memory that rules and limits rest on. */
export const sourceFile = z.strictObject({
  $schema,
  id,
  title: sentence,
  publisher: z.string().optional(),
  edition: z.string().optional(),
  kind: provenance,
  /** What it says, in our own words, so that a reader need not have the document at hand. */
  says: sentence,
  /** The last day somebody checked that this still holds. */
  verifiedOn: day,
})
export type Source = z.infer<typeof sourceFile>
