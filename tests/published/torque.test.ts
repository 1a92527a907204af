import { describe, expect, it } from 'vitest'
import { torqueTension, torqueTensionByFriction } from '../../src/compute/torque.ts'
import { INCH, POUND, valueOf } from './figures.ts'

/** A pound-force inch in N m, exact by definition. */
const POUND_INCH = (POUND * INCH) / 1000

const pull = (poundInches: number, factor: number, inches: number): number =>
  valueOf(torqueTension, { torque: poundInches * POUND_INCH, 'nut-factor': factor, diameter: inches * INCH }) / POUND

describe('pull from torque', () => {
  // Shigley, 9th ed., Example 8-3: 25 kip at 3,750 lbf·in with K 0.2 (statement read, torque recalled). Wentzell, Machine Design, Examples 6.1 and 6.4
  // (read in a textbook companion): 24,131.5 lbf at 3,619.73 lbf·in; 21,728.25 lbf·in for 0.9 × 120,000 psi × 1.073 in².
  it.each([
    ['Shigley, Example 8-3', 3750, 0.2, 0.75, 25000],
    ['Wentzell, Example 6.1', 3619.73, 0.2, 0.75, 24131.5],
    ['Wentzell, Example 6.4', 21728.25, 0.15, 1.25, 0.9 * 120000 * 1.073],
  ])('%s', (_name, torque, factor, diameter, expected) => {
    expect(Math.abs(pull(torque, factor, diameter) / expected - 1)).toBeLessThan(1e-5)
  })

  // VDI 2230, table for 8.8 bolts at a friction of 0.12 (recalled): M8, 18.6 kN at 24.6 N m, head bearing on 10.3 mm.
  it('VDI 2230, M8 8.8 (recalled)', () => {
    const force = valueOf(torqueTensionByFriction, {
      torque: 24.6,
      pitch: 1.25,
      'pitch-diameter': 7.188,
      'thread-friction': 0.12,
      'bearing-diameter': 10.3,
      'head-friction': 0.12,
    })
    expect(Math.abs(force / 18600 - 1)).toBeLessThan(0.015)
  })

  // Shigley, Example 8-3(c) (recalled): the long power-screw equation with 0.15 gives 3,551 lbf·in for 25 kip on 3/4-16, collar 0.9375 in.
  it('agrees with the long power-screw equation within 0.5 %', () => {
    const [mean, lead, friction, collar] = [0.7094, 1 / 16, 0.15, 0.9375]
    const [climb, secant] = [lead / (Math.PI * mean), 1 / Math.cos(Math.PI / 6)]
    const torque = 25000 * ((mean / 2) * ((climb + friction * secant) / (1 - friction * climb * secant)) + (friction * collar) / 2)
    expect(Math.abs(torque - 3551)).toBeLessThan(5)
    const force = valueOf(torqueTensionByFriction, {
      torque: torque * POUND_INCH,
      pitch: lead * INCH,
      'pitch-diameter': mean * INCH,
      'thread-friction': friction,
      'bearing-diameter': collar * INCH,
      'head-friction': friction,
    })
    expect(Math.abs(force / POUND / 25000 - 1)).toBeLessThan(0.005)
  })

  // Derived, invented: head bolts of the demo engines, 1/2-13 oiled (factor 0.18): 95 lb·ft pull about 12,700 lb, 85 lb·ft about 11,300 lb.
  it.each([
    [95, 12667],
    [85, 11333],
  ])('%d lb·ft on an oiled half-inch bolt (invented)', (feet, expected) => {
    expect(Math.abs(pull(feet * 12, 0.18, 0.5) - expected)).toBeLessThan(1)
  })
})
