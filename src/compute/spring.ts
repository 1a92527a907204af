import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const height = (says: string): FormulaInput => ({ kind: 'length', says, least: 5, most: 300 })
const load = (says: string): FormulaInput => ({ kind: 'force', says, least: 0, most: 10000 })
const rate = (says: string): FormulaInput => ({ kind: 'stiffness', says, least: 0.1, most: 1000 })

/**
 * Rate of a spring from two loads: force difference ÷ height difference, N/mm. Straight-line springs only; a beehive or
 * conical spring stiffens as its coils close. Heights 5–300 mm, loads up to 10,000 N; the second height is the shorter one.
 */
export const springRateFromLoads = formula({
  id: 'spring-rate-from-loads',
  version: 1,
  says: 'Spring rate = (load at the second height − load at the first) ÷ (first height − second height).',
  source: 'Definition of spring rate (Hooke’s law), as in any machine-design text.',
  inputs: {
    'first-load': load('load at the first, taller height'),
    'first-height': height('first height, such as the installed height'),
    'second-load': load('load at the second, shorter height'),
    'second-height': height('second height, such as the height at full lift'),
  },
  output: { kind: 'stiffness', says: 'spring rate' },
  evaluate: (x) => {
    const squeezed = x['first-height'] - x['second-height']
    const value = (x['second-load'] - x['first-load']) / squeezed
    return {
      value,
      partials: {
        'first-load': -1 / squeezed,
        'first-height': -value / squeezed,
        'second-load': 1 / squeezed,
        'second-height': value / squeezed,
      },
    }
  },
  refuses: (x) => {
    if (x['first-height'] <= x['second-height']) return '“second-height” must be less than “first-height”.'
    if (x['second-load'] <= x['first-load'])
      return '“second-load” must be more than “first-load”: a spring pushes harder when it is squeezed.'
    return undefined
  },
})

/** Load of a spring at another height: force + rate × height difference, N. Straight-line springs; refused beyond the free length. */
export const springLoadAtHeight = formula({
  id: 'spring-load-at-height',
  version: 1,
  says: 'Load at a height = known load + rate × (height of the known load − height).',
  source: 'Hooke’s law, as in any machine-design text.',
  inputs: {
    'known-load': load('load that is known'),
    'known-height': height('height at which that load is known'),
    rate: rate('spring rate'),
    height: height('height at which the load is wanted'),
  },
  output: { kind: 'force', says: 'load at the height' },
  evaluate: (x) => {
    const squeezed = x['known-height'] - x.height
    return {
      value: x['known-load'] + x.rate * squeezed,
      partials: { 'known-load': 1, 'known-height': x.rate, rate: squeezed, height: -x.rate },
    }
  },
  refuses: (x) =>
    x['known-load'] + x.rate * (x['known-height'] - x.height) < 0
      ? 'at this “height” the spring is longer than free and bears no load.'
      : undefined,
})

/**
 * Load at full lift: force + rate × lift, N. Straight-line springs. Lift 0–40 mm. Where the rate was worked out from this same
 * seat load the two are not independent, and the uncertainty comes out too large: on the safe side.
 */
export const springOpenLoad = formula({
  id: 'spring-open-load',
  version: 1,
  says: 'Open load = seat load + rate × lift.',
  source: 'Hooke’s law, as in any machine-design text.',
  inputs: {
    'seat-load': load('load at the installed height, valve closed'),
    rate: rate('spring rate'),
    lift: { kind: 'length', says: 'valve lift', least: 0, most: 40 },
  },
  output: { kind: 'force', says: 'load at full lift' },
  evaluate: (x) => ({
    value: x['seat-load'] + x.rate * x.lift,
    partials: { 'seat-load': 1, rate: x.lift, lift: x.rate },
  }),
})

/** What share of its specified load a spring still gives: force ÷ force, no unit. Both loads at one and the same height. */
export const springLoadShare = formula({
  id: 'spring-load-share',
  version: 1,
  says: 'Share of the specified load = measured load ÷ specified load, both at the specified height.',
  source: 'Definition (a ratio).',
  inputs: {
    'measured-load': load('load measured at the specified height'),
    'specified-load': { ...load('load specified at that height: the middle of its band'), least: 1 },
  },
  output: { kind: 'ratio', says: 'share of the specified load' },
  evaluate: (x) => {
    const value = x['measured-load'] / x['specified-load']
    return { value, partials: { 'measured-load': 1 / x['specified-load'], 'specified-load': -value / x['specified-load'] } }
  },
})

/** Free length lost against a new spring: length ÷ length, no unit; 0.03 is three per cent. Negative: longer than new. */
export const freeLengthLoss = formula({
  id: 'free-length-loss',
  version: 1,
  says: 'Free length lost = (free length of a new spring − measured free length) ÷ free length of a new spring.',
  source: 'Definition (a ratio).',
  inputs: {
    'new-length': height('free length of a new spring, specified or measured'),
    'measured-length': height('free length as measured'),
  },
  output: { kind: 'ratio', says: 'share of the free length that is lost' },
  evaluate: (x) => {
    const left = x['measured-length'] / x['new-length']
    return {
      value: (x['new-length'] - x['measured-length']) / x['new-length'],
      partials: { 'new-length': left / x['new-length'], 'measured-length': -1 / x['new-length'] },
    }
  },
})

/** Load that a spring loses when it stands taller: force = rate × length, N. Straight-line springs. Negative distance: it stands lower and gains. */
export const loadLost = formula({
  id: 'load-lost',
  version: 1,
  says: 'Load lost = spring rate × distance by which the spring stands taller.',
  source: 'Hooke’s law, as in any machine-design text.',
  inputs: {
    rate: rate('spring rate'),
    distance: {
      kind: 'length',
      says: 'how much taller the spring stands, such as the sink of the valve less the shim',
      least: -20,
      most: 20,
    },
  },
  output: { kind: 'force', says: 'load lost' },
  evaluate: (x) => ({ value: x.rate * x.distance, partials: { rate: x.distance, distance: x.rate } }),
})
