import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { studTension } from '../../src/compute/stud.ts'
import { grooveNetDiameter } from '../../src/compute/groove.ts'
import { netTensionStress, studBending, studSideForce } from '../../src/compute/stud-stress.ts'
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

describe('stress in a stud', () => {
  // Derived: scalar statics against the whole pushrod force as a vector, whose part along the stud is tip force × ratio.
  it.each([
    [1800, 1.5, 5, 236.21939151999482],
    [2200, 1.6, 8, 494.70373815241794],
    [2200, 1.6, 3, 184.47538307630506],
  ])('a pushrod at the tip force %d N, ratio %d and lean %d° pushes %d N sideways (derived)', (tip, ratio, lean, expected) => {
    const side = valueOf(studSideForce, { 'pushrod-force': tip * ratio, lean })
    expect(Math.abs(side - expected)).toBeLessThan(0.001)
    const whole = (tip * ratio) / Math.cos((lean * Math.PI) / 180)
    expect(Math.hypot(tip * ratio, side)).toBeCloseTo(whole, 8)
  })

  // Derived: net section of a 3/8 in shank grooved 0.5 mm, 10 kN and 8 N m (as a side force of 400 N at 20 mm).
  it('tension and bending on the net section (derived)', () => {
    const net = valueOf(grooveNetDiameter, { diameter: 9.525, depth: 0.5 })
    expect(net).toBeCloseTo(8.525, 12)
    expect(valueOf(netTensionStress, { force: 10000, 'net-diameter': net })).toBeCloseTo(175.19485312099656, 6)
    expect(valueOf(studBending, { 'side-force': 400, height: 20, 'net-diameter': net })).toBeCloseTo(131.5245818151763, 6)
  })

  // Derived: 236.2 N at 22 mm on 8.725 mm. Second route: moment by section modulus from the second moment of area, summed in strips.
  it('bending by summing the section in strips (derived)', () => {
    const bent = valueOf(studBending, { 'side-force': 236.21989, height: 22, 'net-diameter': 8.725 })
    expect(bent).toBeCloseTo(79.69717777437026, 6)
    const radius = 8.725 / 2
    let second = 0
    const strips = 20000
    for (let k = 0; k < strips; k += 1) {
      const y = -radius + (2 * radius * (k + 0.5)) / strips
      second += y * y * 2 * Math.sqrt(radius * radius - y * y) * ((2 * radius) / strips)
    }
    expect((236.21989 * 22 * radius) / second / bent).toBeCloseTo(1, 5)
  })

  /** Peak stress of a bar cut on one side by a chord of this depth, load on the old axis: area, centroid and second moment summed in strips. */
  function oneSided(radius: number, depth: number, load: number): number {
    const strips = 40000
    const [low, high] = [-radius, radius - depth]
    let [area, first, second] = [0, 0, 0]
    for (let k = 0; k < strips; k += 1) {
      const y = low + ((high - low) * (k + 0.5)) / strips
      const strip = (2 * Math.sqrt(radius * radius - y * y) * (high - low)) / strips
      area += strip
      first += y * strip
      second += y * y * strip
    }
    const off = first / area
    return load / area + (load * -off * (high - off)) / (second - area * off * off)
  }

  // Derived, closed form and quadrature: nominal tension of a full groove ÷ peak of a one-sided cut of the same depth, by depth ÷ radius.
  it.each([
    [0.05, 1.0734336036907202],
    [0.1, 1.13308941600365],
  ])('a groove on one side, %d of the radius deep, is milder than one all round by %d', (share, expected) => {
    const radius = 5
    const net = valueOf(grooveNetDiameter, { diameter: 2 * radius, depth: share * radius })
    const full = valueOf(netTensionStress, { force: 10000, 'net-diameter': net })
    expect(full / oneSided(radius, share * radius, 10000)).toBeCloseTo(expected, 4)
    expect(expected).toBeGreaterThan(1)
  })
})
