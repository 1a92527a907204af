import { describe, expect, it } from 'vitest'
import { enduranceLimit, enduranceLimitOfBar, sizeFactor, surfaceFactor } from '../../src/compute/endurance.ts'
import { alternatingStress, goodmanSafety, meanStress } from '../../src/compute/fatigue.ts'
import { notchFactorHeywood, notchFactorNeuber } from '../../src/compute/notch.ts'
import { PSI, valueOf } from './figures.ts'

const KSI = 1000 * PSI
const limit = (bar: number, surface: number, size: number, load: number, reliability: number): number =>
  valueOf(enduranceLimit, {
    'bar-limit': bar,
    'surface-factor': surface,
    'size-factor': size,
    'load-factor': load,
    'reliability-factor': reliability,
  })
const surface = (strength: number, a: number, b: number): number => valueOf(surfaceFactor, { 'tensile-strength': strength, a, b })
const safety = (alternating: number, mean: number, endurance: number, tensile: number): number =>
  valueOf(goodmanSafety, {
    'alternating-stress': alternating,
    'mean-stress': mean,
    'endurance-limit': endurance,
    'tensile-strength': tensile,
  })

describe('fatigue notch factor', () => {
  // Shigley, 9th ed., Example 6-6: statement and equation read, the answer 1.55 recalled. Sut 690 MPa, r 3 mm, Kt 1.65.
  it('Neuber, Example 6-6: 1.55', () => {
    const kf = valueOf(notchFactorNeuber, { 'stress-concentration': 1.65, 'tensile-strength': 690, 'root-radius': 3 })
    expect(Math.abs(kf - 1.55)).toBeLessThan(0.006)
    // √a of 0.0622 √in, as the example gives it, from the answer backwards.
    expect(Math.abs((0.65 / (kf - 1) - 1) * Math.sqrt(3 / 25.4) - 0.0622)).toBeLessThan(0.0003)
  })

  // Shigley, 9th ed., Example 6-18, p. 335 (read): a shoulder, √a 0.2014 √mm; the factor from it is completed here.
  it('Heywood, Example 6-18: √a 0.2014, factor 1.511', () => {
    const kf = valueOf(notchFactorHeywood, {
      'stress-concentration': 1.65,
      'material-constant': 139,
      'tensile-strength': 690,
      'root-radius': 3,
    })
    expect(kf).toBeCloseTo(1.5114933191108302, 9)
    expect(Math.abs(((1.65 / kf - 1) * 1.65 * Math.sqrt(3)) / (2 * 0.65) - 0.2014)).toBeLessThan(6e-5)
  })

  it('never exceeds the elastic factor, and a blunter root comes nearer to it', () => {
    const each = [0.05, 0.2, 1, 5].map((radius) =>
      valueOf(notchFactorNeuber, { 'stress-concentration': 2.5, 'tensile-strength': 900, 'root-radius': radius }),
    )
    for (const [i, kf] of each.entries()) expect(kf).toBeGreaterThan(i === 0 ? 1 : (each[i - 1] ?? 9))
    expect(Math.max(...each)).toBeLessThan(2.5)
  })
})

describe('endurance limit by Marin’s factors', () => {
  // Solutions manual to Shigley, chapter 6, bar with a hole in tension (read in excerpts): 440 MPa, machined: ka 0.899, Se 168.1 MPa, Kf 2.23;
  // a factor of 1.8 at 20.1 kN reversed on 48 × 10 mm.
  it('Shigley, bar with a hole', () => {
    const ka = surface(440, 4.51, -0.265)
    expect(Math.abs(ka - 0.899)).toBeLessThan(0.0006)
    const se = limit(valueOf(enduranceLimitOfBar, { 'tensile-strength': 440 }), ka, 1, 0.85, 1)
    expect(Math.abs(se - 168.1)).toBeLessThan(0.15)
    const swing = { 'greatest-stress': 20100 / 480, 'least-stress': -20100 / 480 }
    const alternating = valueOf(alternatingStress, { ...swing, 'notch-factor': 1 + 0.82 * 1.5 })
    expect(valueOf(meanStress, swing)).toBe(0)
    expect(Math.abs(safety(alternating, 0, se, 440) - 1.8)).toBeLessThan(0.01)
  })

  // Shigley, 11th ed., solution of problem 6-1 (read in excerpts): 1,020 MPa, ground with that edition's constants, 10 mm: 0.868, 0.969, 429 MPa.
  it('Shigley, 11th ed., problem 6-1', () => {
    const [ka, kb] = [surface(1020, 1.38, -0.067), valueOf(sizeFactor, { diameter: 10 })]
    expect(Math.abs(ka - 0.868)).toBeLessThan(0.0006)
    expect(Math.abs(kb - 0.969)).toBeLessThan(0.0006)
    expect(Math.abs(limit(valueOf(enduranceLimitOfBar, { 'tensile-strength': 1020 }), ka, kb, 1, 1) - 429)).toBeLessThan(0.6)
  })

  // Sadhu Singh, Machine Design-I, Example 4.3 (read in a textbook companion): Kf 1.688 divides the limit there, 45.5 MPa.
  it('Sadhu Singh, Example 4.3', () => {
    expect(Math.abs(limit(220, 0.82, 0.85, 0.577, 0.868) / (1 + 0.86 * 0.8) - 45.5)).toBeLessThan(0.006)
  })

  // Shigley, Examples 6-10 and 6-11 (recalled): 1.5 in bar, 0 to 16 kip, 100 kpsi, machined, Kf 1.85 on both parts of the stress: ka 0.797,
  // Se 33.9 kpsi, σa 8.38 kpsi; the Goodman factor 3.02 was worked here apart from this code.
  it('Shigley, Example 6-10 (recalled)', () => {
    const strength = 100 * KSI
    const ka = surface(strength, 4.51, -0.265)
    expect(Math.abs(ka - 0.797)).toBeLessThan(0.0015)
    const se = limit(strength / 2, 0.797, 1, 0.85, 1)
    expect(Math.abs(se / KSI - 33.9)).toBeLessThan(0.06)
    const greatest = (16 / ((Math.PI / 4) * 1.5 ** 2)) * KSI
    const alternating = valueOf(alternatingStress, { 'greatest-stress': greatest, 'least-stress': 0, 'notch-factor': 1.85 })
    expect(Math.abs(alternating / KSI - 8.38)).toBeLessThan(0.006)
    const mean = 1.85 * valueOf(meanStress, { 'greatest-stress': greatest, 'least-stress': 0 })
    expect(Math.abs(safety(alternating, mean, se, strength) - 3.0206188453250076)).toBeLessThan(0.001)
  })
})

describe('Goodman', () => {
  // Bhandari, Design of Machine Elements, Example 5.16 (read in a textbook companion): grooved bar 30 mm, groove 2 mm, 1,250 MPa, 0 to F, 10⁵ cycles,
  // Kf 1.76 in the limit: F is 311,690.6 N where the factor is one.
  it('Bhandari, Example 5.16', () => {
    const ka = surface(1250, 1.58, -0.085)
    expect(ka).toBeCloseTo(0.8618262855284445, 9)
    const se = limit(600, ka, 0.85, 1, 0.897) / (1 + 0.95 * 0.8)
    // Straight line in logarithms from 0.9 Sut at 10³ cycles to Se at 10⁶; 10⁵ is two thirds of the way.
    const atLife = (0.9 * 1250) ** (1 / 3) * se ** (2 / 3)
    const greatest = 311690.645869 / ((Math.PI / 4) * 26 ** 2)
    const swing = { 'greatest-stress': greatest, 'least-stress': 0 }
    const factor = safety(valueOf(alternatingStress, { ...swing, 'notch-factor': 1 }), valueOf(meanStress, swing), atLife, 1250)
    expect(factor).toBeCloseTo(1, 6)
  })

  // Equation: Shigley, 9th ed., p. 346 (read); the value by closed form and by bisection, the latter again here.
  it('60 and 150 MPa against 250 and 900 MPa: 2.459', () => {
    const factor = safety(60, 150, 250, 900)
    expect(factor).toBeCloseTo(2.459016393442623, 9)
    let [low, high] = [0, 20]
    for (let k = 0; k < 80; k += 1) {
      const mid = (low + high) / 2
      if ((60 * mid) / 250 + (150 * mid) / 900 < 1) low = mid
      else high = mid
    }
    expect(low).toBeCloseTo(factor, 12)
  })
})
