/** Rules across parts: sets that go as one, what a struck valve opens, and what is asked of returned work only. */
import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge, type Judgement } from '../../src/verdict/judge.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { NO_SHOP } from '../../src/verdict/shop.ts'
import { filesOnDisk } from './files.ts'

const book = compileBook(loadRulebook(filesOnDisk()))

type Value = string | boolean | readonly string[]
interface Finding {
  readonly part: string
  readonly at: string
  readonly property: string
  readonly value: Value
  readonly instrument?: string
}
const found = (part: string, at: string, property: string, value: Value, instrument?: string): Finding => ({
  part,
  at,
  property,
  value,
  ...(instrument === undefined ? {} : { instrument }),
})

const STOCK = { casting: 'QP-1', camshaft: 'stock', springs: 'stock', seals: 'stock', fuel: 'petrol', 'oil-pump': 'standard' }

async function judged(findings: readonly Finding[], stage: 'received' | 'returned' = 'received', build: object = {}): Promise<Judgement> {
  const shop = {
    ...NO_SHOP(book.book.confidence.default),
    adoptions: ['vacuum-share-min', 'vacuum-loss-max', 'vacuum-below-mates-max'].map((limit) => ({
      part: 'seat',
      limit,
      by: 'x',
      on: 'x',
    })),
  }
  const sheet = sheetFrom({ job: 'sets', engine: 'QL-6P', stage, build: { ...STOCK, ...build }, findings })
  const judgement = await judge(book, enterSheet(book.book, sheet, shop, { name: (t) => t, note: (t) => t }), shop, { secondOpinion: true })
  expect(judgement.secondOpinion.agrees).toBe(true)
  return judgement
}

const of = (judgement: Judgement, part: string, at = 'engine'): string | undefined =>
  judgement.verdicts.find((v) => v.part === part && v.at === at)?.disposition
const met = (judgement: Judgement, rule: string): boolean =>
  judgement.verdicts.some((v) => v.steps.some((s) => s.rule === rule && s.outcome === 'met'))

const rusted = (...at: readonly string[]): readonly Finding[] => at.map((p) => found('spring', p, 'surface', 'rusted'))

describe('springs go as a set', () => {
  it('where a quarter of them fails: three of twelve, not two', async () => {
    expect(of(await judged(rusted('1I', '3E')), 'spring-set')).toBe('reuse')
    const three = await judged(rusted('1I', '3E', '5E'))
    expect(of(three, 'spring-set')).toBe('replace')
    expect(three.verdicts.filter((v) => v.part === 'spring').every((v) => v.governing === 'set' && v.open.length === 0)).toBe(true)
  })

  it('what may still fail leaves the set open', async () => {
    const asked = [...rusted('1I', '3E'), found('spring', '5E', 'free-length', '1.950 in', 'caliper')]
    expect(of(await judged(asked), 'spring-set')).toBe('undetermined')
  })

  it('where one is broken', async () => {
    const judgement = await judged([found('spring', '4I', 'surface', 'broken')])
    expect(of(judgement, 'spring-set')).toBe('replace')
    expect(met(judgement, 'job.spring-broke-why')).toBe(true)
  })
})

describe('exhaust valves', () => {
  const burned = (...at: readonly string[]): readonly Finding[] => at.map((p) => found('valve', p, 'face.condition', 'burned'))

  it('go as a set where two fail; one is offered with its mates on hard duty, and its cause is sought', async () => {
    const one = await judged(burned('3E'))
    expect([of(one, 'exhaust-set') === 'replace', met(one, 'job.exhaust-offered'), met(one, 'job.exhaust-burned-why')]).toEqual([
      false,
      true,
      true,
    ])
    expect(of(await judged(burned('3E', '5E')), 'exhaust-set')).toBe('replace')
  })

  it('are not counted by the intakes', async () => {
    expect(of(await judged(burned('3I', '5I', '1E')), 'exhaust-set')).not.toBe('replace')
  })
})

describe('a valve that met a piston', () => {
  const rocker = [found('rocker', '6I', 'looked-over', 'bench look'), found('rocker-stud', '6I', 'looked-over', 'bench look')]
  it('opens rockers at every position, and the piston crowns', async () => {
    expect(of(await judged(rocker), 'rocker', '6I')).toBe('reuse')
    const struck = await judged([...rocker, found('valve', '2E', 'head.condition', 'struck')])
    expect(of(struck, 'rocker', '6I')).toBe('undetermined')
    expect(of(struck, 'damage')).toBe('undetermined')
    expect(struck.verdicts.find((v) => v.part === 'damage')?.open.map((q) => q.fact)).toEqual(['pistons.crowns'])
    const looked = await judged([...rocker, found('valve', '2E', 'head.condition', 'struck')], 'received', { 'pistons.crowns': 'unmarked' })
    expect(of(looked, 'damage')).toBe('reuse')
  })

  it('or lost its head, likewise', async () => {
    const dropped = await judged([...rocker, found('valve', '2E', 'head.condition', 'broken')])
    expect([of(dropped, 'valve', '2E'), of(dropped, 'rocker', '6I'), of(dropped, 'damage')]).toEqual([
      'replace',
      'undetermined',
      'undetermined',
    ])
  })
})

it('two grooved studs open the rockers of all positions, one only its own', async () => {
  const groove = (at: string): Finding => found('rocker-stud', at, 'shoulder.groove-felt', true)
  const sound = [found('rocker', '6I', 'looked-over', 'bench look'), found('rocker-stud', '6I', 'looked-over', 'bench look')]
  expect(of(await judged([...sound, groove('1E')]), 'rocker', '6I')).toBe('reuse')
  expect(of(await judged([...sound, groove('1E'), groove('3E')]), 'rocker', '6I')).toBe('undetermined')
})

it('a performance rebuild waits until each recommendation is adopted or declined', async () => {
  const answers = { valves: 'adopted', seals: 'adopted', studs: 'declined', seats: 'adopted' }
  const build = { rebuild: 'performance', ...Object.fromEntries(Object.entries(answers).map(([k, v]) => [`recommend.${k}`, v])) }
  const waiting = await judged([], 'received', build)
  expect(of(waiting, 'performance-build')).toBe('undetermined')
  expect(waiting.verdicts.find((v) => v.part === 'performance-build')?.open.map((q) => q.fact)).toEqual(['recommend.kit'])
  expect(of(await judged([], 'received', { ...build, 'recommend.kit': 'declined' }), 'performance-build')).toBe('reuse')
})

it('a repair is held against the price of an exchange head', async () => {
  expect(of(await judged([], 'received', { 'repair.price-share': '0.7' }), 'repair-or-exchange')).toBe('reuse')
  expect(of(await judged([], 'received', { 'repair.price-share': '1.3' }), 'repair-or-exchange')).toBe('replace')
})

describe('asked of returned work only', () => {
  /** Sound findings of each class, and what a return must show beside them. */
  const SPRING: readonly Finding[] = [
    found('spring', '3E', 'looked-over', 'bench look'),
    found('spring', '3E', 'free-length', '1.960 in', 'caliper'),
    found('spring', '3E', 'squareness', '0.020 in', 'square-and-feeler'),
    found('spring', '3E', 'seat-load', '85 lb', 'calibrated-spring-tester'),
    found('spring', '3E', 'seat-load.height', '1.700 in', 'height-micrometer'),
  ]
  const BACK: readonly (readonly [string, readonly Finding[], Finding, Finding])[] = [
    [
      'spring',
      SPRING,
      found('spring', '3E', 'installed-height', '1.702 in', 'height-micrometer'),
      found('spring', '3E', 'installed-height', '1.672 in', 'height-micrometer'),
    ],
    [
      'retainer',
      [found('retainer', '3E', 'looked-over', 'bench look')],
      found('retainer', '3E', 'seal-room', '0.098 in', 'depth-micrometer'),
      found('retainer', '3E', 'seal-room', '0.041 in', 'depth-micrometer'),
    ],
    [
      'rocker-stud',
      [found('rocker-stud', '3E', 'looked-over', 'bench look')],
      found('rocker-stud', '3E', 'nut.drag', '14 lb in'),
      found('rocker-stud', '3E', 'nut.drag', '6 lb in'),
    ],
    [
      'rocker',
      [
        found('rocker', '3E', 'looked-over', 'bench look'),
        found('rocker-stud', '3E', 'looked-over', 'bench look'),
        found('rocker', '3E', 'slot.clearance', ['0.060 in', '0.050 in', '0.045 in', '0.044 in']),
      ],
      found('rocker', '3E', 'sweep.centred', true),
      found('rocker', '3E', 'sweep.centred', false),
    ],
  ]

  it.each(BACK)(
    '%s: passes on received work, waits on a return, is accepted or sent back by what is measured',
    async (part, sound, good, bad) => {
      const answer = async (findings: readonly Finding[], stage: 'received' | 'returned'): Promise<string | undefined> =>
        of(await judged(findings, stage), part, '3E')
      expect(await answer(sound, 'received')).toBe('reuse')
      expect(await answer(sound, 'returned')).toBe('undetermined')
      expect(await answer([...sound, good], 'returned')).toBe('reuse')
      expect(await answer([...sound, bad], 'returned')).toBe('recondition')
    },
  )

  const gauge = 'vacuum-gauge'
  const FINISHED: readonly Finding[] = [
    found('job', 'engine', 'galleries.swab', 'white'),
    found('job', 'engine', 'pressure-test.minutes', '20'),
    found('head', 'head', 'pressure-test.hot', 'tight'),
    found('head', 'head', 'pressure-test.pressure', '40 psi'),
    found('head', 'head', 'pressure-test.temperature', '190 degF'),
    found('job', 'engine', 'vacuum.rig', '25 inHg', gauge),
    found('seat', 'all', 'vacuum.stem-sealed', true),
    found('seat', 'all', 'vacuum.share', '0.96'),
    found('seat', 'all', 'vacuum.loss', '1 inHg', gauge),
    found('seat', 'all', 'vacuum.below-mates', '0.5 inHg', gauge),
    found('job', 'engine', 'tips.spread', '0.009 in', 'depth-micrometer'),
    found('spring', 'all', 'installed-height', '1.702 in', 'height-micrometer'),
  ]
  const instead = (finding: Finding): readonly Finding[] => [
    ...FINISHED.filter((f) => f.part !== finding.part || f.property !== finding.property),
    finding,
  ]

  it('the finished head: not spoken of before, accepted when every figure is there', async () => {
    expect(of(await judged([]), 'finished-head')).toBeUndefined()
    expect(of(await judged([], 'returned'), 'finished-head')).toBe('undetermined')
    expect(of(await judged(FINISHED, 'returned'), 'finished-head')).toBe('reuse')
  })

  it.each(FINISHED.map((f) => [f.property, f] as const))('the finished head waits for %s', async (_property, one) => {
    expect(
      of(
        await judged(
          FINISHED.filter((f) => f !== one),
          'returned',
        ),
        'finished-head',
      ),
    ).toBe('undetermined')
  })

  it.each([
    found('job', 'engine', 'galleries.swab', 'dirty'),
    found('job', 'engine', 'pressure-test.minutes', '5'),
    found('head', 'head', 'pressure-test.hot', 'leaks'),
    found('head', 'head', 'pressure-test.temperature', '90 degF'),
    found('seat', 'all', 'vacuum.stem-sealed', false),
    found('seat', 'all', 'vacuum.share', '0.7'),
    found('job', 'engine', 'tips.spread', '0.035 in', 'depth-micrometer'),
  ])('the finished head goes back: $part $property $value', async (finding) => {
    expect(of(await judged(instead(finding), 'returned'), 'finished-head')).toBe('recondition')
  })

  it('heights that differ from spring to spring send it back, though each is inside its band', async () => {
    const heights = [
      ...FINISHED.filter((f) => f.property !== 'installed-height'),
      found('spring', 'all intake', 'installed-height', '1.693 in', 'height-micrometer'),
      found('spring', 'all exhaust', 'installed-height', '1.7065 in', 'height-micrometer'),
    ]
    expect(of(await judged(heights, 'returned'), 'finished-head')).toBe('recondition')
  })

  it('what was ordered once is not ordered again: no policy renews seals or springs a second time', async () => {
    const back = await judged([found('job', 'engine', 'seals.all-new', true)], 'returned', { springs: 'K-1', camshaft: 'P-2' })
    expect(of(await judged([], 'received', { springs: 'K-1', camshaft: 'P-2' }), 'spring-set')).toBe('replace')
    expect([of(back, 'seal-set'), of(back, 'camshaft-change')]).toEqual(['reuse', 'reuse'])
    expect(of(await judged([found('job', 'engine', 'seals.all-new', false)], 'returned'), 'seal-set')).toBe('replace')
  })
})
