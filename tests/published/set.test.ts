import { mad, max, median, min } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { applyGroup } from '../../src/compute/formula.ts'
import type { GroupFormula } from '../../src/compute/formula.ts'
import {
  setFarthest,
  setFarthestForce,
  setMedian,
  setMedianForce,
  setSpread,
  setSpreadForce,
  setSpreadVolume,
} from '../../src/compute/set.ts'
import { INCH, POUND } from './figures.ts'

function of(formula: GroupFormula, values: readonly number[], u = 0): { value: number; u: number } {
  const answer = applyGroup(formula, { values: values.map((value) => ({ value, u })) })
  if (!answer.ok) throw new Error(answer.why)
  return { value: answer.value, u: answer.u }
}

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17: the mass-spectrometer data of Grubbs' test, whose outlier is 245.57 (data read as quoted in
// public test fixtures). The modified z-score and its mark of 3.5 are from memory.
const NIST = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]
// Shigley, 9th ed., Table 8-14 (read): preload of ten lubricated bolts at 90 N m, kN; mean 34.18, standard deviation 2.88.
const PRELOADS = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5]

describe('a set of parts', () => {
  it('finds NIST’s outlier far beyond the mark, and none once it is gone', () => {
    expect(of(setFarthest, NIST).value).toBeGreaterThan(3.5)
    expect(of(setFarthest, NIST.slice(0, -1)).value).toBeLessThan(3.5)
  })

  it('is not masked by two bad parts, as Grubbs’ test is', () => {
    // Two equal outliers among eight: with them in it, no reading of eight can stand (n − 1) ÷ √n = 2.47 standard deviations off.
    const masked = [...NIST.slice(0, 6), 245.57, 246]
    const mean = masked.reduce((sum, v) => sum + v, 0) / masked.length
    const deviation = Math.sqrt(masked.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (masked.length - 1))
    expect((246 - mean) / deviation).toBeLessThan(2.032) // NIST's one-sided critical value for eight
    expect(of(setFarthest, masked).value).toBeGreaterThan(3.5)
  })

  it.each([
    ['NIST’s data', NIST],
    ['NIST’s data without the outlier', NIST.slice(0, -1)],
    ['ten preloads', PRELOADS],
    ['seven heights', [43.1, 43.25, 43.18, 43.05, 43.4, 43.2, 43.11]],
  ])('%s: agrees with mathjs’ median and MAD', (_name, values) => {
    const list = [...values]
    expect(of(setMedian, values).value).toBeCloseTo(Number(median(list)), 10)
    expect(of(setSpread, values).value).toBeCloseTo(Number(max(list)) - Number(min(list)), 12)
    const far = Math.max(...list.map((v) => Math.abs(v - Number(median(list)))))
    expect(of(setFarthest, values).value).toBeCloseTo((0.6745 * far) / Number(mad(list)), 8)
  })

  it('the ten preloads spread by 10.2 kN, and the screen picks out the highest, 2.2 standard deviations off: a screen and no more', () => {
    const newtons = PRELOADS.map((kN) => kN * 1000)
    expect(of(setSpreadForce, newtons).value).toBeCloseTo(10200, 9)
    expect(of(setMedianForce, newtons).value).toBeCloseTo(33350, 9)
    expect(of(setFarthestForce, newtons).value).toBeGreaterThan(3.5)
    expect(of(setFarthestForce, newtons.slice(0, -1)).value).toBeLessThan(3.5)
    expect((40.5 - 34.18) / 2.88).toBeLessThan(2.2)
  })

  // Derived, invented: installed heights of a QL-6P head must spread by at most 0.010 in; chambers of QL-8S by about 1 cm³.
  it('heights and chambers of the invented engines', () => {
    const heights = [1.7, 1.704, 1.698, 1.71, 1.702, 1.699].map((inches) => inches * INCH)
    const answer = of(setSpread, heights, 0.025)
    expect(answer.value / INCH).toBeCloseTo(0.012, 9)
    expect(answer.u).toBeCloseTo(0.025 * Math.SQRT2, 12)
    expect(of(setSpreadVolume, [70.2, 69.6, 70.9, 70.1]).value).toBeCloseTo(1.3, 9)
    expect(
      of(
        setMedianForce,
        [84, 86, 85, 79].map((lb) => lb * POUND),
      ).value / POUND,
    ).toBeCloseTo(84.5, 9)
  })
})
