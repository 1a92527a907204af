import { degreesOfTangent, RADIAN } from './elementary.ts'
import { formula } from './formula.ts'

const WIRE = { kind: 'length', says: 'wire diameter', least: 0.5, most: 15 } as const

/** Mean coil diameter of a spring: difference of two lengths, mm. Wire 0.5–15 mm; refused where the wire fills the coil. */
export const springMeanDiameter = formula({
  id: 'spring-mean-diameter',
  version: 1,
  says: 'Mean coil diameter = outside diameter of the spring − wire diameter.',
  source: 'Definition (a difference), as in any machine-design text.',
  inputs: { 'outside-diameter': { kind: 'length', says: 'outside diameter of the spring', least: 5, most: 150 }, 'wire-diameter': WIRE },
  output: { kind: 'length', says: 'mean coil diameter' },
  evaluate: (x) => ({ value: x['outside-diameter'] - x['wire-diameter'], partials: { 'outside-diameter': 1, 'wire-diameter': -1 } }),
  refuses: (x) => (x['outside-diameter'] <= 2 * x['wire-diameter'] ? '“wire-diameter” fills the whole of “outside-diameter”.' : undefined),
})

/**
 * Rate of a cylindrical spring from its wire: stress × length⁴ ÷ (length³ × coils), N/mm. Round wire, straight-line springs, coils not
 * touching. The wire counts fourfold, so a measured rate is better: this one explains and questions a measured one.
 */
export const springRateFromWire = formula({
  id: 'spring-rate-from-wire',
  version: 1,
  says: 'Spring rate = shear modulus × wire diameter⁴ ÷ (8 × mean diameter³ × active coils).',
  source: 'Shigley, Mechanical Engineering Design, chapter on springs; problems read in its solutions manual.',
  inputs: {
    'shear-modulus': {
      kind: 'stress',
      says: 'shear modulus of the wire, about 79,000–81,000 MPa for spring steel',
      least: 30000,
      most: 90000,
    },
    'wire-diameter': WIRE,
    'mean-diameter': { kind: 'length', says: 'mean coil diameter', least: 4, most: 145 },
    'active-coils': { kind: 'ratio', says: 'number of active coils, parts of a coil included', least: 1, most: 40 },
  },
  output: { kind: 'stiffness', says: 'spring rate from the wire' },
  weighs: 'explains',
  evaluate: (x) => {
    const wire = x['wire-diameter']
    const mean = x['mean-diameter']
    const value = (x['shear-modulus'] * wire * wire * wire * wire) / (8 * mean * mean * mean * x['active-coils'])
    return {
      value,
      partials: {
        'shear-modulus': value / x['shear-modulus'],
        'wire-diameter': (4 * value) / wire,
        'mean-diameter': (-3 * value) / mean,
        'active-coils': -value / x['active-coils'],
      },
    }
  },
  refuses: (x) => (x['mean-diameter'] <= x['wire-diameter'] ? '“mean-diameter” must be more than “wire-diameter”.' : undefined),
})

/** How far a spring leans, from the gap at its top against a square: angle whose tangent is length ÷ length, degrees. Springs of 10–300 mm. */
export const squarenessAngle = formula({
  id: 'squareness-angle',
  version: 1,
  says: 'Lean = angle whose tangent is gap at the top ÷ free length.',
  source: 'Plane geometry. Common practice: 1/16 in on a spring of 2 in, which is about 1.8°.',
  inputs: {
    gap: { kind: 'length', says: 'gap between the top coil and a square', least: 0, most: 30 },
    length: { kind: 'length', says: 'free length of the spring', least: 10, most: 300 },
  },
  output: { kind: 'angle', says: 'lean of the spring, from square' },
  evaluate: (x) => {
    const squares = (x.gap * x.gap + x.length * x.length) * RADIAN
    return { value: degreesOfTangent(x.gap / x.length), partials: { gap: x.length / squares, length: -x.gap / squares } }
  },
})
