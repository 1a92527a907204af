import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge } from '../../src/verdict/judge.ts'
import { sheetFrom } from '../../src/verdict/sheet.ts'
import { NO_SHOP } from '../../src/verdict/shop.ts'
import { filesOnDisk } from './files.ts'

const book = compileBook(loadRulebook(filesOnDisk()))
const valve = book.book.parts.get('valve')
if (valve === undefined) throw new Error('The rulebook has no valve.')
const at = '3E'

type Values = Readonly<Record<string, { readonly value: string | boolean | readonly string[]; readonly instrument?: string }>>

/** A sound exhaust valve of the QL-6P, everything looked at and measured. */
const sound: Values = {
  kind: { value: 'hard-faced' },
  'special-mark': { value: false },
  'tip.condition': { value: 'sound' },
  'stem.condition': { value: 'sound' },
  'stem.plated': { value: false },
  'stem.bent': { value: false },
  'keeper-groove.condition': { value: 'sound' },
  'keeper-groove.holds-new-keepers': { value: true },
  'face.condition': { value: 'sound' },
  'head.condition': { value: 'sound' },
  length: { value: '4.918 in', instrument: 'length-micrometer' },
  margin: { value: '0.070 in', instrument: 'caliper' },
  'face.runout': { value: '0.0010 in', instrument: 'tenth-indicator' },
  'stem.diameter': { value: ['0.3708 in', '0.3708 in', '0.3707 in', '0.3707 in', '0.3706 in', '0.3706 in'], instrument: 'micrometer' },
}

async function dispositionOf(values: Values): Promise<string | undefined> {
  const findings = Object.entries(values).map(([property, given]) => ({ part: 'valve', at, property, ...given }))
  const shop = NO_SHOP(book.book.confidence.default)
  const sheet = enterSheet(book.book, sheetFrom({ job: 'a valve', engine: 'QL-6P', findings }), shop, { name: (t) => t, note: (t) => t })
  const judgement = await judge(book, sheet, shop, { secondOpinion: true })
  const verdict = judgement.verdicts.find((v) => v.part === 'valve' && v.at === at)
  expect(verdict?.disagreement).toBeUndefined()
  return verdict?.disposition
}

const choicesOf = (name: string): readonly string[] => {
  const property = valve.properties.get(name)?.property
  return property?.kind === 'choice' ? Object.keys(property.choices) : []
}

const KINDS = choicesOf('kind')
const LOOKS = ['tip.condition', 'stem.condition', 'keeper-groove.condition', 'face.condition', 'head.condition']

describe('a valve that was looked at and measured in full', () => {
  it.each(KINDS)('sound all over, %s: reuse', async (kind) => {
    expect(await dispositionOf({ ...sound, kind: { value: kind } })).toBe('reuse')
  })

  const damages = LOOKS.flatMap((look) =>
    choicesOf(look)
      .filter((c) => c !== 'sound')
      .map((c) => [look, c] as const),
  )
  it.each(damages)('%s %s is answered by a rule, whatever the kind, mark and plating', async (look, damage) => {
    for (const kind of KINDS) {
      for (const mark of [false, true]) {
        for (const plated of [false, true]) {
          const disposition = await dispositionOf({
            ...sound,
            kind: { value: kind },
            'special-mark': { value: mark },
            'stem.plated': { value: plated },
            [look]: { value: damage },
          })
          expect(['recondition', 'replace'], `${kind}, mark ${mark}, plated ${plated}`).toContain(disposition)
        }
      }
    }
  })

  it.each(['tip.condition', 'face.condition'])(
    'no damage at %s sends a filled, nitrided or titanium valve to the grinder',
    async (look) => {
      for (const damage of choicesOf(look).filter((c) => c !== 'sound')) {
        for (const kind of ['sodium-filled', 'nitrided', 'titanium']) {
          expect(await dispositionOf({ ...sound, kind: { value: kind }, [look]: { value: damage } }), `${kind}, ${damage}`).toBe('replace')
        }
        expect(await dispositionOf({ ...sound, 'special-mark': { value: true }, [look]: { value: damage } }), `marked, ${damage}`).toBe(
          'replace',
        )
      }
    },
  )

  it.each(Object.keys(sound).filter((name) => !['kind', 'stem.plated', 'special-mark'].includes(name)))(
    'with %s missing it is not reused',
    async (missing) => {
      expect(await dispositionOf(Object.fromEntries(Object.entries(sound).filter(([name]) => name !== missing)))).toBe('undetermined')
    },
  )
})
