import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge } from '../../src/verdict/judge.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { NO_SHOP } from '../../src/verdict/shop.ts'
import { filesOnDisk } from './files.ts'

const book = compileBook(loadRulebook(filesOnDisk()))

type Finding = {
  readonly part: string
  readonly at: string
  readonly property: string
  readonly value: string | boolean | readonly string[]
  readonly instrument?: string
}

const look = (part: string, at: string): Finding => ({ part, at, property: 'looked-over', value: 'bench look' })
const found = (part: string, at: string, property: string, value: string | boolean, instrument?: string): Finding => ({
  part,
  at,
  property,
  value,
  ...(instrument === undefined ? {} : { instrument }),
})

/** Each class of the valve train, sound at one position and measured as far as its checks ask. */
const SOUND: Readonly<Record<string, readonly Finding[]>> = {
  'rocker-stud': [look('rocker-stud', '3E')],
  rocker: [look('rocker', '3E'), look('rocker-stud', '3E')],
  'guide-plate': [look('guide-plate', '3'), look('rocker-stud', '3E'), look('rocker-stud', '3I')],
  spring: [
    look('spring', '3E'),
    found('spring', '3E', 'free-length', '2.030 in', 'caliper'),
    found('spring', '3E', 'squareness', '0.020 in', 'square-and-feeler'),
    found('spring', '3E', 'seat-load', '89 lb', 'spring-tester'),
    found('spring', '3E', 'seat-load.height', '1.750 in', 'height-micrometer'),
  ],
  retainer: [look('retainer', '3E')],
}

async function dispositionOf(part: string, findings: readonly Finding[]): Promise<string | undefined> {
  const shop = NO_SHOP(book.book.confidence.default)
  const sheet = sheetFrom({
    job: 'a valve train',
    engine: 'QL-8S',
    build: { casting: 'QS-2', camshaft: 'stock', springs: 'stock' },
    findings,
  })
  const judgement = await judge(book, enterSheet(book.book, sheet, shop, { name: (t) => t, note: (t) => t }), shop, { secondOpinion: true })
  const verdict = judgement.verdicts.find((v) => v.part === part && (v.at === '3E' || v.at === '3'))
  expect(verdict?.disagreement).toBeUndefined()
  return verdict?.disposition
}

/** Every other answer that a visual property could have had than the one of a clean look. */
function damagesOf(part: string): readonly (readonly [string, string | boolean])[] {
  const cls = book.book.parts.get(part)
  const clean = cls?.file.procedures['bench look']?.answers ?? {}
  return Object.entries(clean).flatMap(([name, answer]) => {
    const property = cls?.properties.get(name)?.property
    const others = property?.kind === 'choice' ? Object.keys(property.choices) : [true, false]
    return others.filter((o) => o !== answer).map((o) => [name, o] as const)
  })
}

/** Ways in which a part is made: each damage is answered for all of them. */
const MAKES: Readonly<Record<string, readonly (readonly Finding[])[]>> = {
  'rocker-stud': ['pressed', 'screw-in'].map((kind) => [found('rocker-stud', '3E', 'kind', kind)]),
  rocker: ['stamped', 'cast'].map((kind) => [found('rocker', '3E', 'kind', kind)]),
  'guide-plate': [[]],
  spring: ['single', 'damped', 'dual'].map((kind) => [found('spring', '3E', 'kind', kind)]),
  retainer: ['single-groove', 'multi-groove'].map((kind) => [found('retainer', '3E', 'keepers.kind', kind)]),
}

/** What a look alone doesn't settle, with the finding that does, so that the part can be reused. */
const FOLLOWED_BY: Readonly<Record<string, readonly Finding[]>> = {
  'rocker-stud thread.condition chased': [found('rocker-stud', '3E', 'thread.gauge', 'passes')],
  'rocker track.centred false': [found('rocker', '3E', 'runs-true', true)],
  'spring bright-spots true': [found('spring', '3E', 'installed-height', '1.750 in', 'height-micrometer')],
}

describe.each(Object.keys(SOUND))('%s', (part) => {
  const sound = SOUND[part] ?? []

  it('sound all over and measured: reuse', async () => {
    for (const make of MAKES[part] ?? []) expect(await dispositionOf(part, [...sound, ...make])).toBe('reuse')
  })

  it.each(damagesOf(part))('%s %s is answered by a rule, however the part is made', async (name, value) => {
    const key = `${part} ${name} ${String(value)}`
    const at = part === 'guide-plate' ? '3' : '3E'
    for (const make of MAKES[part] ?? []) {
      // A single spring has nothing inside that could wear it.
      if (name === 'damper.step-felt' && make[0]?.value === 'single') continue
      const disposition = await dispositionOf(part, [...sound, ...make, found(part, at, name, value), ...(FOLLOWED_BY[key] ?? [])])
      expect(FOLLOWED_BY[key] === undefined ? ['replace', 'recondition'] : ['reuse'], `${key} ${String(make[0]?.value)}`).toContain(
        disposition,
      )
    }
  })

  it('nothing looked at: measured first', async () => {
    const disposition = await dispositionOf(part, [found(part, part === 'guide-plate' ? '3' : '3E', ...(UNTOLD[part] ?? ['', '']))])
    expect(disposition).toBe('undetermined')
  })
})

/** One finding that says nothing of soundness, so that the part has a verdict at all. */
const UNTOLD: Readonly<Record<string, readonly [string, string]>> = {
  'rocker-stud': ['upper-thread', '3-8-24'],
  rocker: ['kind', 'cast'],
  'guide-plate': ['rods.kind', 'hardened'],
  spring: ['kind', 'single'],
  retainer: ['keepers.kind', 'single-groove'],
}

describe('one grooved stud', () => {
  it('takes its rocker with it, opens the plate of its cylinder, and leaves the neighbours alone', async () => {
    const sheet = [
      look('rocker-stud', '3I'),
      look('rocker', '3E'),
      look('rocker', '3I'),
      look('guide-plate', '3'),
      found('rocker-stud', '3E', 'shoulder.groove-felt', true),
    ]
    expect(await dispositionOf('rocker-stud', sheet)).toBe('replace')
    expect(await dispositionOf('rocker', sheet)).toBe('replace')
    expect(await dispositionOf('guide-plate', sheet)).toBe('undetermined')
    expect(await dispositionOf('guide-plate', [...sheet, found('guide-plate', '3', 'rods.run-free', true)])).toBe('reuse')
  })
})
