/** Every line that a restoring rule puts on the work order says how a return shows that it turned out. */
import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import type { RuleCase } from '../../src/rulebook/schema/rule.ts'
import { runCase } from '../../src/verdict/case.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { linesOf, promiseId } from '../../src/verdict/promised.ts'
import { filesOnDisk } from './files.ts'
import { PROMISED, type PromisedCase } from './promised-cases.ts'

const book = compileBook(loadRulebook(filesOnDisk()))

/** Every line promised, by its id, and what is asked to show that it turned out. */
const lines = [...book.rules.values()].flatMap(({ rule, part }) =>
  linesOf(rule).map(({ holds }, index) => ({ id: promiseId(rule.id, index), part, holds })),
)
/** The same question about the same part is one promise, whichever rule makes it. */
const promise = ({ part, holds }: (typeof lines)[number]): string => `${part} ${JSON.stringify(holds)}`
const answered = new Set(lines.filter((l) => PROMISED.some((p) => p.line === l.id)).map(promise))

function answer(line: string, given: RuleCase['given'], { engine, at, adopted = [] }: Partial<PromisedCase>): string {
  const compiled = book.promises.get(line)
  if (compiled === undefined) throw new Error(`No line ${line} is promised.`)
  const one = { name: line, given, adopted: [...adopted], then: 'met' as const }
  return runCase(book, compiled, { ...one, ...(engine === undefined ? {} : { engine }), ...(at === undefined ? {} : { at }) }).answer
}

it.each(lines.map((l) => [l.id, l] as const))('%s can be shown on the sheet of the returned work', (_id, line) => {
  expect(line.holds, 'it has no "holds"').toBeDefined()
  expect(answered.has(promise(line)), 'tests/rulebook/promised-cases.ts has no return that keeps it and none that breaks it').toBe(true)
})

describe.each(PROMISED.map((p) => [p.line, p] as const))('%s', (line, promised) => {
  it('is accepted on a good return', () => {
    expect(answer(line, promised.kept, promised)).toBe('met')
  })
  it('is broken by a bad one', () => {
    expect(answer(line, promised.broken, promised)).toBe('not met')
  })
  it('is measured again where nobody wrote it down', () => {
    expect(answer(line, {}, {})).toBe('unknown')
  })
})
