import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { studTension } from '../../src/compute/stud.ts'
import { INCH, POUND, valueOf } from './figures.ts'

/**
 * Second route: a rocker that does not turn, as two linear equations for pushrod force P and stud tension N, solved by mathjs.
 * Moments about the fulcrum: P · pushrod arm = tip force · valve arm. Forces: N = tip force + P.
 */
function equilibrium(tipForce: number, valveArm: number, pushrodArm: number): { pushrod: number; stud: number } {
  const solved = lusolve(
    [
      [pushrodArm, 0],
      [-1, 1],
    ],
    [tipForce * valveArm, tipForce],
  ) as number[][]
  return { pushrod: solved[0]?.[0] ?? Number.NaN, stud: solved[1]?.[0] ?? Number.NaN }
}

describe('tension on a rocker stud', () => {
  // Jindal, Machine Design, Example 6-1: 5,000 N on an arm of 200 mm against an effort on 500 mm; the data were read in a textbook companion,
  // the effort of 2,000 N follows from moments. Jindal's arms stand square to each other; ours are in line, so the fulcrum holds the plain sum.
  it('the effort of Jindal’s lever (Example 6-1) is the part that the stud holds beyond the load', () => {
    expect(valueOf(studTension, { 'tip-force': 5000, ratio: 200 / 500 }) - 5000).toBeCloseTo(2000, 9)
  })

  // Derived, no published figure: worked by lever equation and by vector equilibrium.
  it.each([
    [1800, 1.5, 4500],
    [2200, 1.6, 5720],
  ])('%d N at the tip and ratio %d pull %d N (derived)', (tipForce, ratio, expected) => {
    expect(valueOf(studTension, { 'tip-force': tipForce, ratio })).toBeCloseTo(expected, 9)
  })

  it.each([
    [214.6 * POUND, 1.5 * INCH, 1 * INCH],
    [1468, 40, 25],
    [956, 51.3, 34.2],
  ])('agrees with the rocker in equilibrium: %d N, arms %d and %d mm (mathjs)', (tipForce, valveArm, pushrodArm) => {
    const { pushrod, stud } = equilibrium(tipForce, valveArm, pushrodArm)
    const tension = valueOf(studTension, { 'tip-force': tipForce, ratio: valveArm / pushrodArm })
    expect(tension).toBeCloseTo(stud, 8)
    expect(tension - tipForce).toBeCloseTo(pushrod, 8)
  })

  // Derived from the invented engines: 214.6 lb × 2.5 = 536 lb; 330 lb × 2.6 ≈ 858 lb.
  it('gives the invented engines’ worked figures', () => {
    expect(valueOf(studTension, { 'tip-force': 214.6 * POUND, ratio: 1.5 }) / POUND).toBeCloseTo(536.5, 6)
    expect(valueOf(studTension, { 'tip-force': 329.8 * POUND, ratio: 1.6 }) / POUND).toBeCloseTo(857.48, 6)
  })
})
