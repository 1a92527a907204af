import { derivative } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { equivalentMass } from '../../src/compute/equivalent-mass.ts'
import {
  camPeakAcceleration,
  harmonicNoseAcceleration,
  requiredSpringForce,
  springForceInHand,
  valveFloatSpeed,
} from '../../src/compute/valve-motion.ts'
import { valueOf } from './figures.ts'

/** Greatest second derivative of a published cam law over 0 … 1, differentiated by mathjs and looked for on a fine grid. */
function peakFactor(law: string): number {
  const second = derivative(derivative(law, 'u'), 'u').compile()
  let most = 0
  for (let k = 0; k <= 20000; k += 1) most = Math.max(most, Math.abs(Number(second.evaluate({ u: k / 20000 }))))
  return most
}

/** Acceleration in m/s² at a cam speed: what a mass of 1 kg asks in newtons. */
const inMetres = (acceleration: number, camSpeed: number): number =>
  valueOf(requiredSpringForce, { 'equivalent-mass': 1, acceleration, 'crank-speed': 2 * camSpeed })

describe('acceleration by cam law', () => {
  // Factors as in Norton, Design of Machinery, table of cam laws (recalled).
  it.each([
    ['simple harmonic', '(1 - cos(pi u)) / 2', 4.9348],
    ['3-4-5 polynomial', '10 u^3 - 15 u^4 + 6 u^5', 5.7735],
    ['cycloidal', 'u - sin(2 pi u) / (2 pi)', 6.2832],
  ])('the %s law has the factor that the table prints', (_name, law, factor) => {
    expect(Math.abs(peakFactor(law) - factor)).toBeLessThan(0.002)
    expect(valueOf(camPeakAcceleration, { lift: 10, 'rise-angle': 60, factor }) / (10 / (Math.PI / 3) ** 2)).toBeCloseTo(factor, 9)
  })

  // Sarkar, Theory of Machines, ch. 9, illustrations 2 and 5 (read in a textbook companion; the second printed as cm/s² under m/s²).
  it.each([
    ['simple harmonic, 40 mm in 60°', 40, 60, 300, Math.PI ** 2 / 2, 177.6, 0.15],
    ['simple harmonic, 40 mm in 90°', 40, 90, 300, Math.PI ** 2 / 2, 78.9, 0.15],
    ['parabolic, 25 mm in 120°', 25, 120, 1000, 4, 250, 0.01],
    ['parabolic, 25 mm in 90°', 25, 90, 1000, 4, 444.44, 0.01],
  ])('Sarkar: %s', (_name, lift, angle, camSpeed, factor, expected, within) => {
    expect(Math.abs(inMetres(valueOf(camPeakAcceleration, { lift, 'rise-angle': angle, factor }), camSpeed) - expected)).toBeLessThan(
      within,
    )
  })

  it('the nose of a harmonic cam is the harmonic law’s peak', () => {
    const nose = valueOf(harmonicNoseAcceleration, { lift: 40, 'half-event': 60 })
    expect(nose).toBeCloseTo(valueOf(camPeakAcceleration, { lift: 40, 'rise-angle': 60, factor: Math.PI ** 2 / 2 }), 9)
    expect(Math.abs(inMetres(nose, 300) - 177.6)).toBeLessThan(0.15)
  })
})

describe('the force that holds a train to its cam', () => {
  // Derived; no published valve-train example was found. Rocker inertia 2.4e-5 kg m² as 0.1 kg at a radius of gyration of 15.492 mm.
  const parts = {
    valve: 0.11,
    retainer: 0.02,
    keepers: 0.006,
    spring: 0.09,
    pushrod: 0.055,
    tappet: 0.1,
    'rocker-ratio': 1.5,
    rocker: 0.1,
    'gyration-radius': Math.sqrt(2.4e-5 / 0.1) * 1000,
    'valve-arm': 38,
  }

  it('equivalent mass from equal kinetic energy (derived)', () => {
    expect(valueOf(equivalentMass, parts)).toBeCloseTo(0.2515093875038473, 9)
    // Second route: the energies of all parts at a valve speed of 1 m/s, the spring's summed over a thousand slices of its length.
    const slices = 1000
    let energy = (0.11 + 0.02 + 0.006) / 2 + ((0.055 + 0.1) * (1 / 1.5) ** 2) / 2 + (2.4e-5 * (1 / 0.038) ** 2) / 2
    for (let k = 0; k < slices; k += 1) energy += ((0.09 / slices) * ((k + 0.5) / slices) ** 2) / 2
    expect(2 * energy).toBeCloseTo(0.2515093875038473, 6)
  })

  it('12.7 mm of lift, 65° of cam to the nose, 6,000 rev/min: 4,806 m/s² and 1,209 N (derived)', () => {
    const acceleration = valueOf(harmonicNoseAcceleration, { lift: 12.7, 'half-event': 65 })
    expect(Math.abs(inMetres(acceleration, 3000) / 4806.088543148224 - 1)).toBeLessThan(1e-4)
    const needed = valueOf(requiredSpringForce, { 'equivalent-mass': 0.2515093875038473, acceleration, 'crank-speed': 6000 })
    expect(Math.abs(needed / 1208.7763857764676 - 1)).toBeLessThan(1e-4)
    // Second route: the lift curve itself, differenced twice in time across the nose.
    const lift = (t: number): number => (12.7 / 2) * (1 + Math.cos((Math.PI * (3000 * 6 * t)) / 65))
    const step = 1e-5
    expect(Math.abs((lift(step) - 2 * lift(0) + lift(-step)) / step ** 2 / 1000 / -4806.088543148224 - 1)).toBeLessThan(1e-3)
  })

  it('a spring with just the force needed has none in hand, and floats at that speed', () => {
    const both = { available: 1208.8, required: 1208.8 }
    expect(valueOf(springForceInHand, both)).toBe(1)
    expect(valueOf(valveFloatSpeed, { ...both, 'crank-speed': 6000 })).toBe(6000)
    const acceleration = valueOf(harmonicNoseAcceleration, { lift: 12.7, 'half-event': 65 })
    const needed = (speed: number): number => valueOf(requiredSpringForce, { 'equivalent-mass': 0.25, acceleration, 'crank-speed': speed })
    const float = valueOf(valveFloatSpeed, { 'crank-speed': 4000, available: 1000, required: needed(4000) })
    expect(needed(float)).toBeCloseTo(1000, 8)
  })
})
