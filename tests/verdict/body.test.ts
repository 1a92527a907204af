import * as fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { canonicalBytes } from '../../src/ledger/canonical.ts'
import { bodyOf, verdictsOf } from '../../src/verdict/body.ts'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge } from '../../src/verdict/judge.ts'
import { sheetFromText } from '../../src/verdict/sheet.ts'
import type { Verdict } from '../../src/verdict/verdict.ts'
import { adopter, book, entered, judged, randomSheet } from './sheets.ts'

/** What a leaf waits for is kept only where that is another fact: its own is plain from where it stands. */
const withoutOwnNeeds = (verdicts: readonly Verdict[]) =>
  verdicts.map((v) => ({
    ...v,
    steps: v.steps.map((s) => ({
      ...s,
      facts: s.facts.map(({ needs, ...leaf }) => {
        const others = needs?.filter((n) => n !== `${v.part}:${leaf.fact}@${v.at}`) ?? []
        return others.length === 0 ? leaf : { ...leaf, needs: others }
      }),
    })),
  }))

it('a body written out again is the verdicts that the judge made, word for word', async () => {
  await fc.assert(
    fc.asyncProperty(randomSheet, async (sheet) => {
      const judgement = await judged(sheet, adopter)
      const body = bodyOf(entered(sheet, adopter), judgement, 'edition', '0.95')
      expect(verdictsOf(body)).toEqual(withoutOwnNeeds(judgement.verdicts))
      expect(verdictsOf(JSON.parse(JSON.stringify(body)) as typeof body)).toEqual(verdictsOf(body))
    }),
    { numRuns: 100 },
  )
})

it('a whole head’s body stays near 100 kB', async () => {
  const text = readFileSync(new URL('../../examples/sheets/ql-6p-mixed-findings.json', import.meta.url), 'utf8')
  const sheet = enterSheet(book.book, sheetFromText(text), adopter, { name: (t) => t, note: (t) => t })
  const body = bodyOf(sheet, await judge(book, sheet, adopter, { secondOpinion: false }), 'edition', '0.95')
  expect(body.verdicts.length).toBeGreaterThan(70)
  expect(canonicalBytes(body).length).toBeLessThan(130_000)
})
