import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const MM_PER_METRE = 1000
const TORQUE: FormulaInput = { kind: 'torque', says: 'tightening torque', least: 0, most: 3000 }
const friction = (says: string): FormulaInput => ({ kind: 'ratio', says, least: 0.04, most: 0.4 })

/**
 * Pull in a bolt from its torque by the nut factor: torque ÷ (factor × diameter), N. Torque alone sets the pull within a quarter or
 * so either way. A stud screwed into a blind hole isn't clamped by its own torque unless it bottoms or shoulders.
 */
export const torqueTension = formula({
  id: 'torque-tension',
  version: 1,
  says: 'Pull in the bolt = tightening torque ÷ (nut factor × nominal diameter).',
  source: 'Shigley, Mechanical Engineering Design, 9th ed., Table 8-15 (nut factors), read in page copies; Wentzell, Machine Design.',
  inputs: {
    torque: TORQUE,
    'nut-factor': {
      kind: 'ratio',
      says: 'nut factor: 0.30 dry and black, 0.20 zinc, 0.18 lubricated, 0.16 cadmium',
      least: 0.08,
      most: 0.5,
    },
    diameter: { kind: 'length', says: 'nominal diameter of the thread', least: 4, most: 50 },
  },
  output: { kind: 'force', says: 'pull in the bolt' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const value = (x.torque * MM_PER_METRE) / (x['nut-factor'] * x.diameter)
    return {
      value,
      partials: {
        torque: MM_PER_METRE / (x['nut-factor'] * x.diameter),
        'nut-factor': -value / x['nut-factor'],
        diameter: -value / x.diameter,
      },
    }
  },
})

/** Pull in a 60° bolt from torque and two friction numbers, after VDI 2230: torque ÷ length, N. Says what thread and head each take. */
export const torqueTensionByFriction = formula({
  id: 'torque-tension-by-friction',
  version: 1,
  says: 'Pull in the bolt = tightening torque ÷ (0.16 × pitch + 0.58 × pitch diameter × thread friction + ½ × bearing diameter × head friction).',
  source: 'VDI 2230, tightening torque of bolts with 60° threads (recalled; agrees with the long power-screw equation).',
  inputs: {
    torque: TORQUE,
    pitch: { kind: 'length', says: 'pitch of the thread', least: 0.25, most: 6 },
    'pitch-diameter': { kind: 'length', says: 'pitch diameter of the thread', least: 3, most: 50 },
    'thread-friction': friction('friction number in the thread'),
    'bearing-diameter': { kind: 'length', says: 'mean diameter on which head or nut bears', least: 4, most: 90 },
    'head-friction': friction('friction number under head or nut'),
  },
  output: { kind: 'force', says: 'pull in the bolt' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const arm = 0.16 * x.pitch + 0.58 * x['pitch-diameter'] * x['thread-friction'] + (x['bearing-diameter'] * x['head-friction']) / 2
    const value = (x.torque * MM_PER_METRE) / arm
    const change = -value / arm
    return {
      value,
      partials: {
        torque: MM_PER_METRE / arm,
        pitch: change * 0.16,
        'pitch-diameter': change * 0.58 * x['thread-friction'],
        'thread-friction': change * 0.58 * x['pitch-diameter'],
        'bearing-diameter': (change * x['head-friction']) / 2,
        'head-friction': (change * x['bearing-diameter']) / 2,
      },
    }
  },
})
