import * as z from 'zod'
import { fault, pointer, type Fault } from '../quantity/fault.ts'

type Path = readonly PropertyKey[]
interface Placed {
  readonly issue: z.core.$ZodIssue
  /** From the root of what was read. */
  readonly path: Path
}

/**
 * What a schema finds wrong with a value, as faults with their places: unknown fields by name with those that may stand there, missing
 * fields, and wrong shapes. Where several forms may stand, the faults are those of the form that fits best.
 * @param mend how a wrong shape is mended
 * @param within places before the value, where it is a part of what was handed in
 */
export function shapeFaults(schema: z.ZodType, error: z.ZodError, json: unknown, mend: string, within: Path = []): readonly Fault[] {
  return error.issues
    .flatMap((issue) => placed(issue, []))
    .flatMap(({ issue, path }): readonly Fault[] => {
      const where = pointer(...[...within, ...path].map(String))
      if (issue.code === 'unrecognized_keys') {
        const fields = `Fields here are ${fieldsAt(schema, path).join(', ')}.`
        return issue.keys.map((key) =>
          fault('key-unknown', `${where}${pointer(key)}`, `There is no field "${key.slice(0, LONGEST)}" here.`, fields),
        )
      }
      const value = valueAt(json, path)
      if (value === undefined) {
        const fields = fieldsAt(schema, path.slice(0, -1)).join(', ')
        return [fault('field-missing', where, `"${String(path.at(-1) ?? 'entry')}" is missing.`, `Give it; fields here are ${fields}.`)]
      }
      // Of a key that is misspelt the key is what is wrong, whatever it holds.
      const shown = issue.code === 'invalid_key' ? String(path.at(-1)) : value
      const why = issue.code === 'invalid_key' ? (issue.issues[0]?.message ?? issue.message) : issue.message
      return [
        fault(
          'shape',
          where,
          issue.code === 'invalid_union' ? 'This is none of the forms that may stand here.' : sentence(why),
          mend,
          shown,
        ),
      ]
    })
}

/** Characters of an unknown name that are shown. */
const LONGEST = 60

const sentence = (words: string): string => {
  const bare = words.replace(/^Invalid input: /, '').replace(/\.$/, '')
  return `${bare.charAt(0).toUpperCase()}${bare.slice(1)}.`
}

/** The issues of a union's best fitting form in place of the union's own. */
function placed(issue: z.core.$ZodIssue, before: Path): readonly Placed[] {
  const path = [...before, ...issue.path]
  if (issue.code !== 'invalid_union') return [{ issue, path }]
  const forms = issue.errors.map((form) => form.flatMap((one) => placed(one, path)))
  const [best] = forms.filter((form) => !form.some((one) => isOtherForm(one, path))).sort((a, b) => weight(a) - weight(b))
  return best ?? [{ issue, path }]
}

/** True where the value itself is of another form, and not something within it. */
const isOtherForm = ({ issue, path }: Placed, at: Path): boolean =>
  path.length === at.length && (issue.code === 'invalid_type' || issue.code === 'invalid_union')

const weight = (form: readonly Placed[]): number =>
  form.reduce((sum, { issue }) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0)

export function valueAt(json: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' && Object.hasOwn(at, key) ? (at as Record<PropertyKey, unknown>)[key] : undefined),
    json,
  )
}

/** The fields that may stand at a place, from the schema itself. */
function fieldsAt(schema: z.core.$ZodType, path: Path): readonly string[] {
  if (schema instanceof z.ZodDefault || schema instanceof z.ZodOptional) return fieldsAt(schema.unwrap(), path)
  if (schema instanceof z.ZodUnion) return [...new Set(schema.options.flatMap((form) => fieldsAt(form, path)))]
  const [key, ...rest] = path
  if (key === undefined) return schema instanceof z.ZodObject ? Object.keys(schema.shape).filter((name) => name !== '$schema') : []
  if (schema instanceof z.ZodObject) {
    const inner: unknown = schema.shape[String(key)]
    return inner instanceof z.ZodType ? fieldsAt(inner, rest) : []
  }
  if (schema instanceof z.ZodRecord) return fieldsAt(schema.valueType, rest)
  return schema instanceof z.ZodArray ? fieldsAt(schema.element, rest) : []
}
