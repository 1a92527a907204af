import { portOf } from '../rulebook/positions.ts'
import type { Rulebook } from '../rulebook/book.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import type { EnteredSheet } from './entered.ts'

export type SheetValue = { readonly value: string | boolean; readonly doubt?: string; readonly from: 'engine sheet' | 'card' }

interface Layer {
  /** Its name for the record: "QL-6P", "casting QP-1", "springs card K-2". */
  readonly name: string
  /** The card of what the engine came with. */
  readonly stock?: true
  readonly from: 'engine sheet' | 'card'
  /** For a card: part classes that came in before it, and what stands for them in its place. */
  readonly before?: { readonly parts: readonly string[]; readonly stock: Pick<Layer, 'name' | 'facts' | 'limits'> }
  readonly facts: Engine['facts']
  readonly limits: Engine['limits']
}

/** The layers of sheets that speak for this job, strongest first: the cards of the parts fitted, the casting, the engine. */
export function layersOf(book: Rulebook, sheet: EnteredSheet): readonly Layer[] {
  const { engine } = sheet
  const layers: Layer[] = []
  for (const [name, entry] of book.parts.get('job')?.properties ?? []) {
    if (entry.property.kind !== 'card' || entry.property.cards === 'castings') continue
    const chosen = sheet.build.get(name)
    if (chosen?.form !== 'term') continue
    const card = engine.cards[entry.property.cards]?.[String(chosen.term)]
    if (card === undefined) continue
    const kind = entry.property.cards
    const before =
      sheet.stage === 'received'
        ? {
            before: {
              parts: setsBehind(book, kind),
              stock: { name: `${kind} card stock`, ...(engine.cards[kind]?.['stock'] ?? { facts: {}, limits: {} }) },
            },
          }
        : {}
    layers.push({
      name: `${kind} card ${String(chosen.term)}`,
      ...(chosen.term === 'stock' ? { stock: true as const } : {}),
      from: 'card',
      facts: card.facts,
      limits: card.limits,
      ...before,
    })
  }
  const casting = sheet.casting === undefined ? undefined : engine.castings[sheet.casting]
  if (casting !== undefined)
    layers.push({ name: `${engine.id}, casting ${sheet.casting}`, from: 'engine sheet', facts: casting.facts, limits: casting.limits })
  layers.push({ name: engine.id, from: 'engine sheet', facts: engine.facts, limits: engine.limits })
  return layers
}

/**
 * Part classes that sit at the valves and whose set such a card supplies: on received work they are what came in, and
 * the card of what will be fitted does not speak of them yet.
 */
function setsBehind(book: Rulebook, cards: string): readonly string[] {
  return Object.values(book.subjects).flatMap(({ governs, suppliedBy }) =>
    suppliedBy === cards && governs !== undefined && book.parts.get(governs)?.place === 'valve' ? [governs] : [],
  )
}

/**
 * Choices of casting or card that nobody has stated and that would speak of this figure: which figure holds hangs on them,
 * so the engine's own must not stand in.
 */
export function unstatedChoices(
  book: Rulebook,
  sheet: EnteredSheet,
  of: 'facts' | 'limits',
  part: string,
  name: string,
): readonly string[] {
  const { engine } = sheet
  return [...(book.parts.get('job')?.properties ?? [])].flatMap(([property, { property: p }]) => {
    if (p.kind !== 'card' || sheet.build.get(property)?.form === 'term') return []
    if (sheet.stage === 'received' && p.cards !== 'castings' && setsBehind(book, p.cards).includes(part)) return []
    const offered = p.cards === 'castings' ? engine.castings : (engine.cards[p.cards] ?? {})
    return Object.values(offered).some((layer) => layer[of][part]?.[name] !== undefined) ? [property] : []
  })
}

/** What the sheets say of a fact, strongest layer first. */
export function factOnSheet(layers: readonly Layer[], part: string, name: string, at: string): SheetValue | undefined {
  for (const layer of layers) {
    const entry = (layer.before?.parts.includes(part) === true ? layer.before.stock : layer).facts[part]?.[name]
    if (entry === undefined) continue
    const one = typeof entry === 'object' && 'intake' in entry ? entry[portOf(at) ?? 'intake'] : entry
    return typeof one === 'object' ? { value: one.value, doubt: one.doubt, from: layer.from } : { value: one, from: layer.from }
  }
  return undefined
}

/** What the sheets say of a limit, strongest layer first. */
export function limitOnSheet(
  layers: readonly Layer[],
  part: string,
  limit: string,
  at: string,
): { readonly typed: string; readonly from: 'maker' | 'card'; readonly sheet: string } | undefined {
  for (const layer of layers) {
    const speaks = layer.before?.parts.includes(part) === true ? layer.before.stock : layer
    const entry = speaks.limits[part]?.[limit]
    if (entry === undefined) continue
    const typed = typeof entry === 'string' ? entry : entry[portOf(at) ?? 'intake']
    return { typed, from: layer.from === 'card' ? 'card' : 'maker', sheet: speaks.name }
  }
  return undefined
}

/** Whether the engine has a part class; 'unstated' while that hangs on the casting and nobody has said which. */
export function hasPart(engine: Engine, casting: string | undefined, part: string): 'yes' | 'no' | 'unstated' {
  if (part === 'job' || partsOf(engine, casting).includes(part)) return 'yes'
  const some = casting === undefined && Object.values(engine.castings).some((c) => c.parts?.includes(part) ?? false)
  return some ? 'unstated' : 'no'
}

/** The part classes that this job's engine has, the casting's own list standing over the engine's. */
export function partsOf(engine: Engine, casting: string | undefined): readonly string[] {
  return (casting === undefined ? undefined : engine.castings[casting]?.parts) ?? engine.parts
}
