import { fault, Refused } from '../quantity/fault.ts'
import type { Engine } from './schema/engine.ts'
import type { Place } from './schema/properties.ts'

export type Port = 'intake' | 'exhaust'

/** The place that stands for the whole engine: camshaft, oil pump, the job's own choices. */
export const ENGINE = 'engine'

/** The one head of an engine with a single bank; a V names its heads by its banks. */
export const HEAD = 'head'

const LETTER: Readonly<Record<Port, string>> = { intake: 'I', exhaust: 'E' }
const PORT_WORDS: readonly (readonly [RegExp, Port])[] = [
  [/^(e|ex|exh|exhaust|exhausts)$/, 'exhaust'],
  [/^(i|in|int|inl|inlet|inlets|intake|intakes)$/, 'intake'],
]

/** Every position of a place, in the engine's own order: by bank, by cylinder, intake before exhaust as the layout says. */
export function positionsOf(engine: Engine, place: Place): readonly string[] {
  if (place === 'engine') return [ENGINE]
  if (place === 'head') return engine.layout.banks.length === 1 ? [HEAD] : engine.layout.banks.map((bank) => bank.id)
  const cylinders = engine.layout.banks.flatMap((bank) => bank.cylinders)
  if (place === 'cylinder') return cylinders.map(String)
  return cylinders.flatMap((cylinder) => engine.layout.ports.map((port) => `${cylinder}${LETTER[port]}`))
}

/** Intake or exhaust, from the position itself; undefined where the place is not a valve's. */
export function portOf(position: string): Port | undefined {
  return position.endsWith('E') ? 'exhaust' : position.endsWith('I') ? 'intake' : undefined
}

const cylinderOf = (position: string): string => position.replace(/[IE]$/, '')

/** The cylinders that a position belongs to: a valve's one, a head's bank. */
function cylindersAt(engine: Engine, position: string): readonly number[] {
  const bank = position === HEAD ? engine.layout.banks[0] : engine.layout.banks.find((b) => b.id === position)
  return bank?.cylinders ?? [Number(cylinderOf(position))]
}

/** The positions of another place that belong to this one: a valve's cylinder, a cylinder's valves, the engine's all. */
export function sameSpot(engine: Engine, from: string, place: Place): readonly string[] {
  const all = positionsOf(engine, place)
  if (place === 'engine' || from === ENGINE) return all
  const exact = all.filter((p) => p === from)
  if (exact.length > 0) return exact
  const here = cylindersAt(engine, from)
  return all.filter((p) => cylindersAt(engine, p).some((c) => here.includes(c)))
}

export interface Expansion {
  readonly positions: readonly string[]
  /** True where a group was named ("all exhaust", "rest"), so that the expansion is shown. */
  readonly group: boolean
}

/**
 * Reads a position as people write it: "3E", "E3", "3 exhaust", "#3 ex", "cyl 3" (both valves), "all", "all exhaust",
 * "left" (a bank), "rest" (those of this part that nothing else on the sheet names).
 * @param named positions of the same part that other findings name; only "rest" needs them
 * @throws Refused `position-unknown` when the engine has no such position, `position-missing` when none is given
 */
export function expandPosition(engine: Engine, place: Place, at: string | undefined, where: string, named: ReadonlySet<string>): Expansion {
  const all = positionsOf(engine, place)
  if (place === 'engine') {
    if (at === undefined || /^(engine|all|job|)$/i.test(at.trim())) return { positions: all, group: false }
    throw unknownPosition(at, where, all)
  }
  if (place === 'head' && all.length === 1 && (at === undefined || /^(head|all|the head|)$/i.test(at.trim())))
    return { positions: all, group: false }
  if (at === undefined || at.trim() === '') {
    throw new Refused([
      fault('position-missing', where, 'No position is given.', `Say where: ${examples(all)}, "all", "all exhaust" or "rest".`),
    ])
  }
  const words = at
    .toLowerCase()
    .replaceAll('#', ' ')
    .replace(/[,.]/g, ' ')
    .replace(/(\d)([a-z])/g, '$1 $2')
    .replace(/([a-z])(\d)/g, '$1 $2')
    .split(/\s+/)
    .filter(Boolean)
  let port: Port | undefined
  let cylinder: string | undefined
  let wanted: 'all' | 'rest' | undefined
  let bank: readonly number[] | undefined
  for (const word of words) {
    const asPort = PORT_WORDS.find(([re]) => re.test(word))?.[1]
    const asBank = engine.layout.banks.find((b) => b.id === word || b.words.toLowerCase() === word)?.cylinders
    if (asPort !== undefined && port === undefined) port = asPort
    else if (/^\d+$/.test(word) && cylinder === undefined) cylinder = String(Number(word))
    else if (asBank !== undefined && bank === undefined) bank = asBank
    else if (/^(all|every|each)$/.test(word)) wanted = 'all'
    else if (/^(rest|others?|remaining)$/.test(word)) wanted = 'rest'
    else if (!/^(cyl|cylinder|cylinders|no|number|valve|valves|the|bank|both|side|head|heads)$/.test(word))
      throw unknownPosition(at, where, all)
  }
  if (wanted === undefined && cylinder === undefined && bank === undefined && port === undefined) throw unknownPosition(at, where, all)
  // "exhaust" alone names no valve; only "all exhaust" does.
  if (wanted === undefined && cylinder === undefined && bank === undefined) throw unknownPosition(at, where, all)
  const positions = all.filter(
    (p) =>
      (port === undefined || place !== 'valve' || portOf(p) === port) &&
      (cylinder === undefined || cylindersAt(engine, p).includes(Number(cylinder))) &&
      (bank === undefined || cylindersAt(engine, p).some((c) => bank.includes(c))) &&
      (wanted !== 'rest' || !named.has(p)),
  )
  if (positions.length === 0 && wanted === 'rest')
    throw new Refused([
      fault(
        'rest-empty',
        where,
        'Nothing is left for "rest": every position of this part is named singly.',
        'Say which positions are meant.',
        at,
      ),
    ])
  if (positions.length === 0) throw unknownPosition(at, where, all)
  return { positions, group: positions.length !== 1 || wanted !== undefined }
}

const examples = (all: readonly string[]): string =>
  all
    .slice(0, 2)
    .map((p) => `"${p}"`)
    .join(', ')

function unknownPosition(at: string, where: string, all: readonly string[]): Refused {
  return new Refused([
    fault(
      'position-unknown',
      where,
      'This engine has no such position.',
      `Positions run ${all[0]} to ${all[all.length - 1]} (${all.length} in all); "all", "all exhaust", "rest" and a bank's name work too.`,
      at,
    ),
  ])
}
