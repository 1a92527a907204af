import { formula } from './formula.ts'

const MM_PER_METRE = 1000

/**
 * First natural frequency of a spring between two fixed ends: √(rate ÷ mass), in hertz, a plain number. Mass is that of the active
 * coils alone, weighed or worked out. A spring with one end free has half of it. Explains surge; says nothing of damping.
 */
export const springNaturalFrequency = formula({
  id: 'spring-natural-frequency',
  version: 1,
  says: 'Natural frequency of the spring, in hertz = ½ × √(rate ÷ mass of the active coils).',
  source:
    'Shigley, Mechanical Engineering Design, critical frequency of helical springs; EN 13906-1 gives the same within 0.03 % (both recalled).',
  inputs: {
    rate: { kind: 'stiffness', says: 'spring rate', least: 0.1, most: 1000 },
    'active-mass': { kind: 'mass', says: 'mass of the active coils', least: 0.001, most: 2 },
  },
  output: { kind: 'ratio', says: 'first natural frequency, both ends fixed, in hertz' },
  weighs: 'explains',
  evaluate: (x) => {
    const value = Math.sqrt((x.rate * MM_PER_METRE) / x['active-mass']) / 2
    return { value, partials: { rate: value / (2 * x.rate), 'active-mass': -value / (2 * x['active-mass']) } }
  },
})

/** How many times a spring swings by itself in one turn of the camshaft: a plain number. Low orders meet strong harmonics of the cam. */
export const surgeOrder = formula({
  id: 'surge-order',
  version: 1,
  says: 'Surge order = natural frequency in hertz × 120 ÷ crankshaft speed in revolutions a minute: swings in one turn of the camshaft.',
  source: 'Definition (a ratio): the camshaft turns once in two turns of the crankshaft.',
  inputs: {
    frequency: { kind: 'ratio', says: 'natural frequency of the spring, in hertz', least: 10, most: 2000 },
    'crank-speed': { kind: 'ratio', says: 'speed of the crankshaft, revolutions a minute', least: 100, most: 12000 },
  },
  output: { kind: 'ratio', says: 'order of the cam’s harmonic that meets the spring’s own frequency' },
  weighs: 'explains',
  evaluate: (x) => {
    const value = (x.frequency * 120) / x['crank-speed']
    return { value, partials: { frequency: 120 / x['crank-speed'], 'crank-speed': -value / x['crank-speed'] } }
  },
})
