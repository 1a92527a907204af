import { atan, unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { springNaturalFrequency, surgeOrder } from '../../src/compute/spring-surge.ts'
import { springMeanDiameter, springRateFromWire, squarenessAngle } from '../../src/compute/spring-wire.ts'
import { INCH, POUND, POUND_PER_INCH, PSI, valueOf } from './figures.ts'

const rate = (modulus: number, wire: number, mean: number, active: number): number =>
  valueOf(springRateFromWire, { 'shear-modulus': modulus, 'wire-diameter': wire, 'mean-diameter': mean, 'active-coils': active })

/** Second route to a rate: unwind the coils and add up the twist of the wire, coil compliance 8 D³ ÷ (G d⁴), in a thousand slices. */
function rateBySlices(modulus: number, wire: number, mean: number, active: number): number {
  const polar = (Math.PI * wire ** 4) / 32
  const slice = (Math.PI * mean * active) / 1000
  let give = 0
  for (let k = 0; k < 1000; k += 1) give += ((mean / 2) ** 2 * slice) / (modulus * polar)
  return 1 / give
}

describe('spring rate from the wire', () => {
  // Shigley, Mechanical Engineering Design, problem 10-3 (solutions manual read in excerpts): music wire 2.5 mm, OD 31 mm, plain ground, Nt 14.
  it('Shigley problem 10-3: 1.314 N/mm', () => {
    const mean = valueOf(springMeanDiameter, { 'outside-diameter': 31, 'wire-diameter': 2.5 })
    expect(Math.abs(rate(81000, 2.5, mean, 13) - 1.314)).toBeLessThan(0.0006)
  })

  // Problem 10-5 (same manual): 67.2 lbf over 2.4 in. Examples 10-1 and 10-4 (recalled): 4.13 and 48.1 lbf/in.
  it.each([
    ['problem 10-5', 11.2e6, 0.2, 2, 10, 28, 0.005],
    ['Example 10-1 (recalled)', 11.85e6, 0.037, 0.4, 10.5, 4.13, 0.006],
    ['Example 10-4 (recalled)', 11.75e6, 0.092, 0.4705, 21, 48.1, 0.06],
  ])('Shigley %s', (_name, psi, wire, mean, active, expected, within) => {
    // Wire of 0.037 in is thinner than the rule's range of valve springs from 0.5 mm: the equation is asked at twice the size, which is twice as stiff.
    expect(Math.abs(rate(psi * PSI, 2 * wire * INCH, 2 * mean * INCH, active) / 2 / POUND_PER_INCH - expected)).toBeLessThan(within)
  })

  // University of Cambridge, Department of Engineering, teaching notes on springs, item 2 (read): 110 N/mm.
  it('Cambridge notes on springs, item 2', () => {
    expect(Math.abs(rate(79300, 12.5, 76, 5) - 110)).toBeLessThan(0.6)
  })

  // Derived: a valve spring, 4.5 mm wire on 28 mm, 4.6 coils.
  it('a valve spring (derived), and again by the twist of its wire', () => {
    expect(rate(79300, 4.5, 28, 4.6)).toBeCloseTo(40.253285144366366, 9)
    expect(rateBySlices(79300, 4.5, 28, 4.6)).toBeCloseTo(rate(79300, 4.5, 28, 4.6), 8)
  })

  // Derived, invented: the demo engines' stock springs have 4.36 and 4.48 active coils of chrome-silicon wire (11.5 million psi) for 320 and 310 lb/in.
  it.each([
    ['QL-6P', 1.25, 0.185, 4.36, 320],
    ['QL-8S', 1.26, 0.186, 4.48, 310],
  ])('%s (invented)', (_name, outside, wire, active, expected) => {
    const mean = valueOf(springMeanDiameter, { 'outside-diameter': outside * INCH, 'wire-diameter': wire * INCH })
    expect(Math.abs(rate(11.5e6 * PSI, wire * INCH, mean, active) / POUND_PER_INCH / expected - 1)).toBeLessThan(0.005)
  })
})

describe('natural frequency', () => {
  const activeMass = (wire: number, mean: number, active: number, density: number): number =>
    ((Math.PI * wire) ** 2 * mean * active * density) / 4

  // Shigley Example 10-4 (recalled): 48.1 lbf/in, 0.0586 lbf of active wire, 281 Hz.
  it('Shigley Example 10-4 (recalled): 281 Hz', () => {
    const f = valueOf(springNaturalFrequency, { rate: 48.1 * POUND_PER_INCH, 'active-mass': (0.0586 * POUND) / 9.80665 })
    expect(Math.abs(f - 281)).toBeLessThan(1)
  })

  // Sadhu Singh, Machine Design-I, Example 8.1: data read in a textbook companion, whose printed frequency lacks a factor √1000; 97.36 Hz is
  // worked here and by the wave form below.
  it('Sadhu Singh Example 8.1, mended: 97.36 Hz', () => {
    const active = (84000 * 4.25 ** 4) / (8 * 34 ** 3 * 6.25)
    const f = valueOf(springNaturalFrequency, { rate: 6.25, 'active-mass': activeMass(4.25, 34, active, 7.8e-6) })
    expect(f).toBeCloseTo(97.3644288688258, 6)
  })

  // EN 13906-1 (recalled): 3560 d ÷ (n D²) × √(G ÷ ρ), mm, MPa, kg/dm³.
  it('agrees with the form of EN 13906-1 within 0.1 %', () => {
    const f = valueOf(springNaturalFrequency, { rate: rate(79300, 4, 26, 5.2), 'active-mass': activeMass(4, 26, 5.2, 7.85e-6) })
    expect(f / (((3560 * 4) / (5.2 * 26 ** 2)) * Math.sqrt(79300 / 7.85))).toBeCloseTo(1, 3)
    expect(f / 407.15682117821336).toBeCloseTo(1, 3)
  })

  // Derived by mass and stiffness and by wave speed: 446.3 Hz, 7.65 swings in a turn of the cam at 7,000 rev/min of the crankshaft.
  it('a valve spring at speed (derived)', () => {
    const f = valueOf(springNaturalFrequency, { rate: rate(79300, 4.5, 28, 4.6), 'active-mass': activeMass(4.5, 28, 4.6, 7.85e-6) })
    expect(f).toBeCloseTo(446.31914712424134, 6)
    expect(valueOf(surgeOrder, { frequency: f, 'crank-speed': 7000 })).toBeCloseTo(7.651185379272708, 9)
    const wave = (4.5 / (2 * Math.PI * 28 ** 2 * 4.6)) * Math.sqrt((79300 * 1e6) / (2 * 7850)) * 1000
    expect(wave).toBeCloseTo(f, 6)
  })
})

describe('squareness', () => {
  // Common practice: 1/16 in at the top of a spring of 2 in, about 1.8°; the demo engine (invented) allows 0.069 in over 1.966 in as 2°.
  it.each([
    [0.0625, 2, 1.8],
    [0.069, 1.966, 2],
  ])('%d in over %d in is about %d°', (gap, length, degrees) => {
    const lean = valueOf(squarenessAngle, { gap: gap * INCH, length: length * INCH })
    expect(Math.abs(lean - degrees)).toBeLessThan(0.02)
    expect(lean).toBeCloseTo(unit(atan(gap / length), 'rad').toNumber('deg'), 12)
  })
})
