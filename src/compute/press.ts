import { PI } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const modulus = (says: string): FormulaInput => ({ kind: 'stress', says, least: 40000, most: 250000 })
const poisson = (says: string): FormulaInput => ({ kind: 'ratio', says, least: 0.2, most: 0.4 })
const INTERFACE: FormulaInput = { kind: 'length', says: 'diameter where the two parts meet', least: 5, most: 200 }
const OUTER: FormulaInput = {
  kind: 'length',
  says: 'outside diameter of the boss, or of the metal round it that helps',
  least: 8,
  most: 400,
}
const PRESSURE: FormulaInput = { kind: 'stress', says: 'pressure between the two parts', least: 0, most: 1000 }
const thinBoss = (x: Readonly<Record<'diameter' | 'outer-diameter', number>>): string | undefined =>
  x['outer-diameter'] <= x.diameter ? '“outer-diameter” must be more than “diameter”.' : undefined

/** (b² + a²) ÷ (b² − a²) of a ring from a to b, and its change with a and with b. */
function ring(inner: number, outer: number) {
  const [a, b] = [inner * inner, outer * outer]
  const wall = b - a
  return { value: (b + a) / wall, inner: (4 * inner * b) / (wall * wall), outer: (-4 * outer * a) / (wall * wall) }
}

/**
 * Pressure of a press fit by Lamé: stress from lengths and elastic constants, MPa. `interference` is across the DIAMETER (taking it
 * for the radius doubles the answer). Elastic: where the boss yields, and it is no free ring, the true pressure is lower: an upper bound.
 */
export const pressFitPressure = formula({
  id: 'press-fit-pressure',
  version: 1,
  says: 'Pressure = interference ÷ diameter ÷ ((outer ring factor + its Poisson number) ÷ its modulus + (inner ring factor − its Poisson number) ÷ its modulus), ring factor = (b² + a²) ÷ (b² − a²).',
  source: 'Lamé’s thick rings: Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.3 (read in a textbook companion).',
  inputs: {
    interference: { kind: 'length', says: 'interference across the diameter', least: 0, most: 1 },
    diameter: INTERFACE,
    'inner-bore': { kind: 'length', says: 'bore of the inner part; 0 where it is solid', least: 0, most: 190 },
    'outer-diameter': OUTER,
    'inner-modulus': modulus('modulus of elasticity of the inner part'),
    'inner-poisson': poisson('Poisson number of the inner part'),
    'outer-modulus': modulus('modulus of elasticity of the outer part'),
    'outer-poisson': poisson('Poisson number of the outer part'),
  },
  output: { kind: 'stress', says: 'pressure between the two parts, elastic' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const outer = ring(x.diameter, x['outer-diameter'])
    const inner = ring(x['inner-bore'], x.diameter)
    const give = (outer.value + x['outer-poisson']) / x['outer-modulus'] + (inner.value - x['inner-poisson']) / x['inner-modulus']
    const value = x.interference / (x.diameter * give)
    const change = -value / give
    return {
      value,
      partials: {
        interference: 1 / (x.diameter * give),
        diameter: -value / x.diameter + change * (outer.inner / x['outer-modulus'] + inner.outer / x['inner-modulus']),
        'inner-bore': (change * inner.inner) / x['inner-modulus'],
        'outer-diameter': (change * outer.outer) / x['outer-modulus'],
        'inner-modulus': (-change * (inner.value - x['inner-poisson'])) / (x['inner-modulus'] * x['inner-modulus']),
        'inner-poisson': -change / x['inner-modulus'],
        'outer-modulus': (-change * (outer.value + x['outer-poisson'])) / (x['outer-modulus'] * x['outer-modulus']),
        'outer-poisson': change / x['outer-modulus'],
      },
    }
  },
  refuses: (x) => thinBoss(x) ?? (x['inner-bore'] >= x.diameter ? '“inner-bore” must be less than “diameter”.' : undefined),
})

/** Greatest hoop stress in the boss of a press fit: pressure × ring factor, MPa. Above the yield of the boss the fit is no longer elastic. */
export const pressHoopStress = formula({
  id: 'press-hoop-stress',
  version: 1,
  says: 'Hoop stress at the bore of the boss = pressure × (outer diameter² + diameter²) ÷ (outer diameter² − diameter²).',
  source: 'Lamé’s thick rings: Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.3 (read in a textbook companion).',
  inputs: { pressure: PRESSURE, diameter: INTERFACE, 'outer-diameter': OUTER },
  output: { kind: 'stress', says: 'hoop stress at the bore of the boss' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const outer = ring(x.diameter, x['outer-diameter'])
    return {
      value: x.pressure * outer.value,
      partials: { pressure: outer.value, diameter: x.pressure * outer.inner, 'outer-diameter': x.pressure * outer.outer },
    }
  },
  refuses: thinBoss,
})

/** Force that pulls a pressed part out: friction × pressure × area, N. The friction number is a guess; oil, heat and an earlier pull lower it. */
export const pressPullOut = formula({
  id: 'press-pull-out',
  version: 1,
  says: 'Pull-out force = friction number × pressure × π × diameter × length of the fit.',
  source: 'Friction on a cylinder under Lamé’s pressure, as in any machine-design text.',
  inputs: {
    pressure: PRESSURE,
    diameter: INTERFACE,
    length: { kind: 'length', says: 'length of the fit', least: 2, most: 150 },
    friction: { kind: 'ratio', says: 'friction number of the fit', least: 0.02, most: 0.4 },
  },
  output: { kind: 'force', says: 'force that pulls the part out' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const value = x.friction * x.pressure * PI * x.diameter * x.length
    return {
      value,
      partials: {
        pressure: x.friction * PI * x.diameter * x.length,
        diameter: value / x.diameter,
        length: value / x.length,
        friction: value / x.friction,
      },
    }
  },
})
