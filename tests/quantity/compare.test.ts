import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compare, complement, interval, kleeneAll, kleeneAny } from '../../src/quantity/compare.ts'
import type { Answer, Ordering, Spanned } from '../../src/quantity/compare.ts'
import { readQuantity } from '../../src/quantity/read.ts'
import { toKept } from '../../src/quantity/units.ts'

const Z = 1.6448536269514722 // 0.95 quantile of the standard normal distribution
const spanned = (value: number, u: number): Spanned => ({ value, u, ...interval({ value, u }, Z) })
const OPS: readonly Ordering[] = ['at-most', 'above', 'at-least', 'below']
const figure = fc.double({ min: -1000, max: 1000, noNaN: true })
const doubt = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 50, noNaN: true }))
const answer = fc.constantFrom<Answer>('met', 'not met', 'unknown')

describe('compare', () => {
  it.each<[Ordering, number, number, number, Answer]>([
    ['at-most', 1, 0, 1, 'met'],
    ['above', 1, 0, 1, 'not met'],
    ['at-least', 1, 0, 1, 'met'],
    ['below', 1, 0, 1, 'not met'],
    ['at-most', 1.0001, 0, 1, 'not met'],
    ['above', 1.0001, 0, 1, 'met'],
    ['at-most', 1, 0.1, 1, 'unknown'],
    ['at-most', 0.9, 0.1, 1, 'unknown'],
    ['at-most', 0.8, 0.1, 1, 'met'],
    ['at-most', 1.2, 0.1, 1, 'not met'],
    ['at-least', 1.2, 0.1, 1, 'met'],
    ['at-least', 0.8, 0.1, 1, 'not met'],
    ['below', 0.8, 0.1, 1, 'met'],
  ])('%s: %d ± u %d against %d is %s', (op, value, u, limit, expected) => {
    expect(compare(op, spanned(value, u), limit)).toBe(expected)
  })

  it('above is the complement of at-most, below of at-least', () => {
    fc.assert(
      fc.property(figure, doubt, figure, (value, u, limit) => {
        const x = spanned(value, u)
        expect(compare('above', x, limit)).toBe(complement(compare('at-most', x, limit)))
        expect(compare('below', x, limit)).toBe(complement(compare('at-least', x, limit)))
      }),
    )
  })

  it('at-most never gets worse for a smaller value or a larger limit, nor surer for more doubt', () => {
    const rank: Record<Answer, number> = { 'not met': 0, unknown: 1, met: 2 }
    fc.assert(
      fc.property(figure, doubt, figure, fc.double({ min: 0, max: 100, noNaN: true }), (value, u, limit, step) => {
        const now = rank[compare('at-most', spanned(value, u), limit)]
        expect(rank[compare('at-most', spanned(value - step, u), limit)]).toBeGreaterThanOrEqual(now)
        expect(rank[compare('at-most', spanned(value, u), limit + step)]).toBeGreaterThanOrEqual(now)
        const looser = compare('at-most', spanned(value, u + step), limit)
        if (u > 0 && now === rank.unknown) expect(looser).toBe('unknown')
      }),
    )
  })

  it('at-most of x is at-least of −x', () => {
    fc.assert(
      fc.property(figure, doubt, figure, (value, u, limit) => {
        expect(compare('at-most', spanned(value, u), limit)).toBe(compare('at-least', spanned(-value, u), -limit))
      }),
    )
  })

  it('numbers that are not finite are unknown, never met', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      for (const op of OPS) {
        expect(compare(op, spanned(bad, 0), 1)).toBe('unknown')
        expect(compare(op, spanned(1, bad), 1)).toBe('unknown')
        expect(compare(op, spanned(1, 0), bad)).toBe('unknown')
      }
    }
  })

  it('the answer is the same whether value and limit are written in inches or millimetres', () => {
    const instrument = { id: 'micrometer', label: 'micrometer', expanded: 0.0508, k: 2 }
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: -40, max: 40 }), fc.constantFrom(...OPS), (tenths, off, op) => {
        const inch = (n: number): string => (n / 10_000).toFixed(4)
        const mm = (n: number): string => ((n * 254) / 100_000).toFixed(5)
        const limit = Math.max(1, tenths + off)
        const answers = [`${inch(tenths)} in`, `${mm(tenths)} mm`].map((typed) => {
          const reading = readQuantity(typed, { kind: 'length', label: 'length', instrument })
          if (!reading.ok) throw new Error(reading.faults[0]?.says)
          return compare(
            op,
            spanned(reading.quantity.value, reading.quantity.u),
            typed.endsWith('in') ? toKept(inch(limit), 'in') : toKept(mm(limit), 'mm'),
          )
        })
        expect(answers[0]).toBe(answers[1])
      }),
    )
  })
})

describe('Kleene logic', () => {
  it('has the truth table of the strong three-valued logic', () => {
    const three: readonly Answer[] = ['met', 'unknown', 'not met']
    expect(three.map((a) => three.map((b) => kleeneAll([a, b])))).toEqual([
      ['met', 'unknown', 'not met'],
      ['unknown', 'unknown', 'not met'],
      ['not met', 'not met', 'not met'],
    ])
    expect(three.map((a) => three.map((b) => kleeneAny([a, b])))).toEqual([
      ['met', 'met', 'met'],
      ['met', 'unknown', 'unknown'],
      ['met', 'unknown', 'not met'],
    ])
    expect([kleeneAll([]), kleeneAny([])]).toEqual(['met', 'not met'])
  })

  it('holds De Morgan, and learning an unknown never turns met into not met', () => {
    fc.assert(
      fc.property(
        fc.array(answer),
        fc.array(fc.constantFrom<Answer>('met', 'not met'), { minLength: 20, maxLength: 20 }),
        (answers, learnt) => {
          expect(kleeneAll(answers)).toBe(complement(kleeneAny(answers.map(complement))))
          const later = answers.map((a, i) => (a === 'unknown' ? (learnt[i] ?? 'met') : a))
          for (const group of [kleeneAll, kleeneAny]) if (group(answers) !== 'unknown') expect(group(later)).toBe(group(answers))
        },
      ),
    )
  })
})
