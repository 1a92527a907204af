import { PI, RADIAN } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const MM_PER_METRE = 1000
/** Radians a second of the camshaft for each revolution a minute of the crankshaft: the cam turns at half speed. */
const CAM_SPEED = PI / 60

const LIFT: FormulaInput = { kind: 'length', says: 'gross lift at the valve', least: 0, most: 40 }
const CRANK: FormulaInput = { kind: 'ratio', says: 'speed of the crankshaft, revolutions a minute', least: 100, most: 12000 }
const force = (says: string): FormulaInput => ({ kind: 'force', says, least: 1, most: 20000 })

/**
 * Deceleration of the valve over the nose of a cam by the harmonic law, in mm for each radian squared of cam angle (kept as a
 * length: a radian has no unit). `half-event` is the CAM angle from closed to full lift, not the crank's. Rigid train.
 */
export const harmonicNoseAcceleration = formula({
  id: 'harmonic-nose-acceleration',
  version: 1,
  says: 'Deceleration over the nose, mm for each radian² of the cam = ½ × lift × (π ÷ cam angle from closed to full lift)².',
  source:
    'Simple harmonic cam law, peak factor π²/2 = 4.935 (Norton, Design of Machinery, table of cam laws, recalled); checked on Sarkar, Theory of Machines.',
  inputs: { lift: LIFT, 'half-event': { kind: 'angle', says: 'cam angle from closed to full lift', least: 20, most: 180 } },
  output: { kind: 'length', says: 'deceleration over the nose, for each radian squared of cam angle' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const turns = PI / (x['half-event'] * RADIAN)
    const value = (x.lift * turns * turns) / 2
    return { value, partials: { lift: (turns * turns) / 2, 'half-event': (-2 * value) / x['half-event'] } }
  },
})

/**
 * Greatest acceleration of a rise by any published cam law, in mm for each radian squared of cam angle: factor × lift ÷ angle².
 * Factors: parabolic 4, harmonic 4.935, 3-4-5 polynomial 5.774, cycloidal 6.283. The angle is the cam's for the whole rise.
 */
export const camPeakAcceleration = formula({
  id: 'cam-peak-acceleration',
  version: 1,
  says: 'Greatest acceleration of the rise, mm for each radian² of the cam = factor of the cam law × lift ÷ (cam angle of the rise)².',
  source: 'Peak factors of the cam laws: Norton, Design of Machinery (recalled; the laws themselves checked by numbers).',
  inputs: {
    lift: LIFT,
    'rise-angle': { kind: 'angle', says: 'cam angle of the whole rise', least: 20, most: 180 },
    factor: { kind: 'ratio', says: 'peak acceleration factor of the cam law', least: 3, most: 12 },
  },
  output: { kind: 'length', says: 'greatest acceleration, for each radian squared of cam angle' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const angle = x['rise-angle'] * RADIAN
    const value = (x.factor * x.lift) / (angle * angle)
    return {
      value,
      partials: { lift: x.factor / (angle * angle), 'rise-angle': (-2 * value) / x['rise-angle'], factor: x.lift / (angle * angle) },
    }
  },
})

/**
 * Spring force that keeps the train on the cam: mass × acceleration, N, acceleration from mm a radian² and the speed. A rigid train
 * is the lower bound: real ones bend and surge and need more. Compare at every lift, not the nose alone.
 */
export const requiredSpringForce = formula({
  id: 'required-spring-force',
  version: 1,
  says: 'Force needed = equivalent mass × deceleration for each radian² × (cam speed in radians a second)², the cam at half the crankshaft’s speed.',
  source: 'Newton’s second law for a rigid train, as in machine-dynamics texts; no published valve-train example was at hand.',
  inputs: {
    'equivalent-mass': { kind: 'mass', says: 'equivalent mass at the valve', least: 0.005, most: 10 },
    acceleration: { kind: 'length', says: 'deceleration of the valve, mm for each radian squared of cam angle', least: 0, most: 1000 },
    'crank-speed': CRANK,
  },
  output: { kind: 'force', says: 'spring force that a rigid train needs' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const speed = x['crank-speed'] * CAM_SPEED
    const each = (speed * speed) / MM_PER_METRE
    const value = x['equivalent-mass'] * x.acceleration * each
    return {
      value,
      partials: {
        'equivalent-mass': x.acceleration * each,
        acceleration: x['equivalent-mass'] * each,
        'crank-speed': (2 * value) / x['crank-speed'],
      },
    }
  },
})

/** How many times over a spring has the force that is needed: force ÷ force, no unit. 1 is none in hand. */
export const springForceInHand = formula({
  id: 'spring-force-in-hand',
  version: 1,
  says: 'Force in hand = spring force available ÷ spring force needed.',
  source: 'Definition (a ratio).',
  inputs: { available: force('spring force available at that lift'), required: force('spring force needed there') },
  output: { kind: 'ratio', says: 'spring force available for each unit needed' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const value = x.available / x.required
    return { value, partials: { available: 1 / x.required, required: -value / x.required } }
  },
})

/** Crankshaft speed at which a rigid train would leave the cam: speed × √(force ÷ force), revolutions a minute. An upper bound. */
export const valveFloatSpeed = formula({
  id: 'valve-float-speed',
  version: 1,
  says: 'Float speed = crankshaft speed × √(spring force available ÷ spring force needed at that speed).',
  source: 'The force needed grows as the square of the speed.',
  inputs: {
    'crank-speed': CRANK,
    available: force('spring force available at that lift'),
    required: force('spring force needed there at that speed'),
  },
  output: { kind: 'ratio', says: 'crankshaft speed at which a rigid train floats, revolutions a minute' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const over = Math.sqrt(x.available / x.required)
    const value = x['crank-speed'] * over
    return { value, partials: { 'crank-speed': over, available: value / (2 * x.available), required: -value / (2 * x.required) } }
  },
})
