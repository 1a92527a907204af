import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const mass = (says: string): FormulaInput => ({ kind: 'mass', says, least: 0, most: 2 })

/** The share of a spring’s mass that moves with its free end: a third, by kinetic energy with speed falling evenly to the seat. */
const SPRING_SHARE = 3

/**
 * Mass that moves with the valve as if all of it sat at the valve: sum of masses, each by the square of its speed against the
 * valve's, kg. Cam-side parts move slower by the rocker ratio. Weigh the parts. An overhead cam's follower: ratio 1, pushrod 0.
 */
export const equivalentMass = formula({
  id: 'equivalent-mass',
  version: 1,
  says: 'Equivalent mass at the valve = valve + retainer + keepers + spring ÷ 3 + (pushrod + tappet) ÷ rocker ratio² + rocker × (radius of gyration ÷ valve arm)².',
  source: 'Equal kinetic energy of a rigid train, derived; the same sum stands in machine-dynamics texts.',
  inputs: {
    valve: mass('mass of the valve'),
    retainer: mass('mass of the retainer'),
    keepers: mass('mass of both keepers'),
    spring: mass('mass of the spring or springs'),
    pushrod: mass('mass of the pushrod'),
    tappet: mass('mass of the tappet or roller lifter'),
    'rocker-ratio': { kind: 'ratio', says: 'rocker ratio: valve arm ÷ pushrod arm', least: 0.5, most: 4 },
    rocker: mass('mass of the rocker'),
    'gyration-radius': { kind: 'length', says: 'radius of gyration of the rocker about its fulcrum', least: 0, most: 100 },
    'valve-arm': { kind: 'length', says: 'arm of the rocker on the valve’s side', least: 10, most: 150 },
  },
  output: { kind: 'mass', says: 'equivalent mass at the valve' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const squared = x['rocker-ratio'] * x['rocker-ratio']
    const cam = (x.pushrod + x.tappet) / squared
    const lever = x['gyration-radius'] / x['valve-arm']
    const turning = x.rocker * lever * lever
    return {
      value: x.valve + x.retainer + x.keepers + x.spring / SPRING_SHARE + cam + turning,
      partials: {
        valve: 1,
        retainer: 1,
        keepers: 1,
        spring: 1 / SPRING_SHARE,
        pushrod: 1 / squared,
        tappet: 1 / squared,
        'rocker-ratio': (-2 * cam) / x['rocker-ratio'],
        rocker: lever * lever,
        'gyration-radius': (2 * x.rocker * lever) / x['valve-arm'],
        'valve-arm': (-2 * turning) / x['valve-arm'],
      },
    }
  },
})
