/** Reuse is earned: on parts that were found sound, taking any one look or reading away takes the reuse away or leaves it; it never makes one. */
import * as fc from 'fast-check'
import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { enterSheet } from '../../src/verdict/enter.ts'
import { judge } from '../../src/verdict/judge.ts'
import { NOT_MEASURED, sheetFromText, type Finding, type Sheet } from '../../src/verdict/sheet.ts'
import { adopter, book, dispositions, trade } from './sheets.ts'

const folder = new URL('../../examples/sheets/', import.meta.url)
const sheets = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => sheetFromText(readFileSync(new URL(name, folder), 'utf8')))
const verdictsOf = async (sheet: Sheet, shop: typeof trade): Promise<ReadonlyMap<string, string>> =>
  dispositions(await judge(book, enterSheet(book.book, sheet, shop, { name: (t) => t, note: (t) => t }), shop, { secondOpinion: false }))

/** One property at one place, said outright to be not measured, over whatever a look at the group had answered. */
function takeAway(sheet: Sheet, n: number): Sheet | undefined {
  const entered = enterSheet(book.book, sheet, trade, { name: (t) => t, note: (t) => t }).findings
  const gone = entered[n % entered.length]
  if (gone === undefined) return undefined
  const finding: Finding = { part: gone.part, at: gone.at, property: gone.property, value: NOT_MEASURED }
  const same = sheet.findings.filter((f) => f.part === gone.part && f.property === gone.property)
  // What a group said is left as it was for the others.
  if (gone.procedure === undefined && same.some((f) => f.at !== gone.at)) return undefined
  return { ...sheet, findings: [...sheet.findings.filter((f) => !same.includes(f) || gone.procedure !== undefined), finding] }
}

it('taking one observation away from a real sheet never moves a verdict to reuse, and does take some reuses away', async () => {
  const before = new Map<Sheet, ReadonlyMap<string, string>>()
  for (const sheet of sheets) before.set(sheet, await verdictsOf(sheet, adopter))
  let lost = 0
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...sheets), fc.nat(), async (sheet, n) => {
      const without = takeAway(sheet, n)
      fc.pre(without !== undefined)
      const after = await verdictsOf(without ?? sheet, adopter)
      for (const [subject, was] of before.get(sheet) ?? []) {
        if (after.get(subject) === 'reuse') expect(was, subject).toBe('reuse')
        else if (was === 'reuse') lost += 1
      }
    }),
    { numRuns: 150 },
  )
  expect(lost).toBeGreaterThan(20)
})
