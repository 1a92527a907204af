import * as z from 'zod'
import { LosslessNumber } from 'lossless-json'
import { fault, pointer, Refused, type Fault } from '../quantity/fault.ts'
import { jsonFrom } from '../rulebook/json-text.ts'

/** Nesting deeper than this is no finding sheet. */
const DEEPEST = 12
const MOST_FINDINGS = 4000
const MOST_READINGS = 24
/** Longest texts, in characters: generous for a person, small for a machine. */
const LONGEST = { value: 200, name: 120, id: 60, unit: 20, note: 2000 } as const

/**
 * A value as the person wrote it. A JSON number keeps its digits as typed ("1.700"), since they tell how finely it was read.
 */
/** Text that is whole: half a surrogate pair can be neither hashed nor written down. */
const text = (longest: number, shortest = 0) =>
  z
    .string()
    .min(shortest)
    .max(longest)
    .refine((s) => s.isWellFormed(), 'The text holds half a character')

const scalar = z.union([
  text(LONGEST.value),
  z.boolean(),
  z.instanceof(LosslessNumber).transform((n) => n.toString()),
  z.number().transform(String),
])
export const NOT_MEASURED = 'not measured'

export const findingSchema = z.strictObject({
  part: z.string(),
  at: z.string().max(LONGEST.id).optional(),
  property: z.string(),
  /** "12 thou", 0.3048, true, "chipped"; several readings as a list; "not measured" where it was asked and not taken. */
  value: z.union([scalar, z.array(scalar).min(1).max(MOST_READINGS)]),
  unit: z.string().max(LONGEST.unit).optional(),
  instrument: z.string().max(LONGEST.id).optional(),
  by: text(LONGEST.name, 1).optional(),
  observedAt: z.iso.datetime({ offset: true, error: "Write the time as 2031-04-02T10:15:00+02:00, with the shop's offset." }).optional(),
  note: text(LONGEST.note).optional(),
})
export type Finding = z.infer<typeof findingSchema>

/** A finding sheet: the one form in which everything comes in, by whatever door. */
export const sheetSchema = z.strictObject({
  $schema: z.string().optional(),
  job: text(LONGEST.name, 1),
  engine: z.string().min(1).max(LONGEST.id),
  stage: z.enum(['received', 'returned']).default('received'),
  build: z.record(z.string(), scalar).default({}),
  findings: z.array(findingSchema).max(MOST_FINDINGS).default([]),
})
export type Sheet = z.infer<typeof sheetSchema>

/**
 * Reads the text of a sheet.
 * @throws Refused `not-json`, `too-deep`, `key-unknown` or `shape`, each with its place
 */
export function sheetFromText(text: string): Sheet {
  return sheetFrom(jsonFrom(text, { one: 'finding sheet', built: 'A finding sheet is a flat list of findings.', deepest: DEEPEST }))
}

/** Reads a sheet that is already an object. @throws Refused as sheetFromText does */
export function sheetFrom(json: unknown): Sheet {
  const parsed = sheetSchema.safeParse(json)
  if (parsed.success) return parsed.data
  throw new Refused(parsed.error.issues.flatMap((issue) => sheetFaults(issue, json)))
}

function sheetFaults(issue: z.core.$ZodIssue, json: unknown): readonly Fault[] {
  const path = issue.path.map((p) => (typeof p === 'number' ? p : String(p)))
  const value = path.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' ? (at as Record<string | number, unknown>)[key] : undefined),
    json,
  )
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) =>
      fault(
        'key-unknown',
        pointer(...path, key),
        `A sheet has no field "${key.slice(0, LONGEST.id)}" here.`,
        `Fields here are ${fieldsAt(path)}.`,
      ),
    )
  }
  const missing = value === undefined
  const last = String(path[path.length - 1] ?? 'sheet')
  return [
    missing
      ? fault('field-missing', pointer(...path), `"${last}" is missing.`, `Give it; fields here are ${fieldsAt(path.slice(0, -1))}.`)
      : fault(
          'shape',
          pointer(...path),
          `${issue.message.replace(/\.$/, '')}.`,
          'Mend the value; GET /v1/vocabulary lists what may stand here.',
          value instanceof LosslessNumber ? value.toString() : value,
        ),
  ]
}

const fieldsAt = (path: readonly (string | number)[]): string =>
  (path[0] === 'findings'
    ? Object.keys(findingSchema.shape)
    : path[0] === 'build'
      ? ["the job's build choices"]
      : Object.keys(sheetSchema.shape).filter((k) => k !== '$schema')
  ).join(', ')
