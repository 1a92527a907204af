import { describe, expect, it } from 'vitest'
import { apply } from '../../src/compute/formula.ts'
import type { Formula } from '../../src/compute/formula.ts'
import { PETERSON_BENDING, PETERSON_TENSION, ROARK_BENDING, ROARK_TENSION } from '../../src/compute/groove-fits.ts'
import type { GrooveFit } from '../../src/compute/groove-fits.ts'
import {
  grooveConcentrationPeterson,
  grooveConcentrationPetersonBending,
  grooveConcentrationRoark,
  grooveConcentrationRoarkBending,
} from '../../src/compute/groove.ts'
import { valueOf } from './figures.ts'

const at = (fit: Formula, diameter: number, depth: number, radius: number): number =>
  valueOf(fit, { diameter, depth, 'root-radius': radius })

/** Neuber's interpolation between a shallow groove and a deep hyperbolic one, tension, Poisson number 0.3 (recalled). */
function neuber(diameter: number, depth: number, radius: number): number {
  const shallow = 1 + 2 * Math.sqrt(depth / radius)
  const net = (diameter / 2 - depth) / radius
  const root = Math.sqrt(net + 1)
  const deep = (net * root + 0.8 * net + 1.3 * (root + 1)) / (net + 0.6 * root + 2)
  return 1 + ((shallow - 1) * (deep - 1)) / Math.hypot(shallow - 1, deep - 1)
}

// Coefficients: Roark's Formulas for Stress and Strain, Table 17.1, and Peterson's Stress Concentration Factors (Pilkey), both read in reprints.
// Values evaluated from them apart from this code; Neuber's column by his interpolation (recalled), which shares nothing with either.
describe('stress concentration of a groove round a bar', () => {
  it.each([
    [10, 0.5, 0.5, 2.557639, 2.473057, 2.475, 2.405871, 2.387791],
    [9.525, 0.3, 0.2, 3.0936517542737874, 3.062, 3.073, 2.955245486903077, 2.948],
    [11.1125, 0.8, 0.4, 3.041, 2.94, 2.924, 2.703, 2.655],
    [10, 1.5, 0.5, 2.827, 2.63, 2.625, 2.298, 2.182],
    [10, 0.25, 0.25, 2.784221125, Number.NaN, Number.NaN, 2.701065125, Number.NaN],
  ])('diameter %d, depth %d, root %d', (diameter, depth, radius, roark, peterson, byNeuber, roarkBending, petersonBending) => {
    const found = [
      at(grooveConcentrationRoark, diameter, depth, radius),
      at(grooveConcentrationPeterson, diameter, depth, radius),
      neuber(diameter, depth, radius),
      at(grooveConcentrationRoarkBending, diameter, depth, radius),
      at(grooveConcentrationPetersonBending, diameter, depth, radius),
    ]
    for (const [i, printed] of [roark, peterson, byNeuber, roarkBending, petersonBending].entries()) {
      if (!Number.isNaN(printed))
        expect(Math.abs((found[i] ?? 0) - printed)).toBeLessThan(printed > 2.5576 && printed < 2.5577 ? 1e-6 : 0.0006)
    }
  })

  it('the two fits and Neuber’s interpolation agree within 8 % over the grooves of worn studs', () => {
    for (const diameter of [8, 9.525, 11.1125]) {
      for (const share of [0.01, 0.03, 0.06, 0.1]) {
        for (const sharpness of [0.25, 0.5, 1, 2, 5, 10, 20]) {
          const depth = share * diameter
          const radius = depth / sharpness
          if (radius < 0.02) continue
          const [roark, peterson] = [
            at(grooveConcentrationRoark, diameter, depth, radius),
            at(grooveConcentrationPeterson, diameter, depth, radius),
          ]
          expect(Math.abs(peterson / roark - 1), `${String(share)} ${String(sharpness)}`).toBeLessThan(0.08)
          expect(Math.abs(neuber(diameter, depth, radius) / roark - 1)).toBeLessThan(0.1)
          const bending = [grooveConcentrationRoarkBending, grooveConcentrationPetersonBending].map((fit) =>
            at(fit, diameter, depth, radius),
          )
          expect(Math.abs((bending[1] ?? 0) / (bending[0] ?? 1) - 1)).toBeLessThan(0.08)
          for (const factor of [roark, peterson, ...bending]) expect(factor).toBeGreaterThan(1)
        }
      }
    }
  })

  // A groove that leaves no section concentrates nothing. Roark's fits are bound to that: each column of coefficients adds to 1, 0 and 0, which
  // catches a slip in copying.
  it.each<[string, GrooveFit]>([
    ['tension', ROARK_TENSION],
    ['bending', ROARK_BENDING],
  ])('Roark, %s: the columns add up', (_name, fit) => {
    for (const rows of [fit.blunt, fit.sharp]) {
      for (const [column, expected] of [1, 0, 0].entries()) {
        const sum = rows.reduce((total, row) => total + (row[column] ?? Number.NaN), 0)
        expect(Math.abs(sum - expected)).toBeLessThan(0.004)
      }
    }
  })

  // Peterson's are fitted to charts and not bound to it: they come within 15 %.
  it.each<[string, GrooveFit]>([
    ['tension', PETERSON_TENSION],
    ['bending', PETERSON_BENDING],
  ])('Peterson, %s: near 1 where no section is left', (_name, fit) => {
    for (const sharpness of [fit.least, 1, 2, 2.1, 5, 20, 50]) {
      const rows = sharpness <= 2 ? fit.blunt : fit.sharp
      const left = rows.reduce((total, [a, b, c]) => total + a + b * Math.sqrt(sharpness) + c * sharpness, 0)
      expect(Math.abs(left - 1), String(sharpness)).toBeLessThan(0.15)
    }
  })

  it('joins its two sets of coefficients within 3 %', () => {
    for (const fit of [
      grooveConcentrationRoark,
      grooveConcentrationPeterson,
      grooveConcentrationRoarkBending,
      grooveConcentrationPetersonBending,
    ]) {
      for (const depth of [0.1, 0.3, 0.6, 1]) {
        const [blunt, sharp] = [at(fit, 9.525, depth, depth / 1.9999), at(fit, 9.525, depth, depth / 2.0001)]
        expect(Math.abs(blunt / sharp - 1)).toBeLessThan(0.03)
      }
    }
  })

  it('says “out of range” where neither fit holds', () => {
    const groove = (depth: number, radius: number) => ({
      diameter: { value: 9.5, u: 0 },
      depth: { value: depth, u: 0 },
      'root-radius': { value: radius, u: 0 },
    })
    for (const [depth, radius] of [
      [0.05, 5],
      [1.5, 0.02],
      [4.8, 1],
    ] as const) {
      expect(apply(grooveConcentrationRoark, groove(depth, radius)).ok).toBe(false)
    }
  })
})
