import * as z from 'zod'
import { $schema, factName, id, limitName, ruleId, sentence, typedValue } from './words.ts'

/**
 * json-rules-engine's condition grammar, cut to what three-valued logic can carry: groups are never negated
 * (negation is the complementary operator on the leaf), so that unknown can't turn into true.
 */
export const OPERATORS = ['at-most', 'above', 'at-least', 'below', 'is', 'is-not', 'among', 'not-among'] as const
export const operator = z.enum(OPERATORS)
export type Operator = (typeof OPERATORS)[number]

export const leaf = z.strictObject({
  fact: factName,
  operator,
  value: z.union([z.string(), z.boolean(), z.array(z.string()).min(1), z.strictObject({ fact: limitName })]),
})
export type Leaf = z.infer<typeof leaf>

export type Condition = Leaf | Group
export interface Group {
  all?: Condition[] | undefined
  any?: Condition[] | undefined
}
const parts: z.ZodType<Condition[]> = z.lazy(() => z.array(z.union([leaf, group])).min(1))
export const group: z.ZodType<Group> = z.lazy(() =>
  z
    .strictObject({ all: parts.optional(), any: parts.optional() })
    .refine((g) => (g.all === undefined) !== (g.any === undefined), 'a group has exactly one of "all" and "any"'),
)

/** What is bought beside the part: one of a thing, or so many. */
const renews = z.array(z.union([sentence, z.strictObject({ item: sentence, each: z.int().min(1) })])).default([])

const opens = z.array(z.string().regex(/^[a-z0-9-]+:[a-z0-9-]+$/, 'write it like "rocker:true-running"')).default([])
const operations = z.array(id).default([])

/** What must turn out while the work is done; else the other verdict takes effect. Figures as {limit.x} or {fact}. */
const provided = z.strictObject({
  /** What shows, on the sheet of the returned work, that it turned out; the part's own facts after the work. */
  holds: group.optional(),
  says: sentence,
  fact: factName.optional(),
  limit: limitName.optional(),
  otherwise: sentence.default('else replace'),
})

const outcome = z.union([
  z.strictObject({ condemns: z.literal(true), opens, operations, renews }),
  z.strictObject({
    restores: z.literal(true),
    operations: z.array(id).min(1),
    provided: z.array(provided).default([]),
    opens,
    /** What is renewed with the work ("self-locking rocker nut"). */
    renews,
  }),
  z.strictObject({ check: z.literal(true), opens }),
  z.strictObject({
    advises: z.literal(true),
    opens,
    operations,
    chooses: z.record(factName, typedValue).default({}),
    instructs: sentence.optional(),
  }),
])
export type Outcome = z.infer<typeof outcome>

const given = z.union([
  typedValue,
  z.array(z.string()).min(1),
  z.strictObject({ value: z.union([typedValue, z.array(z.string()).min(1)]), unit: z.string().optional(), instrument: id.optional() }),
])

/** A sentence that a machinist can review, with the facts and the answer expected. */
const ruleCase = z.strictObject({
  name: sentence,
  given: z.record(factName, given),
  engine: z.string().optional(),
  at: z.string().optional(),
  /** Remembered limits that the shop has adopted for this case, by "part:limit" or limit id of this part. */
  adopted: z.array(z.string()).default([]),
  then: z.enum(['met', 'not met', 'unknown', 'does not apply']),
})
export type RuleCase = z.infer<typeof ruleCase>

/** rules/<part>/<rule>.json: one rule; its id is "<part>.<file name>". */
export const ruleFile = z.strictObject({
  $schema,
  id: ruleId,
  /** Job rules only: what the verdict is about, from rules/job/subjects.json. */
  about: id.optional(),
  words: sentence,
  appliesWhen: group.optional(),
  /**
   * A rule about something that nobody looks for by default sleeps until a finding opens it,
   * one of its own facts is entered, or `wakes` holds.
   */
  dormant: z.literal(true).optional(),
  wakes: group.optional(),
  when: group,
  then: outcome,
  /** Reason with figures: "{margin} is under {limit.margin-min}"; "{fact|text {} text}" stands only when the fact is known. */
  says: sentence,
  sources: z.array(id).min(1),
  cautions: z.array(id).default([]),
  cases: z.array(ruleCase).min(1),
})
export type Rule = z.infer<typeof ruleFile>
