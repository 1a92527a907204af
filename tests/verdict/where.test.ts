import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { positionsInWords } from '../../src/verdict/where.ts'

describe('positions as a person says them', () => {
  it.each([
    [['3E'], '3 exhaust'],
    [['1E', '2E', '3E', '4E', '5E', '6E'], '1–6 exhaust'],
    [['1I', '2I', '4I'], '1, 2 and 4 intake'],
    [['1E', '2E', '3E', '6E'], '1–3 and 6 exhaust'],
    // A V8's banks come one after the other; a reader wants them in the order of their numbers.
    [['1I', '3I', '5I', '7I', '2I', '4I', '6I', '8I'], '1–8 intake'],
    [['1I', '1E', '2I', '2E', '3I', '3E'], '1–3 intake and exhaust'],
    [['1I', '2I', '3I', '2E'], '1–3 intake, 2 exhaust'],
    [['3'], 'cylinder 3'],
    [['4', '1', '2', '3'], 'cylinders 1–4'],
    [['engine'], ''],
    [[], ''],
  ])('%j is "%s"', (positions, words) => {
    expect(positionsInWords(positions)).toBe(words)
  })

  it('their order and repeats do not matter, and every number can be read back', () => {
    const position = fc.tuple(fc.integer({ min: 1, max: 16 }), fc.constantFrom('I', 'E')).map(([n, port]) => `${n}${port}`)
    fc.assert(
      fc.property(fc.array(position, { minLength: 1, maxLength: 30 }), (positions) => {
        const words = positionsInWords(positions)
        expect(positionsInWords([...positions].reverse().concat(positions))).toBe(words)
        expect(readBack(words)).toEqual(new Set(positions))
      }),
    )
  })
})

/** Reads the words again, by another way than they were made. */
function readBack(words: string): Set<string> {
  const found = new Set<string>()
  for (const [, numbers = '', ports = ''] of words.matchAll(/([\d–, and]+?) (intake and exhaust|intake|exhaust)/g)) {
    const spans = [...numbers.matchAll(/(\d+)(?:–(\d+))?/g)].map(([, from, to]) => [Number(from), Number(to ?? from)] as const)
    for (const [from, to] of spans) {
      for (let n = from; n <= to; n++)
        for (const letter of ['I', 'E']) if (ports.includes(letter === 'I' ? 'intake' : 'exhaust')) found.add(`${n}${letter}`)
    }
  }
  return found
}
