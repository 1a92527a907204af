/** Engine sheets, read one by one: as the loader reads those of the rulebook and a shop's own are read when it puts them. */
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Refused, type Fault } from '../../src/quantity/fault.ts'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { readEngine } from '../../src/rulebook/read-engine.ts'
import type { Engine } from '../../src/rulebook/schema/engine.ts'
import { FILES } from '../../src/rulebook/shelf.ts'

const book = loadRulebook(FILES)
const file = (id: string): Engine => structuredClone(FILES[`engines/${id}.json`]) as Engine

const faultsOf = (json: unknown): readonly Fault[] => {
  try {
    readEngine(book, json)
    return []
  } catch (error) {
    if (error instanceof Refused) return error.faults
    throw error
  }
}
const places = (json: unknown): readonly string[] => faultsOf(json).map((f) => `${f.code} ${f.pointer}`)

/** Puts a value at a JSON Pointer of a copy. */
function changed(engine: Engine, at: string, value: unknown): unknown {
  const copy: unknown = structuredClone(engine)
  const keys = at
    .slice(1)
    .split('/')
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'))
  const last = keys.pop() ?? ''
  let holder = copy as Record<string, unknown>
  for (const key of keys) holder = (holder[key] ??= {}) as Record<string, unknown>
  holder[last] = value
  return copy
}

/** The places of every text of a sheet that begins with a digit and a unit of length follows. */
function lengthsIn(value: unknown, at = ''): readonly string[] {
  if (typeof value === 'string') return /^[\d./-]+ in$/.test(value) ? [at] : []
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => lengthsIn(inner, `${at}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`))
}

describe.each(['QL-6P', 'QL-8S'])('the sheet of %s', (id) => {
  it('reads as the loader reads it', () => {
    expect(readEngine(book, file(id))).toEqual(book.engines.get(id))
  })

  it('with any length said twice and differently is refused there, and both readings are shown', () => {
    const lengths = lengthsIn(file(id))
    expect(lengths.length).toBeGreaterThan(50)
    fc.assert(
      fc.property(fc.constantFrom(...lengths), (at) => {
        const faults = faultsOf(changed(file(id), at, '0.012 in (0.50 mm)'))
        expect(faults.map((f) => [f.code, f.pointer])).toEqual([['pair-disagrees', at]])
        expect(faults[0]?.says).toMatch(/0\.012 in .*0\.50 mm/)
        expect(faults[0]?.choices).toEqual(['0.012 in', '0.50 mm'])
      }),
    )
  })

  it('with any figure that has lost its unit, or is of another kind, is refused there', () => {
    for (const at of lengthsIn(file(id))) {
      expect(places(changed(file(id), at, '12'))).toEqual([`unit-missing ${at}`])
      expect(places(changed(file(id), at, '12 lb'))).toEqual([`wrong-kind ${at}`])
    }
  })
})

it('an inch and a millimetre figure that agree are one figure', () => {
  expect(faultsOf(changed(file('QL-6P'), '/limits/valve/tip-stand-min', '0.012 in (0.30 mm)'))).toEqual([])
})

describe('a sheet with a fault', () => {
  const sheet = file('QL-6P')
  it.each<[says: string, at: string, value: unknown, ...places: string[]]>([
    ['a field that is none', '/notes', 'x', 'key-unknown /notes'],
    ['a field that is none, in a card', '/cards/springs/K-1/price', '12', 'key-unknown /cards/springs/K-1/price'],
    ['a limit that is none', '/limits/valve/shine-min', '1 mm', 'limit-unknown /limits/valve/shine-min'],
    ['a property that is none', '/facts/valve/shine', 'yes', 'property-unknown /facts/valve/shine'],
    ['limits of a part that is none', '/limits/flux-fin', { 'margin-min': '1 mm' }, 'part-unknown /limits/flux-fin'],
    [
      'facts of a part that is none, in a casting',
      '/castings/QP-1/facts/flux-fin',
      { kind: 'x' },
      'part-unknown /castings/QP-1/facts/flux-fin',
    ],
    ['a part that is none, in its list', '/parts/0', 'flux-fin', 'part-unknown /parts/0'],
    ['a part that is none, in a casting’s list', '/castings/QP-1/parts', ['job', 'flux-fin'], 'part-unknown /castings/QP-1/parts/1'],
    ['a kind of card that nobody asks for', '/cards/camshafts', {}, 'card-unknown /cards/camshafts'],
    ['a card that it does not offer', '/facts/job/springs-asked', 'K-9', 'card-unknown /facts/job/springs-asked'],
    ['a choice that is none', '/facts/valve/kind/exhaust', 'golden', 'choice-unknown /facts/valve/kind/exhaust'],
    ['yes for true', '/facts/job/valves-out', 'yes', 'not-yes-no /facts/job/valves-out'],
    ['true for a figure', '/facts/job/spring-pocket', true, 'wrong-kind /facts/job/spring-pocket'],
    ['a number for a figure', '/limits/valve/tip-stand-min', 0.06, 'shape /limits/valve/tip-stand-min'],
    ['a figure of one port alone', '/limits/valve/margin-min', { intake: '1 mm' }, 'field-missing /limits/valve/margin-min/exhaust'],
    [
      'a port misspelt',
      '/limits/valve/margin-min',
      { intake: '1 mm', exhaust: '1 mm', exhuast: '1 mm' },
      'key-unknown /limits/valve/margin-min/exhuast',
    ],
    ['ports where there are none', '/limits/head/thickness-min', { intake: '3 in', exhaust: '3 in' }, 'shape /limits/head/thickness-min'],
    ['a figure that no engine has', '/facts/job/cylinder.bore', '3.875 mm', 'out-of-range /facts/job/cylinder.bore'],
    ['a doubt that is none', '/facts/job/chamber.volume/doubt', '1 mm', 'wrong-kind /facts/job/chamber.volume/doubt'],
    ['a doubt below nothing', '/facts/job/chamber.volume/doubt', '-1 cc', 'sign-not-allowed /facts/job/chamber.volume/doubt'],
    ['a doubt of a choice', '/facts/job/studs', { value: 'pressed', doubt: '1 mm' }, 'unit-unwanted /facts/job/studs/doubt'],
    ['a cylinder twice', '/layout/banks/0/cylinders', [1, 2, 2], 'layout-unusable /layout/banks/0/cylinders/2'],
    ['a bank that reads as a position', '/layout/banks/0/id', 'all', 'layout-unusable /layout/banks/0/id'],
    ['a bank that reads as a cylinder', '/layout/banks/0/id', '1', 'layout-unusable /layout/banks/0/id'],
    ['a port twice', '/layout/ports', ['intake', 'intake'], 'layout-unusable /layout/ports/1'],
    [
      'more cylinders than any engine',
      '/layout/banks/0/cylinders',
      Array.from({ length: 2000 }, (_, i) => i + 1),
      'layout-unusable /layout/banks',
    ],
  ])('%s', (_says, at, value, ...wanted) => {
    expect(places(changed(sheet, at, value))).toEqual(wanted)
  })

  it('is told which fields may stand there, from the schema itself', () => {
    const [fault] = faultsOf(changed(sheet, '/castings/QP-1/sayz', 'x'))
    expect(fault?.mend).toBe('Fields here are says, parts, facts, limits.')
  })

  it('work that is never judged is not brought in by the engine’s sheet', () => {
    const [part, name, choice] =
      [...book.parts.values()].flatMap((cls) =>
        [...cls.properties].flatMap(([property, { property: p }]) =>
          p.kind !== 'choice'
            ? []
            : Object.entries(p.choices).flatMap(([id, c]) => (c.declined === undefined ? [] : [[cls.id, property, id] as const])),
        ),
      )[0] ?? []
    expect(choice, 'the vocabulary declines something').toBeDefined()
    expect(places(changed(sheet, `/facts/${part}/${name}`, choice))).toEqual([`declined /facts/${part}/${name}`])
  })

  it('names every fault at once, those of what is sound in shape beside those of what is not', () => {
    let bad: unknown = changed(sheet, '/limits/valve/margin-min', 0.04)
    for (const [at, value] of [
      ['/limits/valve/tip-stand-min', '0.060 in (1.70 mm)'],
      ['/limits/valve/shine-min', '1 mm'],
      ['/layout/banks/0/cylinders', [1, 'two']],
      ['/facts/job/duty', 'leisure'],
      ['/castings/QP-0', { facts: {} }],
      ['/cards/seals/PS-56/limits/guide/top-diameter-min', '0.532'],
      ['/notes', 'x'],
    ] as const)
      bad = changed(bad as Engine, at, value)
    expect([...places(bad)].sort()).toEqual([
      'choice-unknown /facts/job/duty',
      'field-missing /castings/QP-0/says',
      'key-unknown /notes',
      'limit-unknown /limits/valve/shine-min',
      'pair-disagrees /limits/valve/tip-stand-min',
      'shape /layout/banks/0/cylinders/1',
      'shape /limits/valve/margin-min',
      'unit-missing /cards/seals/PS-56/limits/guide/top-diameter-min',
    ])
  })

  it.each([[null], [[]], ['QL-6P'], [7], [{}], [undefined]])('%j is no sheet', (json) => {
    expect(faultsOf(json).length).toBeGreaterThan(0)
  })

  it('takes no name of an object’s own for a part, a limit or a choice', () => {
    for (const name of ['constructor', 'tostring', 'valueof']) {
      expect(places(changed(sheet, `/facts/${name}`, { kind: 'x' }))).toEqual([`part-unknown /facts/${name}`])
      expect(places(changed(sheet, '/facts/job/duty', name))).toEqual(['choice-unknown /facts/job/duty'])
      expect(places(changed(sheet, '/facts/job/springs-asked', name))).toEqual(['card-unknown /facts/job/springs-asked'])
    }
  })
})

describe('in rules/engines', () => {
  it('the loader asks the same, and names the file', () => {
    const engine = changed(file('QL-6P'), '/cards/springs/K-1/limits/spring/seat-load-spec', '105 lb (90 N)')
    expect(() => loadRulebook({ ...FILES, 'engines/QL-6P.json': engine })).toThrow(Refused)
    try {
      loadRulebook({ ...FILES, 'engines/QL-6P.json': engine })
    } catch (error) {
      expect(error instanceof Refused ? error.faults.map((f) => `${f.code} ${f.pointer}`) : error).toEqual([
        'pair-disagrees /engines~1QL-6P.json/cards/springs/K-1/limits/spring/seat-load-spec',
      ])
    }
  })
})
