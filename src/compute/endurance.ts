import { ln, power } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const STRENGTH: FormulaInput = { kind: 'stress', says: 'tensile strength of the steel', least: 340, most: 1400 }
const factor = (says: string): FormulaInput => ({ kind: 'ratio', says, least: 0.05, most: 1.2 })
const SHIGLEY = 'Shigley, Mechanical Engineering Design, 9th ed., pp. 345–346 (Marin’s factors), read in page copies.'

/** Endurance limit of a polished test bar of steel: half its tensile strength, MPa. Up to 1,400 MPa; above, strength gains nothing more. */
export const enduranceLimitOfBar = formula({
  id: 'endurance-limit-of-bar',
  version: 1,
  says: 'Endurance limit of a polished bar = 0.5 × tensile strength.',
  source: SHIGLEY,
  inputs: { 'tensile-strength': STRENGTH },
  output: { kind: 'stress', says: 'endurance limit of a polished test bar' },
  weighs: 'never-clears',
  evaluate: (x) => ({ value: x['tensile-strength'] / 2, partials: { 'tensile-strength': 0.5 } }),
})

/** Marin's surface factor: a × strengthᵇ, no unit. Strength in MPa, a and b from the finish's row of one edition: editions differ, so don't mix them. */
export const surfaceFactor = formula({
  id: 'surface-factor',
  version: 1,
  says: 'Surface factor = a × (tensile strength in MPa)ᵇ, a and b from the table of finishes.',
  source: SHIGLEY,
  inputs: {
    'tensile-strength': STRENGTH,
    a: { kind: 'ratio', says: 'a of the finish, for strength in MPa', least: 1, most: 300 },
    b: { kind: 'ratio', says: 'b of the finish', least: -1, most: -0.05 },
  },
  output: { kind: 'ratio', says: 'surface factor' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const value = x.a * power(x['tensile-strength'], x.b)
    return {
      value,
      partials: { 'tensile-strength': (value * x.b) / x['tensile-strength'], a: value / x.a, b: value * ln(x['tensile-strength']) },
    }
  },
})

/** Marin's size factor in bending or torsion: 1.24 × diameter^−0.107, no unit. Round bars of 2.79–51 mm that turn; in tension it is 1. */
export const sizeFactor = formula({
  id: 'size-factor',
  version: 1,
  says: 'Size factor = 1.24 × (diameter in mm)^−0.107, for bending and torsion of a bar that turns.',
  source: SHIGLEY,
  inputs: {
    diameter: {
      kind: 'length',
      says: 'diameter of the bar; for one that does not turn, its equivalent diameter, 0.370 of it',
      least: 2.79,
      most: 51,
    },
  },
  output: { kind: 'ratio', says: 'size factor' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const value = 1.24 * power(x.diameter, -0.107)
    return { value, partials: { diameter: (-0.107 * value) / x.diameter } }
  },
})

/** Endurance limit of the part: product of the bar's limit and Marin's factors, MPa. The notch belongs on the stress, not here as well. */
export const enduranceLimit = formula({
  id: 'endurance-limit',
  version: 1,
  says: 'Endurance limit of the part = limit of the bar × surface factor × size factor × load factor × reliability factor.',
  source: SHIGLEY,
  inputs: {
    'bar-limit': { kind: 'stress', says: 'endurance limit of a polished bar', least: 50, most: 750 },
    'surface-factor': factor('surface factor'),
    'size-factor': factor('size factor'),
    'load-factor': factor('load factor: bending 1, tension 0.85, torsion 0.59'),
    'reliability-factor': factor('reliability factor: 1 for one half, 0.897 for 90 %, 0.814 for 99 %'),
  },
  output: { kind: 'stress', says: 'endurance limit of the part' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const value = x['bar-limit'] * x['surface-factor'] * x['size-factor'] * x['load-factor'] * x['reliability-factor']
    return {
      value,
      partials: {
        'bar-limit': value / x['bar-limit'],
        'surface-factor': value / x['surface-factor'],
        'size-factor': value / x['size-factor'],
        'load-factor': value / x['load-factor'],
        'reliability-factor': value / x['reliability-factor'],
      },
    }
  },
})
