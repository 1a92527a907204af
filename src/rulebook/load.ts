import type * as z from 'zod'
import { fault, pointer, Refused, type Fault } from '../quantity/fault.ts'
import { instrumentsFile, readInstruments } from '../quantity/instrument.ts'
import type { LimitEntry, PartClass, PropertyEntry, Rulebook } from './book.ts'
import { checkBook } from './check.ts'
import { literalMeasure } from './literal.ts'
import { engineFile } from './schema/engine.ts'
import { cautionsFile, confidenceFile, operationsFile, orderFile, phrasesFile, subjectsFile } from './schema/job.ts'
import { limitsFile } from './schema/limits.ts'
import { propertiesFile } from './schema/properties.ts'
import { ruleFile, type Rule } from './schema/rule.ts'
import { sourceFile } from './schema/source.ts'

/** Which schema a path under rules/ must satisfy; any other file is refused. First match speaks. */
const SHELVES = [
  [/^instruments\.json$/, 'instruments', instrumentsFile],
  [/^cautions\.json$/, 'cautions', cautionsFile],
  [/^confidence\.json$/, 'confidence', confidenceFile],
  [/^phrases\.json$/, 'phrases', phrasesFile],
  [/^sources\/[a-z0-9-]+\.json$/, 'source', sourceFile],
  [/^engines\/[A-Z0-9-]+\.json$/, 'engine', engineFile],
  [/^job\/subjects\.json$/, 'subjects', subjectsFile],
  [/^job\/operations\.json$/, 'operations', operationsFile],
  [/^job\/order-of-work\.json$/, 'order-of-work', orderFile],
  [/^[a-z0-9-]+\/properties\.json$/, 'properties', propertiesFile],
  [/^[a-z0-9-]+\/limits\.json$/, 'limits', limitsFile],
  [/^[a-z0-9-]+\/[a-z0-9-]+\.json$/, 'rule', ruleFile],
] as const

/** The JSON Schema files of schemas/, by name, from the same zod objects that the loader uses. */
export const SCHEMAS: ReadonlyMap<string, z.ZodType> = new Map(SHELVES.map(([, name, schema]) => [name, schema]))

/**
 * Reads, checks and indexes the whole of rules/.
 * @param files path under rules/ → parsed JSON
 * @throws Refused with every fault found, each with its file, its place in the file, and the mend
 */
export function loadRulebook(files: Readonly<Record<string, unknown>>): Rulebook {
  const faults: Fault[] = []
  const shelf = new Map<string, Map<string, unknown>>()
  for (const [path, content] of Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1))) {
    const place = SHELVES.find(([re]) => re.test(path))
    if (place === undefined) {
      faults.push(
        fault(
          'file-unknown',
          pointer(path),
          'No such file belongs under rules/.',
          'Rules live in rules/<part>/<rule>.json; see DEVELOPERS.md.',
        ),
      )
      continue
    }
    const [, name, schema] = place
    const parsed = schema.safeParse(content)
    if (parsed.success) {
      const files_ = shelf.get(name) ?? new Map<string, unknown>()
      shelf.set(name, files_.set(path, parsed.data))
    } else faults.push(...parsed.error.issues.map((issue) => faultOf(path, issue)))
  }
  if (faults.length > 0) throw new Refused(faults)

  const all = <T>(name: string): ReadonlyMap<string, T> => (shelf.get(name) ?? new Map<string, unknown>()) as ReadonlyMap<string, T>
  const one = <S extends z.ZodType>(name: string, schema: S): z.infer<S> => {
    const [found] = all<z.infer<S>>(name).values()
    if (found === undefined)
      throw new Refused([
        fault('file-missing', pointer(`${name}.json`), `rules/ has no ${name} file.`, `Add it; its schema is schemas/${name}.schema.json.`),
      ])
    return schema.parse(found)
  }
  const rules = new Map<string, Rule>()
  for (const [path, rule] of all<Rule>('rule')) {
    const id = path.replace(/\.json$/, '').replace('/', '.')
    if (rule.id !== id)
      faults.push(
        fault(
          'id-not-path',
          pointer(path, 'id'),
          `The rule calls itself ${rule.id}, its file says ${id}.`,
          'Give both the same name.',
          rule.id,
        ),
      )
    rules.set(rule.id, rule)
  }
  const parts = partsFrom(all('properties'), all('limits'), rules, faults)
  const book: Rulebook = {
    sources: byId(all('source'), 'sources', faults),
    instruments: readInstruments(one('instruments', instrumentsFile)),
    parts,
    rules,
    subjects: one('subjects', subjectsFile).subjects,
    operations: one('operations', operationsFile).operations,
    order: one('order-of-work', orderFile),
    cautions: one('cautions', cautionsFile).cautions,
    confidence: one('confidence', confidenceFile),
    phrases: one('phrases', phrasesFile),
    engines: byId(all('engine'), 'engines', faults),
    files,
  }
  faults.push(...checkBook(book))
  if (faults.length > 0) throw new Refused(faults)
  return book
}

function byId<T extends { readonly id: string }>(files: ReadonlyMap<string, T>, folder: string, faults: Fault[]): ReadonlyMap<string, T> {
  const found = new Map<string, T>()
  for (const [path, file] of files) {
    if (path !== `${folder}/${file.id}.json`)
      faults.push(
        fault('id-not-path', pointer(path, 'id'), `The file calls itself ${file.id}.`, 'Give the file the name of its id.', file.id),
      )
    found.set(file.id, file)
  }
  return found
}

function partsFrom(
  properties: ReadonlyMap<string, z.infer<typeof propertiesFile>>,
  limits: ReadonlyMap<string, z.infer<typeof limitsFile>>,
  rules: ReadonlyMap<string, Rule>,
  faults: Fault[],
): ReadonlyMap<string, PartClass> {
  const parts = new Map<string, PartClass>()
  for (const [path, file] of properties) {
    if (path !== `${file.part}/properties.json`)
      faults.push(
        fault('id-not-path', pointer(path, 'part'), `The file is about ${file.part}.`, 'Put it in the folder of that part.', file.part),
      )
    const own = limits.get(`${file.part}/limits.json`)
    parts.set(file.part, {
      id: file.part,
      place: file.place,
      file,
      properties: new Map(Object.entries(file.properties).map(([name, property]) => [name, entryOf(path, name, property, faults)])),
      derived: new Map(Object.entries(file.derived)),
      counts: new Map(Object.entries(file.counts)),
      limits: new Map(Object.entries(own?.limits ?? {}).map(([id, limit]) => [id, limitOf(`${file.part}/limits.json`, id, limit, faults)])),
      rules: [...rules.values()].filter((r) => r.id.startsWith(`${file.part}.`)).sort((a, b) => (a.id < b.id ? -1 : 1)),
    })
  }
  return parts
}

function entryOf(path: string, name: string, property: PropertyEntry['property'], faults: Fault[]): PropertyEntry {
  if (!('plausible' in property)) return { name, property }
  const { kind, plausible } = property
  const at = (i: number): number =>
    keep(() => literalMeasure(plausible[i] ?? '', kind), pointer(path, 'properties', name, 'plausible', i), faults)
  const [lo, hi] = [at(0), at(1)]
  if (!(lo < hi))
    faults.push(
      fault(
        'range-empty',
        pointer(path, 'properties', name, 'plausible'),
        'The plausible range is empty.',
        'Write the least first, the most second.',
        plausible,
      ),
    )
  return { name, property, plausible: { lo, hi } }
}

function limitOf(path: string, id: string, limit: z.infer<typeof limitsFile>['limits'][string], faults: Fault[]): LimitEntry {
  return {
    ...limit,
    id,
    defaults: limit.defaults.map((d, i) => ({
      ...d,
      kept: keep(() => literalMeasure(d.value, limit.kind), pointer(path, 'limits', id, 'defaults', i, 'value'), faults),
    })),
  }
}

function keep(read: () => number, where: string, faults: Fault[]): number {
  try {
    return read()
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    faults.push(...error.faults.map((f) => ({ ...f, pointer: where })))
    return Number.NaN
  }
}

function faultOf(path: string, issue: z.core.$ZodIssue): Fault {
  const where = pointer(path, ...issue.path.map(String))
  if (issue.code === 'unrecognized_keys')
    return fault(
      'key-unknown',
      where,
      `Unknown key ${issue.keys.map((k) => `"${k}"`).join(', ')}.`,
      'Take it out, or mend its spelling; the schema lists what may stand here.',
      issue.keys.join(', '),
    )
  return fault('shape', where, `${issue.message}.`, 'See the schema named on the first line of the file.')
}
