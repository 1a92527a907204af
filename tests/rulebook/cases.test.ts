import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../src/rulebook/load.ts'
import { runCase } from '../../src/verdict/case.ts'
import { compileBook } from '../../src/verdict/compiled.ts'
import { filesOnDisk } from './files.ts'

const book = compileBook(loadRulebook(filesOnDisk()))

describe.each([...book.rules.values()].map((compiled) => [compiled.rule.id, compiled] as const))('%s', (_id, compiled) => {
  it.each(compiled.rule.cases.map((one) => [one.name, one] as const))('%s', (_name, one) => {
    const outcome = runCase(book, compiled, one)
    expect(outcome.answer, JSON.stringify(outcome.leaves, null, 1)).toBe(one.then)
  })

  it('has a case that meets it, and one where a fact is missing or it does not apply', () => {
    const answers = new Set(compiled.rule.cases.map((c) => c.then))
    expect([...answers]).toContain('met')
    expect([...answers].some((a) => a === 'unknown' || a === 'does not apply')).toBe(true)
  })
})
