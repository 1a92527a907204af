import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from './book.ts'
import { layoutFaults } from './layout.ts'
import { unknown } from './named.ts'
import type { Engine } from './schema/engine.ts'
import { atPorts, factFaults, figureFaults } from './sheet-figure.ts'

/** A rulebook as far as engine sheets are held against it. */
type Vocabulary = Pick<Rulebook, 'parts'>

/** What is wrong with the rulebook's own sheets, each fault with its file. */
export const checkEngines = (book: Rulebook): readonly Fault[] =>
  [...book.engines.values()].flatMap((engine) => {
    const file = pointer(`engines/${engine.id}.json`)
    return checkEngine(book, engine).map((f) => ({ ...f, pointer: `${file}${f.pointer}` }))
  })

/**
 * That a sheet speaks of parts, properties, limits and cards that the rulebook knows, that every figure of it reads, and that its
 * positions can be told apart. Of a sheet with holes, what is there is checked. Pointers lead into the sheet.
 */
export function checkEngine({ parts }: Vocabulary, engine: Partial<Engine>): readonly Fault[] {
  const { castings = {}, cards = {} } = engine
  const kinds = cardKinds(parts)
  const offered = (kind: string): readonly string[] => Object.keys((kind === 'castings' ? castings : ownOf(cards, kind)) ?? {})
  const layers = [
    ['', engine] as const,
    ...Object.entries(castings).map(([id, casting]) => [pointer('castings', id), casting] as const),
    ...Object.entries(cards).flatMap(([kind, of]) => Object.entries(of).map(([id, card]) => [pointer('cards', kind, id), card] as const)),
  ]
  return [
    ...(engine.layout === undefined ? [] : layoutFaults(engine.layout)),
    ...partsFaults(parts, engine.parts, pointer('parts')),
    ...Object.entries(castings).flatMap(([id, casting]) => partsFaults(parts, casting.parts, pointer('castings', id, 'parts'))),
    ...Object.keys(cards)
      .filter((kind) => !kinds.includes(kind))
      .map((kind) =>
        fault(
          'card-unknown',
          pointer('cards', kind),
          'Nobody is asked for cards of that kind.',
          `Kinds of card are ${kinds.join(', ')}.`,
          kind,
        ),
      ),
    ...layers.flatMap(([where, layer]) => [
      ...factsFaults(parts, layer.facts ?? {}, offered, `${where}/facts`),
      ...limitsFaults(parts, layer.limits ?? {}, `${where}/limits`),
    ]),
  ]
}

const ownOf = <T>(record: Readonly<Record<string, T>>, key: string): T | undefined => (Object.hasOwn(record, key) ? record[key] : undefined)

/** Kinds of card that the job's vocabulary asks for; castings have a place of their own. */
const cardKinds = (parts: ReadonlyMap<string, PartClass>): readonly string[] =>
  [...(parts.get('job')?.properties.values() ?? [])].flatMap(({ property }) =>
    property.kind === 'card' && property.cards !== 'castings' ? [property.cards] : [],
  )

const partsFaults = (parts: ReadonlyMap<string, PartClass>, named: readonly string[] | undefined, where: string): readonly Fault[] =>
  (named ?? []).flatMap((part, i) => (parts.has(part) ? [] : [unknown(`${where}/${i}`, 'part', part, parts.keys())]))

function factsFaults(
  parts: ReadonlyMap<string, PartClass>,
  facts: Engine['facts'],
  offered: (kind: string) => readonly string[],
  where: string,
): readonly Fault[] {
  return Object.entries(facts).flatMap(([part, ofPart]) => {
    const cls = parts.get(part)
    const at = where + pointer(part)
    if (cls === undefined) return [unknown(at, 'part', part, parts.keys())]
    return Object.entries(ofPart).flatMap(([name, fact]) => {
      const entry = cls.properties.get(name)
      if (entry === undefined) return [unknown(at + pointer(name), 'property', name, cls.properties.keys())]
      return atPorts(fact, cls.place === 'valve', at + pointer(name), (one, place) => factFaults(entry, one, offered, place))
    })
  })
}

function limitsFaults(parts: ReadonlyMap<string, PartClass>, limits: Engine['limits'], where: string): readonly Fault[] {
  return Object.entries(limits).flatMap(([part, ofPart]) => {
    const cls = parts.get(part)
    const at = where + pointer(part)
    if (cls === undefined) return [unknown(at, 'part', part, parts.keys())]
    return Object.entries(ofPart).flatMap(([id, figure]) => {
      const limit = cls.limits.get(id)
      if (limit === undefined) return [unknown(at + pointer(id), 'limit', id, cls.limits.keys())]
      return atPorts(figure, cls.place === 'valve', at + pointer(id), (one, place) => figureFaults(one, limit, place))
    })
  })
}
