import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge } from '../../src/verdict/judge.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { NO_SHOP } from '../../src/verdict/shop.ts'
import { filesOnDisk } from './files.ts'

const book = compileBook(loadRulebook(filesOnDisk()))

type Given = string | boolean | { readonly value: string | readonly string[]; readonly instrument: string }
type Values = Readonly<Record<string, Given>>
type Build = Readonly<Record<string, string | boolean>>

/** Heads of both demo engines, sound and measured in full, as their sheets ask. */
const SOUND_HEAD: Readonly<Record<string, { readonly at: string; readonly build: Build; readonly values: Values }>> = {
  'QL-6P': {
    at: 'head',
    build: { casting: 'QP-1', fuel: 'lpg' },
    values: {
      crack: 'none',
      'deck.condition': 'sound',
      corrosion: 'none',
      'plug-threads': 'sound',
      'crack-test.magnetic': 'clear',
      'pressure-test.hot': 'tight',
      thickness: { value: '3.612 in', instrument: 'length-micrometer' },
      'flatness.six-inch': { value: '0.0010 in', instrument: 'surface-plate-grid' },
      'flatness.across': { value: '0.0010 in', instrument: 'surface-plate-grid' },
      'flatness.along': { value: '0.0030 in', instrument: 'surface-plate-grid' },
    },
  },
  'QL-8S': {
    at: 'left',
    build: { casting: 'QS-2', overheated: false },
    values: {
      crack: 'none',
      'deck.condition': 'sound',
      corrosion: 'none',
      'plug-threads': 'sound',
      'crack-test.penetrant': 'clear',
      'pressure-test.hot': 'tight',
      thickness: { value: '4.618 in', instrument: 'length-micrometer' },
      'flatness.six-inch': { value: '0.0010 in', instrument: 'surface-plate-grid' },
      'flatness.across': { value: '0.0010 in', instrument: 'surface-plate-grid' },
      'flatness.along': { value: '0.0020 in', instrument: 'surface-plate-grid' },
      'deck.finish': '25 uin',
    },
  },
}

const SOUND_ROD: Values = { rolls: 'true', 'ends.condition': 'smooth', 'side.condition': 'smooth' }

interface Found {
  readonly part: string
  readonly at: string
  readonly values: Values
}

async function verdictsOf(engine: string, build: Build, found: readonly Found[]): Promise<ReadonlyMap<string, string>> {
  const findings = found.flatMap(({ part, at, values }) =>
    Object.entries(values).map(([property, given]) => ({ part, at, property, ...(typeof given === 'object' ? given : { value: given }) })),
  )
  const shop = NO_SHOP(book.book.confidence.default)
  const sheet = enterSheet(book.book, sheetFrom({ job: 'heads', engine, build, findings }), shop, { name: (t) => t, note: (t) => t })
  const judgement = await judge(book, sheet, shop, { secondOpinion: true })
  for (const verdict of judgement.verdicts) expect(verdict.disagreement).toBeUndefined()
  return new Map(judgement.verdicts.map((v) => [`${v.part}@${v.at}`, v.disposition]))
}

async function headOf(engine: string, changed: Values, build: Build = {}): Promise<string | undefined> {
  const sound = SOUND_HEAD[engine]
  if (sound === undefined) throw new Error(`No sound head for ${engine}.`)
  const values = Object.fromEntries(Object.entries({ ...sound.values, ...changed }).filter(([, v]) => v !== ''))
  return (await verdictsOf(engine, { ...sound.build, ...build }, [{ part: 'head', at: sound.at, values }])).get(`head@${sound.at}`)
}

/** Every other answer that a visual property could have had than that of a clean look. */
function damagesOf(part: string): readonly (readonly [string, string])[] {
  const cls = book.book.parts.get(part)
  return Object.entries(cls?.file.procedures['bench look']?.answers ?? {}).flatMap(([name, answer]) => {
    const property = cls?.properties.get(name)?.property
    return property?.kind === 'choice' ? Object.keys(property.choices).flatMap((o) => (o === answer ? [] : [[name, o] as const])) : []
  })
}

/** Looks that do no harm by themselves. */
const HARMLESS = ['corrosion stained', 'corrosion pits-clear', 'side.condition polished']

describe.each(Object.keys(SOUND_HEAD))('a head of the %s', (engine) => {
  it('sound all over and measured: reuse', async () => {
    expect(await headOf(engine, {})).toBe('reuse')
  })

  it.each(damagesOf('head'))('%s %s is answered by a rule, repaired or not', async (name, value) => {
    for (const repair of ['none', 'specialist']) {
      const disposition = await headOf(engine, { [name]: value, 'crack.repair': repair })
      expect(HARMLESS.includes(`${name} ${value}`) ? ['reuse'] : ['recondition', 'replace'], `repair ${repair}`).toContain(disposition)
    }
  })

  it('a crack to a seat or between the valves is replaced, whatever is planned or accepted', async () => {
    for (const crack of ['seat', 'bridge'])
      expect(await headOf(engine, { crack, 'crack.repair': 'specialist', 'crack.accepted': true })).toBe('replace')
  })

  it.each(Object.keys(SOUND_HEAD[engine]?.values ?? {}))('with %s missing it is not reused', async (missing) => {
    expect(await headOf(engine, { [missing]: '' })).toBe('undetermined')
  })

  it('tested cold only, it waits for the hot test', async () => {
    expect(await headOf(engine, { 'pressure-test.hot': '', 'pressure-test.cold': 'tight' })).toBe('undetermined')
  })

  it('it leaks: where decides', async () => {
    expect(await headOf(engine, { 'pressure-test.hot': 'leaks' })).toBe('undetermined')
    expect(await headOf(engine, { 'pressure-test.hot': 'leaks', 'leak.place': 'plug' })).toBe('recondition')
    expect(await headOf(engine, { 'pressure-test.hot': 'leaks', 'leak.place': 'stud-hole' })).toBe('recondition')
    expect(await headOf(engine, { 'pressure-test.hot': 'leaks', 'leak.place': 'casting' })).toBe('replace')
    expect(await headOf(engine, { 'pressure-test.hot': 'leaks', 'leak.place': 'casting', 'crack.repair': 'specialist' })).toBe(
      'recondition',
    )
  })

  it('warped: resurfaced while metal is left, replaced when cutting the warp away would leave too little', async () => {
    const across = { 'flatness.across': { value: '0.0060 in', instrument: 'surface-plate-grid' } }
    expect(await headOf(engine, across)).toBe('recondition')
    const thin = engine === 'QL-6P' ? '3.595 in' : '4.609 in'
    const along = { 'flatness.along': { value: '0.0090 in', instrument: 'surface-plate-grid' } }
    expect(await headOf(engine, along)).toBe('recondition')
    expect(await headOf(engine, { ...along, thickness: { value: thin, instrument: 'length-micrometer' } })).toBe('replace')
  })
})

describe('a deck read over a grid', () => {
  /** Five places along, three across at each: a bow of that height in the middle. */
  const bow = (height: string, points = 15): Values => ({
    'flatness.along': '',
    'deck.grid': {
      value: ['0.0000 in', '0.0005 in', height, '0.0005 in', '0.0000 in'].flatMap((z) => [z, z, z]).slice(0, points),
      instrument: 'tenth-indicator',
    },
  })

  it('stands for the flatness along, by the closest planes that hold it', async () => {
    expect(await headOf('QL-6P', bow('0.0030 in'))).toBe('reuse')
    expect(await headOf('QL-6P', bow('0.0080 in'))).toBe('recondition')
  })

  it('with points left out it clears nothing', async () => {
    expect(await headOf('QL-6P', bow('0.0030 in', 12))).toBe('undetermined')
  })
})

describe('an aluminium head that was overheated', () => {
  it('is asked for: an aluminium head is not called good before its history is known', async () => {
    expect(await headOf('QL-8S', {}, { overheated: 'not measured' })).toBe('undetermined')
  })

  it('waits for its hardness, is kept when hard and replaced when annealed', async () => {
    expect(await headOf('QL-8S', {}, { overheated: true })).toBe('undetermined')
    expect(await headOf('QL-8S', { hardness: '95' }, { overheated: true })).toBe('reuse')
    expect(await headOf('QL-8S', { hardness: '60' }, { overheated: true })).toBe('replace')
  })

  it('bowed: straightened first, and only once its hardness is known', async () => {
    const bowed = { 'flatness.along': { value: '0.0150 in', instrument: 'surface-plate-grid' } }
    expect(await headOf('QL-8S', bowed)).toBe('undetermined')
    expect(await headOf('QL-8S', { ...bowed, hardness: '95' })).toBe('recondition')
  })

  it('a magnetic test says nothing of aluminium', async () => {
    expect(await headOf('QL-8S', { 'crack-test.penetrant': '', 'crack-test.magnetic': 'clear' })).toBe('undetermined')
  })
})

describe('the deck cut of a V8 with the haul cam', () => {
  const thick = { value: '4.625 in', instrument: 'length-micrometer' }
  const plan = async (build: Build): Promise<string | undefined> =>
    (
      await verdictsOf('QL-8S', { casting: 'QS-2', springs: 'K-2', ...build }, [
        { part: 'head', at: 'left', values: { thickness: thick } },
        { part: 'head', at: 'right', values: { thickness: thick } },
      ])
    ).get('deck-plan@engine')

  it.each([
    ['H-2', '0.010 in', 'reuse'],
    ['H-2', '0.012 in', 'undetermined'],
    ['H-2', '0.015 in', 'replace'],
    ['stock', '0.015 in', 'reuse'],
    ['stock', '0.019 in', 'reuse'],
    ['stock', '0.020 in', 'undetermined'],
    ['stock', '0.025 in', 'replace'],
  ])('%s with %s off: %s', async (camshaft, cut, disposition) => {
    expect(await plan({ camshaft, 'deck-cut': cut })).toBe(disposition)
  })

  it('only one head measured: it waits for the other', async () => {
    const verdicts = await verdictsOf('QL-8S', { casting: 'QS-2', springs: 'K-2', camshaft: 'stock', 'deck-cut': '0.010 in' }, [
      { part: 'head', at: 'left', values: { thickness: thick } },
    ])
    expect(verdicts.get('deck-plan@engine')).toBe('undetermined')
  })
})

describe('what a cut does to compression and to the manifold', () => {
  const figure = async (engine: string, build: Build, name: string): Promise<number | undefined> => {
    const shop = NO_SHOP(book.book.confidence.default)
    const sheet = enterSheet(book.book, sheetFrom({ job: 'a cut', engine, build, findings: [] }), shop, { name: (s) => s, note: (s) => s })
    const fact = (await judge(book, sheet, shop, { secondOpinion: false })).facts.fact('job', name, 'engine')
    return fact.state === 'known' && fact.form === 'quantity' ? fact.readings[0]?.value : undefined
  }

  // Ratios of the two invented engines, worked out by hand from their own sheets: swept and clearance volumes, opening times cut.
  it.each([
    ['QL-8S', '0 in', 9.64],
    ['QL-8S', '0.010 in', 9.78],
    ['QL-8S', '0.020 in', 9.92],
    ['QL-6P', '0 in', 8.63],
    ['QL-6P', '0.030 in', 9.0],
  ])('%s with %s off: %s to 1', async (engine, cut, ratio) => {
    expect(await figure(engine, { 'deck-cut': cut }, 'compression.after-cut')).toBeCloseTo(ratio, 2)
  })

  // The shop chart for 90 degrees and a face raised by 55 (common practice): 1.23 and 1.72 of the cut.
  it('intake faces and manifold of the V follow the shop chart', async () => {
    const inch = 25.4
    const build = { casting: 'QS-2', 'deck-cut': '0.020 in' }
    expect((await figure('QL-8S', build, 'intake-face-cut')) ?? 0).toBeCloseTo(0.0247 * inch, 2)
    expect((await figure('QL-8S', build, 'manifold-drop')) ?? 0).toBeCloseTo(0.0343 * inch, 2)
    expect(await figure('QL-6P', { 'deck-cut': '0.020 in' }, 'intake-face-cut')).toBeUndefined()
  })
})

describe('a pushrod', () => {
  const rod = async (changed: Values, casting = 'QS-2'): Promise<ReadonlyMap<string, string>> =>
    verdictsOf('QL-8S', { casting, camshaft: 'stock', springs: 'stock' }, [
      { part: 'pushrod', at: '3E', values: { ...SOUND_ROD, ...changed } },
    ])

  it('sound, hardened where a plate guides it: reuse', async () => {
    for (const casting of ['QS-1', 'QS-2']) expect((await rod({}, casting)).get('pushrod@3E')).toBe('reuse')
  })

  it.each(damagesOf('pushrod'))('%s %s is answered by a rule', async (name, value) => {
    const disposition = (await rod({ [name]: value, runout: { value: '0.0020 in', instrument: 'tenth-indicator' } })).get('pushrod@3E')
    expect(disposition).toBe(HARMLESS.includes(`${name} ${value}`) || value === 'doubtful' ? 'reuse' : 'replace')
  })

  it('soft in a plate is replaced; in a slot of the head it stays', async () => {
    expect((await rod({ hardened: false })).get('pushrod@3E')).toBe('replace')
    expect((await rod({ hardened: false }, 'QS-1')).get('pushrod@3E')).toBe('reuse')
  })

  it('bent, it opens what may have bent it, at its own place only', async () => {
    const verdicts = await rod({ rolls: 'wobbles' })
    for (const opened of ['spring@3E', 'rocker@3E', 'retainer@3E', 'valve@3E', 'guide-plate@3'])
      expect(verdicts.get(opened), opened).toBe('undetermined')
    expect(verdicts.has('spring@3I')).toBe(false)
    expect((await rod({})).has('spring@3E')).toBe(false)
  })
})
