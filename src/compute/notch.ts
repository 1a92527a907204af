import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'
import { INCH_OF_NOTCH, KPSI, NEUBER_STEEL } from './notch-constants.ts'

const CONCENTRATION: FormulaInput = { kind: 'ratio', says: 'elastic stress concentration of the notch', least: 1, most: 8 }
const STRENGTH: FormulaInput = { kind: 'stress', says: 'tensile strength of the steel', least: 340, most: 1700 }
const RADIUS: FormulaInput = { kind: 'length', says: 'radius at the bottom of the notch', least: 0.02, most: 10 }

/**
 * Fatigue notch factor by Neuber's constant for steel, bending or tension: ratio, never above the elastic concentration. A fit in its
 * own units (kpsi, inches), converted inside. Steels of 340–1,700 MPa. It screens; it is no proof of a stud's life.
 */
export const notchFactorNeuber = formula({
  id: 'notch-factor-neuber',
  version: 1,
  says: 'Fatigue notch factor = 1 + (stress concentration − 1) ÷ (1 + √a ÷ √(root radius)), √a being Neuber’s constant of the steel.',
  source: 'Shigley, Mechanical Engineering Design, 9th ed., p. 346 (Neuber’s constant for steels), read in page copies.',
  inputs: { 'stress-concentration': CONCENTRATION, 'tensile-strength': STRENGTH, 'root-radius': RADIUS },
  output: { kind: 'ratio', says: 'fatigue notch factor' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const [n0, n1, n2, n3] = NEUBER_STEEL
    const strength = x['tensile-strength'] / KPSI
    const constant = n0 + strength * (n1 + strength * (n2 + strength * n3))
    const slope = (n1 + strength * (2 * n2 + strength * 3 * n3)) / KPSI
    const root = Math.sqrt(x['root-radius'] / INCH_OF_NOTCH)
    const blunted = 1 + constant / root
    const above = (x['stress-concentration'] - 1) / blunted
    return {
      value: 1 + above,
      partials: {
        'stress-concentration': 1 / blunted,
        'tensile-strength': (-above * slope) / (root * blunted),
        'root-radius': (above * constant) / (2 * root * blunted * x['root-radius']),
      },
    }
  },
})

/**
 * Fatigue notch factor in Heywood's form: ratio. `material-constant` is the kind of notch as the source tabulates it, in MPa·√mm:
 * 104 for a groove, 139 for a shoulder, 174 for a cross hole. A second opinion on Neuber's; show the band between the two.
 */
export const notchFactorHeywood = formula({
  id: 'notch-factor-heywood',
  version: 1,
  says: 'Fatigue notch factor = Kt ÷ (1 + 2 × (Kt − 1) ÷ Kt × √a ÷ √(root radius)), √a = constant of the notch ÷ tensile strength.',
  source: 'Shigley, Mechanical Engineering Design, 9th ed., p. 335 (modified Neuber equation, Heywood’s parameter), read in page copies.',
  inputs: {
    'stress-concentration': CONCENTRATION,
    'material-constant': {
      kind: 'ratio',
      says: 'Heywood’s constant for the kind of notch, MPa·√mm as a plain number',
      least: 50,
      most: 250,
    },
    'tensile-strength': STRENGTH,
    'root-radius': RADIUS,
  },
  output: { kind: 'ratio', says: 'fatigue notch factor' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const elastic = x['stress-concentration']
    const root = x['material-constant'] / (x['tensile-strength'] * Math.sqrt(x['root-radius']))
    const blunted = 1 + (2 * (elastic - 1) * root) / elastic
    const value = elastic / blunted
    const perRoot = (-2 * (elastic - 1)) / (blunted * blunted)
    return {
      value,
      partials: {
        'stress-concentration': 1 / blunted - (2 * root) / (elastic * blunted * blunted),
        'material-constant': (perRoot * root) / x['material-constant'],
        'tensile-strength': (-perRoot * root) / x['tensile-strength'],
        'root-radius': (-perRoot * root) / (2 * x['root-radius']),
      },
    }
  },
})
