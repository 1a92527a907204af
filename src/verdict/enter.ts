import { fault, pointer, Refused, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from '../rulebook/book.ts'
import { expandPosition } from '../rulebook/positions.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import { engineFor } from './engine.ts'
import { enter, enterLook, sameValue, LOOKED_OVER, whoAndWhen, type Commitments } from './enter-finding.ts'
import { readValue } from './enter-value.ts'
import type { EnteredFinding, EnteredSheet, EnteredValue, ShownExpansion } from './entered.ts'
import { partsOf } from './sheet-figures.ts'
import type { Finding, Sheet } from './sheet.ts'
import type { ShopLayer } from './shop.ts'

/**
 * Reads a sheet against the rulebook: units, positions, choices, plausible ranges. All or nothing: with any fault in it,
 * no part of the sheet is judged.
 * @throws Refused with every fault found, each with its JSON Pointer into the sheet
 */
export function enterSheet(book: Rulebook, sheet: Sheet, shop: ShopLayer, commitments: Commitments): EnteredSheet {
  const engine = engineFor(book, shop, sheet.engine)
  const faults: Fault[] = []
  const notes: string[] = []
  const build = enterBuild(book, engine, sheet, shop, faults, notes)
  const casting = castingOf(book, build)
  const has = partsOf(engine, casting)
  const named = namedPositions(book, engine, has, sheet.findings)
  const expansions: ShownExpansion[] = []
  const entered = new Map<string, { finding: EnteredFinding; where: string }>()
  const looks: { finding: Finding; where: string; part: PartClass; positions: readonly string[] }[] = []

  sheet.findings.forEach((finding, i) => {
    const where = pointer('findings', i)
    const part = partOf(book, engine, has, finding, where, faults)
    if (part === undefined) return
    if (finding.instrument !== undefined && !book.instruments.has(finding.instrument))
      faults.push(
        fault(
          'instrument-unknown',
          `${where}/instrument`,
          'No such instrument.',
          `Known are ${[...book.instruments.keys()].join(', ')}.`,
          finding.instrument,
        ),
      )
    const positions = positionsFor(engine, part, finding, where, named.get(part.id) ?? new Set(), faults, expansions)
    if (finding.property === LOOKED_OVER) {
      if (positions !== undefined) looks.push({ finding, where, part, positions })
      return
    }
    const entry = part.properties.get(finding.property)
    if (entry === undefined) {
      faults.push(
        fault(
          'property-unknown',
          `${where}/property`,
          `A ${part.file.one} has no property of that name.`,
          `Known are ${[...part.properties.keys(), LOOKED_OVER].join(', ')}.`,
          finding.property,
        ),
      )
      return
    }
    const read = readValue(book, engine, shop, entry, finding, where)
    if (!read.ok) {
      faults.push(...read.faults)
      return
    }
    notes.push(...read.notes.map((n) => `${where}: ${n}`))
    // A place that can't be read is one fault; the value may hold another, and both are said at once.
    for (const at of positions ?? [])
      enter(
        entered,
        { part: part.id, at, property: finding.property, value: read.value, ...whoAndWhen(finding, commitments) },
        where,
        faults,
      )
  })
  for (const look of looks) enterLook(look, entered, commitments, faults)
  for (const { finding, where } of entered.values()) {
    const stated = finding.part === 'job' ? build.get(finding.property) : undefined
    const kind = finding.part === 'job' ? book.parts.get('job')?.properties.get(finding.property)?.property.kind : undefined
    if (kind === 'card')
      faults.push(
        fault('state-in-build', where, 'A casting or card is stated in build, not found.', `Put it there as "${finding.property}".`),
      )
    else if (stated !== undefined && !sameValue(stated, finding.value))
      faults.push(fault('values-disagree', where, `The build states another ${finding.property}.`, 'Take the wrong one out.'))
  }
  if (faults.length > 0) throw new Refused(faults)
  return {
    job: sheet.job,
    stage: sheet.stage,
    engine,
    ...(casting === undefined ? {} : { casting }),
    build,
    findings: [...entered.values()].map((e) => e.finding).sort(byAddress),
    expansions: expansions.sort((a, b) => (`${a.part} ${a.said}` < `${b.part} ${b.said}` ? -1 : 1)),
    notes,
  }
}

const byAddress = (a: EnteredFinding, b: EnteredFinding): number => {
  const [x, y] = [`${a.part}:${a.property}@${a.at}`, `${b.part}:${b.property}@${b.at}`]
  return x < y ? -1 : x > y ? 1 : 0
}

function enterBuild(
  book: Rulebook,
  engine: Engine,
  sheet: Sheet,
  shop: ShopLayer,
  faults: Fault[],
  notes: string[],
): ReadonlyMap<string, EnteredValue> {
  const job = book.parts.get('job')
  const build = new Map<string, EnteredValue>()
  for (const [name, value] of Object.entries(sheet.build).sort(([a], [b]) => (a < b ? -1 : 1))) {
    const entry = job?.properties.get(name)
    if (entry === undefined) {
      faults.push(
        fault(
          'build-unknown',
          pointer('build', name),
          'No build choice of that name.',
          `Known are ${[...(job?.properties.keys() ?? [])].join(', ')}.`,
          name,
        ),
      )
      continue
    }
    const read = readValue(book, engine, shop, entry, { value }, pointer('build', name))
    if (read.ok) {
      build.set(name, read.value)
      notes.push(...read.notes.map((n) => `/build/${name}: ${n}`))
    } else faults.push(...read.faults.map((f) => ({ ...f, pointer: pointer('build', name) })))
  }
  return build
}

function castingOf(book: Rulebook, build: ReadonlyMap<string, EnteredValue>): string | undefined {
  for (const [name, { property }] of book.parts.get('job')?.properties ?? []) {
    const chosen = build.get(name)
    if (property.kind === 'card' && property.cards === 'castings' && chosen?.form === 'term') return String(chosen.term)
  }
  return undefined
}

function partOf(
  book: Rulebook,
  engine: Engine,
  has: readonly string[],
  finding: Finding,
  where: string,
  faults: Fault[],
): PartClass | undefined {
  const said = finding.part.trim().toLowerCase()
  const part =
    book.parts.get(said.replaceAll(' ', '-')) ??
    [...book.parts.values()].find((p) => p.file.one === said || p.file.many === said || p.file.said.includes(said))
  if (part === undefined)
    faults.push(
      fault(
        'part-unknown',
        `${where}/part`,
        'No part class of that name.',
        `Known are ${[...book.parts.keys()].join(', ')}.`,
        finding.part,
      ),
    )
  else if (!has.includes(part.id)) {
    faults.push(
      fault(
        'part-not-fitted',
        `${where}/part`,
        `${engine.id} has no ${part.file.one}${has === engine.parts ? '' : ' with this casting'}.`,
        `It has ${has.join(', ')}; if the casting has one, name the casting in build.`,
        finding.part,
      ),
    )
    return undefined
  }
  return part
}

function positionsFor(
  engine: Engine,
  part: PartClass,
  finding: Finding,
  where: string,
  named: ReadonlySet<string>,
  faults: Fault[],
  expansions: ShownExpansion[],
): readonly string[] | undefined {
  try {
    const { positions, group } = expandPosition(engine, part.place, finding.at, `${where}/at`, named)
    if (group) expansions.push({ part: part.id, said: finding.at ?? 'all', positions })
    return positions
  } catch (error) {
    if (!(error instanceof Refused)) throw error
    faults.push(...error.faults)
    return undefined
  }
}

/** Positions that findings name one by one, by part: what "rest" leaves out. */
function namedPositions(
  book: Rulebook,
  engine: Engine,
  has: readonly string[],
  findings: readonly Finding[],
): ReadonlyMap<string, ReadonlySet<string>> {
  const named = new Map<string, Set<string>>()
  for (const finding of findings) {
    const part = partOf(book, engine, has, finding, '', [])
    if (part === undefined || finding.at === undefined || /\b(rest|others?|remaining|all|every|each)\b/i.test(finding.at)) continue
    try {
      const set = named.get(part.id) ?? new Set<string>()
      for (const p of expandPosition(engine, part.place, finding.at, '', new Set()).positions) set.add(p)
      named.set(part.id, set)
    } catch (error) {
      if (!(error instanceof Refused)) throw error // reported where the finding itself is read
    }
  }
  return named
}

export { LOOKED_OVER, type Commitments }
