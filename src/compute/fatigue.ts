import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const stress = (says: string, least = 0): FormulaInput => ({ kind: 'stress', says, least, most: 2500 })
const crossed = (x: Readonly<Record<'greatest-stress' | 'least-stress', number>>): string | undefined =>
  x['least-stress'] > x['greatest-stress'] ? '“least-stress” is more than “greatest-stress”.' : undefined
const SHIGLEY = 'Shigley, Mechanical Engineering Design, 9th ed., chapter on fatigue, read in page copies.'

/** Alternating part of a stress that swings, with the notch: factor × half the swing, MPa. Never put the notch into the endurance limit too. */
export const alternatingStress = formula({
  id: 'alternating-stress',
  version: 1,
  says: 'Alternating stress = fatigue notch factor × (greatest stress − least stress) ÷ 2.',
  source: SHIGLEY,
  inputs: {
    'greatest-stress': stress('greatest nominal stress of the cycle, on the net section'),
    'least-stress': stress('least nominal stress of the cycle, on the net section', -2500),
    'notch-factor': { kind: 'ratio', says: 'fatigue notch factor; 1 with no notch', least: 1, most: 8 },
  },
  output: { kind: 'stress', says: 'alternating stress at the notch' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const half = (x['greatest-stress'] - x['least-stress']) / 2
    const factor = x['notch-factor']
    return { value: factor * half, partials: { 'greatest-stress': factor / 2, 'least-stress': -factor / 2, 'notch-factor': half } }
  },
  refuses: crossed,
})

/** Mean of a stress that swings: half the sum of its ends, MPa. A tough steel yields a little at the notch, so the notch is left out. */
export const meanStress = formula({
  id: 'mean-stress',
  version: 1,
  says: 'Mean stress = (greatest stress + least stress) ÷ 2.',
  source: SHIGLEY,
  inputs: {
    'greatest-stress': stress('greatest nominal stress of the cycle, on the net section'),
    'least-stress': stress('least nominal stress of the cycle, on the net section', -2500),
  },
  output: { kind: 'stress', says: 'mean stress' },
  weighs: 'never-clears',
  evaluate: (x) => ({
    value: (x['greatest-stress'] + x['least-stress']) / 2,
    partials: { 'greatest-stress': 0.5, 'least-stress': 0.5 },
  }),
  refuses: crossed,
})

/**
 * Safety factor against fatigue by the modified Goodman line: 1 ÷ (alternating ÷ endurance + mean ÷ strength), no unit. Below 1 the part
 * is expected to break in time. Above 1 it proves nothing: strength, root radius and loads of a used stud are guesses.
 */
export const goodmanSafety = formula({
  id: 'goodman-safety',
  version: 1,
  says: 'Safety factor = 1 ÷ (alternating stress ÷ endurance limit + mean stress ÷ tensile strength).',
  source: 'Shigley, Mechanical Engineering Design, 9th ed., p. 346 (modified Goodman), read in page copies.',
  inputs: {
    'alternating-stress': stress('alternating stress, the notch in it'),
    'mean-stress': stress('mean stress'),
    'endurance-limit': stress('endurance limit of the part', 10),
    'tensile-strength': stress('tensile strength', 100),
  },
  output: { kind: 'ratio', says: 'safety factor against fatigue; below 1 a break is expected' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const used = x['alternating-stress'] / x['endurance-limit'] + x['mean-stress'] / x['tensile-strength']
    const value = 1 / used
    const change = -value * value
    return {
      value,
      partials: {
        'alternating-stress': change / x['endurance-limit'],
        'mean-stress': change / x['tensile-strength'],
        'endurance-limit': (-change * x['alternating-stress']) / (x['endurance-limit'] * x['endurance-limit']),
        'tensile-strength': (-change * x['mean-stress']) / (x['tensile-strength'] * x['tensile-strength']),
      },
    }
  },
  refuses: (x) =>
    x['alternating-stress'] === 0 && x['mean-stress'] === 0
      ? 'with “alternating-stress” and “mean-stress” both 0 there is nothing to be safe from.'
      : undefined,
})
