import { describe, expect, it } from 'vitest'
import { bellmouth, outOfRound, sidePlayToClearance, toolDoubledClearance } from '../../src/compute/guide.ts'
import { INCH, measured, valueOf } from './figures.ts'

/**
 * Second route: the exact corner contact. A stem in a longer bore turns until bore · cos φ − length · sin φ = stem, found here by halving; the
 * indicator, its distance beyond the guide's end, then travels both ways by the tilt over half the guide and that distance.
 */
function sidePlayOf(bore: number, stem: number, length: number, distance: number): number {
  let [low, high] = [0, 0.2]
  for (let k = 0; k < 80; k += 1) {
    const mid = (low + high) / 2
    if (bore * Math.cos(mid) - length * Math.sin(mid) > stem) low = mid
    else high = mid
  }
  return 2 * Math.tan(low) * (length / 2 + distance)
}

describe('side-play to clearance', () => {
  // Derived, no published figure: guide length, distance of the indicator, side-play, clearance.
  it.each([
    ['divisor 1.5', 2 * INCH, 0.5 * INCH, 0.0045 * INCH, 0.003 * INCH],
    ['divisor 1.48', 50, 12, 0.074, 0.05],
    ['divisor 2.4286', 42, 30, 0.145714, 0.06],
    ['half a guide away: halved', 2.4 * INCH, 1.2 * INCH, 0.0076 * INCH, 0.0038 * INCH],
  ])('%s (derived)', (_name, length, distance, play, clearance) => {
    expect(valueOf(sidePlayToClearance, { 'side-play': play, 'guide-length': length, 'indicator-distance': distance })).toBeCloseTo(
      clearance,
      6,
    )
  })

  it.each([
    [0.344 * INCH, 0.341 * INCH, 2 * INCH, 0.5 * INCH],
    [8.05, 8, 50, 12],
    [0.375 * INCH, 0.3712 * INCH, 2.4 * INCH, 1.2 * INCH],
  ])('agrees with the exact corner contact within 0.2 %%: bore %d, stem %d, guide %d, indicator %d', (bore, stem, length, distance) => {
    const clearance = valueOf(sidePlayToClearance, {
      'side-play': sidePlayOf(bore, stem, length, distance),
      'guide-length': length,
      'indicator-distance': distance,
    })
    expect(Math.abs(clearance / (bore - stem) - 1)).toBeLessThan(0.002)
  })

  it('carries the indicator’s doubt, less than it was', () => {
    const answer = measured(sidePlayToClearance, { 'side-play': [0.15, 0.01], 'guide-length': [50, 0], 'indicator-distance': [25, 0] })
    expect(answer.u).toBeCloseTo(0.005, 12)
  })

  it('half a guide’s length away it is what a doubling tool shows', () => {
    const half = { 'guide-length': 60, 'indicator-distance': 30, 'side-play': 0.12 }
    expect(valueOf(sidePlayToClearance, half)).toBe(valueOf(toolDoubledClearance, { reading: 0.12 }))
  })
})

describe('shape of a guide', () => {
  // Differences, from the invented QL-8S: worked in inches against millimetres.
  it('bellmouth and out-of-round are differences of diameters', () => {
    expect(valueOf(bellmouth, { end: 0.3442 * INCH, middle: 0.343 * INCH }) / INCH).toBeCloseTo(0.0012, 9)
    expect(valueOf(outOfRound, { 'first-axis': 8.717, 'second-axis': 8.732 })).toBeCloseTo(0.015, 12)
    expect(valueOf(outOfRound, { 'first-axis': 8.732, 'second-axis': 8.717 })).toBeCloseTo(0.015, 12)
  })

  it('a bore that reads alike in both axes still has the doubt of two readings', () => {
    const round = measured(outOfRound, { 'first-axis': [8.717, 0.005], 'second-axis': [8.717, 0.005] })
    expect(round.value).toBe(0)
    expect(round.u).toBeCloseTo(0.005 * Math.SQRT2, 12)
  })
})
