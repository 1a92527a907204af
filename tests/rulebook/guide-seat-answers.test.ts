import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge, type Judgement } from '../../src/verdict/judge.ts'
import { planOf } from '../../src/verdict/plan.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { NO_SHOP } from '../../src/verdict/shop.ts'
import { filesOnDisk } from './files.ts'

const book = compileBook(loadRulebook(filesOnDisk()))

type Value = string | boolean | readonly string[]
type Finding = {
  readonly part: string
  readonly at: string
  readonly property: string
  readonly value: Value
  readonly instrument?: string
}
type Build = Readonly<Record<string, string | boolean>>

const found = (part: string, at: string, property: string, value: Value, instrument?: string): Finding => ({
  part,
  at,
  property,
  value,
  ...(instrument === undefined ? {} : { instrument }),
})
const six = (one: string): readonly string[] => Array.from({ length: 6 }, () => one)

/** Hardened inserts, petrol, the parts that came in it. */
const PETROL: Build = { casting: 'QP-1', fuel: 'petrol', camshaft: 'stock', springs: 'stock', seals: 'stock' }

/** An exhaust guide of the QL-6P inside new fit all over, its stem measured. */
const guideSound = (at = '3E'): readonly Finding[] => [
  found('guide', at, 'looked-over', 'bench look'),
  found('guide', at, 'bore', six('0.3736 in'), 'dial-bore-gauge'),
  found('valve', at, 'stem.diameter', six('0.3711 in'), 'micrometer'),
]

/** A seat on such a guide, looked at and measured as far as its checks ask. */
const seatSound = (at = '3E', width = '0.080 in'): readonly Finding[] => [
  ...guideSound(at),
  found('seat', at, 'looked-over', 'bench look'),
  found('seat', at, 'ring.place', 'centred'),
  found('seat', at, 'ring.bare-both-sides', true),
  found('seat', at, 'width', width, 'engraved-scale'),
  found('seat', at, 'runout', '0.0010 in', 'tenth-indicator'),
]

async function judged(findings: readonly Finding[], build: Build = PETROL, engine = 'QL-6P'): Promise<Judgement> {
  const shop = NO_SHOP(book.book.confidence.default)
  // A later finding of one property stands for an earlier one, so that a test can change one thing.
  const last = [...new Map(findings.map((f) => [`${f.part} ${f.at} ${f.property}`, f])).values()]
  const sheet = enterSheet(book.book, sheetFrom({ job: 'guides and seats', engine, build, findings: last }), shop, {
    name: (t) => t,
    note: (t) => t,
  })
  return judge(book, sheet, shop, { secondOpinion: true })
}

async function dispositionOf(part: string, findings: readonly Finding[], build: Build = PETROL, at = '3E'): Promise<string | undefined> {
  const verdict = (await judged(findings, build)).verdicts.find((v) => v.part === part && v.at === at)
  expect(verdict?.disagreement).toBeUndefined()
  return verdict?.disposition
}

/** Every answer that a clean look could have had instead, over all procedures of a class. */
function damagesOf(part: string): readonly (readonly [string, string | boolean])[] {
  const cls = book.book.parts.get(part)
  return Object.values(cls?.file.procedures ?? {}).flatMap(({ answers }) =>
    Object.entries(answers).flatMap(([name, answer]) => {
      const property = cls?.properties.get(name)?.property
      const others = property?.kind === 'choice' ? Object.keys(property.choices) : [true, false]
      return others.filter((o) => o !== answer).map((o) => [name, o] as const)
    }),
  )
}

const choicesOf = (part: string, name: string): readonly string[] => {
  const property = book.book.parts.get(part)?.properties.get(name)?.property
  return property?.kind === 'choice' ? Object.keys(property.choices) : []
}

/** What a look finds that is no damage: the part goes back, and something is said. */
const NO_DAMAGE = new Set(['guide knurled true', 'seat insert.hold dull-when-tapped'])

describe('guide', () => {
  const materials = choicesOf('guide', 'material')

  it.each(materials)('inside new fit, %s: reuse', async (material) => {
    expect(await dispositionOf('guide', [...guideSound(), found('guide', '3E', 'material', material)])).toBe('reuse')
  })

  it.each(damagesOf('guide'))('%s %s is answered by a rule, whatever it is made of', async (name, value) => {
    for (const material of materials) {
      const disposition = await dispositionOf('guide', [
        ...guideSound(),
        found('guide', '3E', 'material', material),
        found('guide', '3E', name, value),
      ])
      const wanted = NO_DAMAGE.has(`guide ${name} ${String(value)}`) ? ['reuse'] : ['replace', 'recondition']
      expect(wanted, `${material}, ${name} ${String(value)}`).toContain(disposition)
    }
  })

  const bores = [
    ['worn past its limit', '0.3772 in'],
    ['too tight for its stem', '0.3726 in'],
    ['over new fit, valves out of a pump engine', '0.3751 in'],
  ] as const
  it.each(bores)('%s is answered, whatever it is made of', async (_says, worst) => {
    for (const material of materials) {
      const bore = [...six('0.3736 in').slice(1), worst]
      const disposition = await dispositionOf('guide', [
        ...guideSound(),
        found('guide', '3E', 'bore', bore, 'dial-bore-gauge'),
        found('guide', '3E', 'material', material),
      ])
      expect(['replace', 'recondition'], `${material}, ${worst}`).toContain(disposition)
    }
  })

  it('rocking clears no guide and condemns none', async () => {
    const rocked = (play: string): readonly Finding[] => [
      found('guide', '3E', 'looked-over', 'bench look'),
      found('guide', '3E', 'side-play', play, 'tenth-indicator'),
      found('guide', '3E', 'side-play.from-guide', '1.200 in', 'caliper'),
    ]
    expect(await dispositionOf('guide', rocked('0.0030 in'))).toBe('undetermined')
    expect(await dispositionOf('guide', rocked('0.0400 in'))).toBe('undetermined')
  })

  it('the largest bore stands against the smallest stem, the smallest against the largest', async () => {
    const stem = [...six('0.3715 in').slice(1), '0.3701 in']
    const sheet = [
      ...guideSound(),
      found('valve', '3E', 'stem.diameter', stem, 'micrometer'),
      found('guide', '3E', 'material', 'pressed-iron'),
    ]
    const fact = (
      await judged([...sheet, found('guide', '3E', 'bore', [...six('0.3736 in').slice(1), '0.3760 in'], 'dial-bore-gauge')])
    ).facts.fact('guide', 'clearance', '3E')
    const values = fact.state === 'known' && fact.form === 'quantity' ? fact.readings.map((r) => r.value / 25.4) : []
    expect(Math.max(...values)).toBeCloseTo(0.0059, 6)
    expect(Math.min(...values)).toBeCloseTo(0.0021, 6)
  })

  it.each(['bore', 'condition', 'loose'])('with %s missing it is not reused', async (name) => {
    const sound = [
      ...guideSound().filter((f) => f.property !== 'looked-over'),
      found('guide', '3E', 'condition', 'sound'),
      found('guide', '3E', 'loose', false),
      found('guide', '3E', 'material', 'pressed-iron'),
    ]
    expect(await dispositionOf('guide', sound)).toBe('reuse')
    expect(
      await dispositionOf(
        'guide',
        sound.filter((f) => f.property !== name),
      ),
    ).toBe('undetermined')
  })
})

describe('seat', () => {
  const MAKES: readonly (readonly [make: string, metal: string])[] = [
    ['insert', 'hard-alloy'],
    ['insert', 'plain-iron'],
    ['insert', 'copper-alloy'],
    ['integral', 'induction-hardened'],
    ['integral', 'plain-iron'],
  ]
  const made = (at: string, [make, metal]: readonly [string, string]): readonly Finding[] => [
    found('seat', at, 'make', make),
    found('seat', at, 'metal', metal),
    found('seat', at, 'cut.before', false),
  ]
  /** An intake, where no fuel or duty asks for an insert on petrol. */
  const intake = [
    ...seatSound('3I', '0.052 in'),
    found('guide', '3I', 'bore', six('0.3738 in'), 'dial-bore-gauge'),
    found('valve', '3I', 'stem.diameter', six('0.3720 in'), 'micrometer'),
  ]

  it.each(MAKES)('sound all over, %s of %s: reuse', async (...make) => {
    expect(await dispositionOf('seat', [...intake, ...made('3I', make)], PETROL, '3I')).toBe('reuse')
  })

  it.each(damagesOf('seat'))('%s %s is answered by a rule, however the seat is made', async (name, value) => {
    for (const make of MAKES) {
      const disposition = await dispositionOf('seat', [...intake, ...made('3I', make), found('seat', '3I', name, value)], PETROL, '3I')
      const wanted = NO_DAMAGE.has(`seat ${name} ${String(value)}`) ? ['reuse'] : ['replace', 'recondition']
      expect(wanted, `${make.join(' of ')}, ${name} ${String(value)}`).toContain(disposition)
    }
  })

  const cutters = [
    ['high', '0.080 in', ['seat-top-cut']],
    ['high', '0.110 in', ['seat-top-cut']],
    ['low', '0.080 in', ['seat-throat-cut']],
    ['low', '0.110 in', ['seat-throat-cut']],
    ['centred', '0.110 in', ['seat-top-cut', 'seat-throat-cut']],
    ['centred', '0.055 in', ['seat-angle-cut']],
    ['high', '0.055 in', ['seat-angle-cut', 'seat-top-cut']],
    ['low', '0.055 in', ['seat-angle-cut', 'seat-throat-cut']],
    ['centred', '0.080 in', []],
  ] as const
  it.each(cutters)('ring %s and %s wide: %j', async (place, width, wanted) => {
    const sheet = { job: 'a ring', engine: 'QL-6P', build: PETROL }
    const findings = [...seatSound('3E', width), found('seat', '3E', 'ring.place', place)]
    const shop = NO_SHOP(book.book.confidence.default)
    const last = [...new Map(findings.map((f) => [`${f.part} ${f.property}`, f])).values()]
    const entered = enterSheet(book.book, sheetFrom({ ...sheet, findings: last }), shop, { name: (t) => t, note: (t) => t })
    const plan = planOf(book, entered, await judge(book, entered, shop, { secondOpinion: false }))
    const cuts = plan.workOrder.map((line) => line.operation).filter((op) => /^seat-(top|throat|angle)-cut$/.test(op))
    expect(cuts).toEqual(wanted)
  })

  it('guides come before seats: with its guide unmeasured a sound seat waits', async () => {
    expect(await dispositionOf('seat', seatSound())).toBe('reuse')
    expect(
      await dispositionOf(
        'seat',
        seatSound().filter((f) => f.property !== 'bore'),
      ),
    ).toBe('undetermined')
  })

  it('a new guide has its seat cut again', async () => {
    const worn = [...six('0.3736 in').slice(1), '0.3772 in']
    const sheet = [...seatSound(), found('guide', '3E', 'bore', worn, 'dial-bore-gauge'), found('guide', '3E', 'material', 'pressed-iron')]
    expect(await dispositionOf('guide', sheet)).toBe('replace')
    expect(await dispositionOf('seat', sheet)).toBe('recondition')
  })

  it('a spun ring does not show all-round contact', async () => {
    const spun = [...seatSound().filter((f) => f.property !== 'runout'), found('seat', '3E', 'contact.method', 'spun')]
    expect(await dispositionOf('seat', spun)).toBe('undetermined')
    expect(await dispositionOf('seat', [...spun, found('seat', '3E', 'still.seat-all-round', true)])).toBe('reuse')
  })

  it.each(['width', 'ring.place', 'ring.bare-both-sides', 'runout', 'looked-over'])('with %s missing it is not reused', async (name) => {
    expect(
      await dispositionOf(
        'seat',
        seatSound().filter((f) => f.part !== 'seat' || f.property !== name),
      ),
    ).toBe('undetermined')
  })

  it('a soft seat on gas is condemned, and what the fuel is shows nothing of the seat', async () => {
    const uncast = { fuel: 'lpg', camshaft: 'stock', springs: 'stock', seals: 'stock' }
    expect(await dispositionOf('seat', seatSound(), { ...uncast, casting: 'QP-0' })).toBe('replace')
    expect(await dispositionOf('seat', seatSound(), { ...uncast, casting: 'QP-1' })).toBe('reuse')
    expect(await dispositionOf('seat', seatSound(), uncast)).toBe('undetermined')
  })
})
