import { Refused, type Fault } from '../quantity/fault.ts'
import type { Rulebook } from './book.ts'
import { checkEngine } from './check-engine.ts'
import { engineFile, type Engine } from './schema/engine.ts'
import { shapeFaults } from './shape-faults.ts'

const MEND =
  'Write a figure as text with its unit, a choice as text, true or false, or one of these each for "intake" and "exhaust"; GET /v1/engines/{id} shows one.'

/**
 * Reads one engine sheet against the rulebook: shape, names, choices, figures, units, positions; what the loader asks of rules/engines.
 * @throws Refused with every fault found, each with its JSON Pointer into the sheet: also those of what is sound in shape beside what is not
 */
export function readEngine(book: Pick<Rulebook, 'parts'>, json: unknown): Engine {
  const parsed = engineFile.safeParse(json)
  const shape = parsed.success ? [] : shapeFaults(engineFile, parsed.error, json, MEND)
  const faults: readonly Fault[] = [...shape, ...checkEngine(book, parsed.success ? parsed.data : soundIn(json))]
  if (parsed.success && faults.length === 0) return parsed.data
  throw new Refused(faults)
}

const withHoles = engineFile.partial()

/** Nesting of an engine sheet; a hole is never made larger than the sheet. */
const DEEPEST = 12

/** What of a misshapen sheet is sound: the sheet without the places that are not, each with as little around it as will do. */
function soundIn(json: unknown): Partial<Engine> {
  const rest: unknown = JSON.parse(JSON.stringify(json ?? null))
  for (let around = 0; around < DEEPEST; around++) {
    const parsed = withHoles.safeParse(rest)
    if (parsed.success) return { ...parsed.data } as Partial<Engine>
    for (const issue of parsed.error.issues) {
      const extra = issue.code === 'unrecognized_keys' ? issue.keys : []
      for (const key of extra) leaveOut(rest, [...issue.path, key])
      if (extra.length === 0) leaveOut(rest, issue.path.slice(0, Math.max(1, issue.path.length - around)))
    }
  }
  return {}
}

/** Takes out what stands at a place; of a list the whole, so that the places of the others stay what they are. */
function leaveOut(json: unknown, path: readonly PropertyKey[]): void {
  const inList = path.findIndex((key) => typeof key === 'number')
  const place = inList < 0 ? path : path.slice(0, inList)
  const last = place.at(-1)
  const holder = place.slice(0, -1).reduce<unknown>((at, key) => (isRecord(at) ? at[key] : undefined), json)
  if (isRecord(holder) && last !== undefined) Reflect.deleteProperty(holder, last)
}

const isRecord = (value: unknown): value is Record<PropertyKey, unknown> => typeof value === 'object' && value !== null
