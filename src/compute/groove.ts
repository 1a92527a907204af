import { formula } from './formula.ts'
import type { Evaluated, FormulaInput, Values } from './formula.ts'
import { BLUNT_TO, MOST_SHARPNESS, PETERSON_BENDING, PETERSON_TENSION, ROARK_BENDING, ROARK_TENSION } from './groove-fits.ts'
import type { GrooveFit } from './groove-fits.ts'

type GrooveName = 'diameter' | 'depth' | 'root-radius'

const DIAMETER: FormulaInput = { kind: 'length', says: 'diameter of the stud beside the groove', least: 3, most: 40 }
const DEPTH: FormulaInput = {
  kind: 'length',
  says: 'depth of the groove; of a groove on one side, its greatest depth',
  least: 0.01,
  most: 10,
}
const INPUTS = {
  diameter: DIAMETER,
  depth: DEPTH,
  'root-radius': {
    kind: 'length',
    says: 'smallest radius at the bottom of the groove; unmeasured, the smallest plausible',
    least: 0.02,
    most: 10,
  },
} as const

const noSection = (x: Values<'diameter' | 'depth'>): string | undefined =>
  2 * x.depth >= x.diameter ? '“depth” leaves no section of “diameter”.' : undefined

/**
 * Diameter left at the bottom of a groove all round: difference of two lengths, mm. A groove worn on one side is taken as if it
 * went all round, which is on the safe side for the nominal stress (derived for tension and for bending).
 */
export const grooveNetDiameter = formula({
  id: 'groove-net-diameter',
  version: 1,
  says: 'Net diameter = diameter − 2 × depth of the groove.',
  source: 'Definition (a difference).',
  inputs: { diameter: DIAMETER, depth: DEPTH },
  output: { kind: 'length', says: 'diameter left at the bottom of the groove' },
  evaluate: (x) => ({ value: x.diameter - 2 * x.depth, partials: { diameter: 1, depth: -2 } }),
  refuses: noSection,
})

/** Value of a fit and its change with diameter, depth and root radius. */
function concentration(fit: GrooveFit, x: Values<GrooveName>): Evaluated<GrooveName> {
  const sharpness = x.depth / x['root-radius']
  const root = Math.sqrt(sharpness)
  const share = (2 * x.depth) / x.diameter
  const [c0, c1, c2, c3] = (sharpness <= BLUNT_TO ? fit.blunt : fit.sharp).map(([a, b, c]) => a + b * root + c * sharpness) as [
    number,
    number,
    number,
    number,
  ]
  const [d0, d1, d2, d3] = (sharpness <= BLUNT_TO ? fit.blunt : fit.sharp).map(([, b, c]) => b + 2 * c * root) as [
    number,
    number,
    number,
    number,
  ]
  const perRoot = d0 + share * (d1 + share * (d2 + share * d3))
  const perShare = c1 + share * (2 * c2 + share * 3 * c3)
  return {
    value: c0 + share * (c1 + share * (c2 + share * c3)),
    partials: {
      diameter: (-perShare * share) / x.diameter,
      depth: (perRoot * root) / (2 * x.depth) + (perShare * 2) / x.diameter,
      'root-radius': (-perRoot * root) / (2 * x['root-radius']),
    },
  }
}

function beyondFit(fit: GrooveFit, x: Values<GrooveName>): string | undefined {
  const sharpness = x.depth / x['root-radius']
  if (sharpness >= fit.least && sharpness <= MOST_SHARPNESS) return noSection(x)
  return `“depth” ÷ “root-radius” is ${String(sharpness)}; the fit holds from ${String(fit.least)} to ${String(MOST_SHARPNESS)}.`
}

const stressConcentration = (named: string, load: 'tension' | 'bending', source: string, fit: GrooveFit) =>
  formula({
    id: `groove-stress-concentration-${named}${load === 'bending' ? '-bending' : ''}`,
    version: 1,
    says: `Stress concentration of the groove in ${load} = a published cubic in 2 × depth ÷ diameter whose coefficients follow √(depth ÷ root radius); for the stress on the net section.`,
    source,
    inputs: INPUTS,
    output: { kind: 'ratio', says: `stress at the groove’s root ÷ nominal stress on the net section, in ${load}` },
    weighs: 'never-clears',
    evaluate: (x) => concentration(fit, x),
    refuses: (x) => beyondFit(fit, x),
  })

const ROARK = 'Roark’s Formulas for Stress and Strain, Table 17.1 (read in reprints).'
const PETERSON = 'Peterson’s Stress Concentration Factors, by Pilkey, U-groove round a bar (coefficients read in a reprint).'

/**
 * Elastic stress concentration of a groove round a bar in tension, by Roark's fit: lengths → ratio. Depth ÷ root radius 0.25–50.
 * Roark and Peterson differ by 1–8 %: show both and take neither to three figures. For the NET section; on the gross one it understates.
 * A worn groove may be torn or hardened as well: it explains, it may condemn, it never clears.
 */
export const grooveConcentrationRoark = stressConcentration('roark', 'tension', ROARK, ROARK_TENSION)

/** The same by Peterson's fit, tension. Depth ÷ root radius 0.1–50. */
export const grooveConcentrationPeterson = stressConcentration('peterson', 'tension', PETERSON, PETERSON_TENSION)

/** The same by Roark's fit, bending. Depth ÷ root radius 0.25–50. */
export const grooveConcentrationRoarkBending = stressConcentration('roark', 'bending', ROARK, ROARK_BENDING)

/** The same by Peterson's fit, bending. Depth ÷ root radius 0.25–50. */
export const grooveConcentrationPetersonBending = stressConcentration('peterson', 'bending', PETERSON, PETERSON_BENDING)
