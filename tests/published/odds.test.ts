import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { apply } from '../../src/compute/formula.ts'
import { chanceFailsNext, chanceRestSound, lifeAtShare } from '../../src/compute/odds.ts'
import { valueOf } from './figures.ts'

interface Jstat {
  readonly betaln: (a: number, b: number) => number
  readonly weibull: {
    readonly cdf: (x: number, scale: number, shape: number) => number
    readonly inv: (p: number, scale: number, shape: number) => number
  }
  readonly combination: (n: number, k: number) => number
}
const { jStat } = createRequire(import.meta.url)('jstat') as { jStat: Jstat }

const rest = (bad: number, looked: number, left: number): number => valueOf(chanceRestSound, { bad, 'looked-at': looked, rest: left })

describe('what is known of the parts that nobody looked at', () => {
  // Derived, exact fractions and quadrature.
  it.each([
    [2, 8, 8, 21 / 170],
    [1, 16, 15, 17 / 62],
    [0, 8, 8, 9 / 17],
  ])('%d bad of %d, %d left: %d (derived)', (bad, looked, left, expected) => {
    expect(rest(bad, looked, left)).toBeCloseTo(expected, 12)
  })

  it('agrees with the beta functions of jstat', () => {
    for (const [bad, looked, left] of [
      [0, 4, 12],
      [1, 8, 8],
      [3, 12, 4],
      [5, 6, 30],
      [0, 1, 1],
    ] as const) {
      const reference = Math.exp(jStat.betaln(bad + 1, looked - bad + 1 + left) - jStat.betaln(bad + 1, looked - bad + 1))
      expect(rest(bad, looked, left)).toBeCloseTo(reference, 10)
    }
  })

  // Derived: the same from a finite set of 16 with every number of bad parts held equally likely; the hypergeometric counts from jstat.
  it('is what counting every finite set gives', () => {
    for (const [bad, looked, left] of [
      [2, 8, 8],
      [1, 16, 15],
      [0, 6, 10],
    ] as const) {
      const all = looked + left
      let sum = 0
      for (let total = bad; total <= bad + left; total += 1) {
        sum += (jStat.combination(total, bad) * jStat.combination(all - total, looked - bad)) / jStat.combination(all, looked)
      }
      const none = jStat.combination(all - bad, looked - bad) / jStat.combination(all, looked)
      expect(none / sum).toBeCloseTo(rest(bad, looked, left), 9)
    }
  })

  it('refuses more bad parts than were looked at', () => {
    const exactly = (value: number) => ({ value, u: 0 })
    expect(apply(chanceRestSound, { bad: exactly(3), 'looked-at': exactly(2), rest: exactly(1) }).ok).toBe(false)
  })
})

describe('Weibull', () => {
  // Miller and Freund, Probability and Statistics for Engineers, p. 143 (read in a textbook companion): R = exp(−0.1 t^0.5), which is a life of 100 h
  // and a shape of 0.5; 0.177 live to 300 h.
  it('Miller and Freund, p. 143: 0.177 live to 300 h', () => {
    expect(Math.abs(1 - valueOf(chanceFailsNext, { age: 0, stretch: 300, life: 100, shape: 0.5 }) - 0.177)).toBeLessThan(0.0006)
  })

  // MIL-HDBK-338B, transmitting-tube example (recalled): shape 2, life 1,000 h, 0.99 live to 100 h.
  it('MIL-HDBK-338B: 0.99 live to 100 h (recalled)', () => {
    expect(Math.abs(1 - valueOf(chanceFailsNext, { age: 0, stretch: 100, life: 1000, shape: 2 }) - 0.99)).toBeLessThan(0.0005)
  })

  // Derived: shape 3, life 2,000 h, 1,200 h old, 400 h more: 0.2562.
  it('a survivor’s chance of failing next (derived), and again from jstat’s distribution', () => {
    const chance = valueOf(chanceFailsNext, { age: 1200, stretch: 400, life: 2000, shape: 3 })
    expect(chance).toBeCloseTo(0.2562125719798205, 12)
    const [before, after] = [1200, 1600].map((t) => jStat.weibull.cdf(t, 2000, 3))
    expect(((after ?? 0) - (before ?? 0)) / (1 - (before ?? 0))).toBeCloseTo(chance, 10)
  })

  // Derived, closed form: B1, B10 and B50 as shares of the characteristic life.
  it.each([
    [1, 0.01005033585350145, 0.10536051565782628, 0.6931471805599453],
    [1.5, 0.04657151684701971, 0.22307552563691707, 0.7832197687746514],
    [3, 0.2158043485359359, 0.47230871856966294, 0.8849970445005177],
  ])('shape %d: B1, B10 and B50 (derived; jstat)', (shape, b1, b10, b50) => {
    for (const [share, expected] of [
      [0.01, b1],
      [0.1, b10],
      [0.5, b50],
    ] as const) {
      const life = valueOf(lifeAtShare, { life: 1000, share, shape })
      expect(life / 1000).toBeCloseTo(expected, 8)
      expect(jStat.weibull.inv(share, 1000, shape)).toBeCloseTo(life, 6)
    }
  })
})
