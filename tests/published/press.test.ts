import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { pressFitPressure, pressHoopStress, pressPullOut } from '../../src/compute/press.ts'
import { valueOf } from './figures.ts'

interface Fit {
  readonly interference: number
  readonly diameter: number
  readonly bore: number
  readonly outer: number
  readonly inner: readonly [modulus: number, poisson: number]
  readonly boss: readonly [modulus: number, poisson: number]
}

const pressure = (fit: Fit): number =>
  valueOf(pressFitPressure, {
    interference: fit.interference,
    diameter: fit.diameter,
    'inner-bore': fit.bore,
    'outer-diameter': fit.outer,
    'inner-modulus': fit.inner[0],
    'inner-poisson': fit.inner[1],
    'outer-modulus': fit.boss[0],
    'outer-poisson': fit.boss[1],
  })

/**
 * Second route: Lamé's constants of both rings (stress A ∓ B/r²) as linear equations, solved by mathjs: free bore and rim, one radial
 * stress where they meet, and displacements there that differ by half the interference. A solid part has no B.
 */
function byConstants(fit: Fit): number {
  const [r, a, b] = [fit.diameter / 2, fit.bore / 2, fit.outer / 2]
  const grows = ([modulus, poisson]: readonly [number, number]) => [((1 - poisson) * r) / modulus, (1 + poisson) / (modulus * r)] as const
  const [ring, boss] = [grows(fit.inner), grows(fit.boss)]
  const free = a === 0 ? [0, 1, 0, 0] : [1, -1 / (a * a), 0, 0]
  const rows = [free, [0, 0, 1, -1 / (b * b)], [1, -1 / (r * r), -1, 1 / (r * r)], [-ring[0], -ring[1], boss[0], boss[1]]]
  const solved = lusolve(rows, [0, 0, 0, fit.interference / 2]) as number[][]
  return -((solved[2]?.[0] ?? Number.NaN) - (solved[3]?.[0] ?? Number.NaN) / (r * r))
}

const STEEL = [205000, 0.29] as const
const insert: Fit = { interference: 0.09, diameter: 44, bore: 36, outer: 70, inner: STEEL, boss: [70000, 0.33] }
const stud: Fit = { interference: 0.03, diameter: 11.15, bore: 0, outer: 26, inner: STEEL, boss: [110000, 0.26] }
const rings: Fit = { interference: 0.1, diameter: 200, bore: 150, outer: 250, inner: [200000, 0.3], boss: [200000, 0.3] }

describe('press fits by Lamé', () => {
  // Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.3, and Bhavikatti, Strength of Materials, Example 8.17 (read in textbook
  // companions): rings of RADII 150, 200 and 250 mm, 0.1 mm on the RADIUS, 12.3 MPa; hoops of 56.0 and 43.7 MPa in the outer ring. The same shape at half size.
  it('Ugural and Fenster, Example 8.3: 12.3 MPa', () => {
    expect(Math.abs(pressure(rings) - 12.3)).toBeLessThan(0.05)
    expect(Math.abs(valueOf(pressHoopStress, { pressure: pressure(rings), diameter: 200, 'outer-diameter': 250 }) - 56.03)).toBeLessThan(
      0.05,
    )
  })

  // Derived, closed form and Lamé's constants: pressure, pull-out at friction 0.12, hoop stress at the bore of the boss.
  it.each([
    ['seat insert of steel in aluminium', insert, 8, 33.597279985327035, 4458.388407580918, 77.48684412270431],
    ['stud pressed into an iron boss', stud, 20, 141.49570367474175, 11895.405058672368, 205.2688306197525],
  ])('%s (derived)', (_name, fit, length, expected, pull, hoop) => {
    const p = pressure(fit)
    expect(p / expected).toBeCloseTo(1, 9)
    expect(valueOf(pressPullOut, { pressure: p, diameter: fit.diameter, length, friction: 0.12 }) / pull).toBeCloseTo(1, 9)
    expect(valueOf(pressHoopStress, { pressure: p, diameter: fit.diameter, 'outer-diameter': fit.outer }) / hoop).toBeCloseTo(1, 9)
  })

  it.each([
    ['insert', insert],
    ['stud', stud],
    ['rings', rings],
  ])('%s: the linear equations give the same pressure (mathjs)', (_name, fit) => {
    expect(byConstants(fit) / pressure(fit)).toBeCloseTo(1, 9)
  })
})
