import { describe, expect, it } from 'vitest'
import { formula } from '../../src/compute/formula.ts'
import type { Formula } from '../../src/compute/formula.ts'
import { contactCentre } from '../../src/compute/contact.ts'
import { intakeFaceCorrection } from '../../src/compute/deck.ts'
import { marginAfterFacing, marginAfterFacingAtAngle } from '../../src/compute/face.ts'
import { goodmanSafety } from '../../src/compute/fatigue.ts'
import { grooveConcentrationRoark } from '../../src/compute/groove.ts'
import { sidePlayToClearance } from '../../src/compute/guide.ts'
import { poolLevel } from '../../src/compute/oil.ts'
import { seatOutsideDiameterAfterFeeds } from '../../src/compute/seat-feed.ts'
import { springLoadShare, springRateFromLoads } from '../../src/compute/spring.ts'
import { studTension } from '../../src/compute/stud.ts'
import { threadStressArea } from '../../src/compute/thread.ts'
import { measured, valueOf } from './figures.ts'

const ratio = (says: string) => ({ kind: 'ratio', says }) as const
const NANOMETRE = 1e-6 // in the kept unit, mm

describe('first-order propagation against published examples', () => {
  // JCGM 100:2008 (GUM), Annex H.1, end gauge compared with a standard. Components and u_d 9.7 nm, u_c 32 nm: read in public metrology
  // notebooks that quote it. l = 50 000 838 nm and the doubts of theta and alpha: recalled; to first order the latter two count for nothing.
  it('GUM H.1: the end gauge has a combined standard uncertainty of 32 nm', () => {
    const repeats = formula({
      id: 'end-gauge-difference',
      version: 1,
      says: 'd = mean of the comparisons + two comparator effects',
      source: 'GUM H.1 (recalled)',
      inputs: {
        mean: { kind: 'length', says: 'mean' },
        random: { kind: 'length', says: 'comparator, random' },
        systematic: { kind: 'length', says: 'comparator, systematic' },
      },
      output: { kind: 'length', says: 'difference' },
      evaluate: (x) => ({ value: x.mean + x.random + x.systematic, partials: { mean: 1, random: 1, systematic: 1 } }),
    })
    const d = measured(repeats, {
      mean: [215 * NANOMETRE, 5.8 * NANOMETRE],
      random: [0, 3.9 * NANOMETRE],
      systematic: [0, 6.7 * NANOMETRE],
    })
    expect(Math.abs(d.u / NANOMETRE - 9.7)).toBeLessThan(0.06)

    const endGauge = formula({
      id: 'end-gauge',
      version: 1,
      says: 'l = ls + d − ls (dAlpha · theta + alpha · dTheta)',
      source: 'GUM H.1, equation H.3 (recalled)',
      inputs: {
        ls: { kind: 'length', says: 'standard' },
        d: { kind: 'length', says: 'difference' },
        dAlpha: ratio('difference of expansion coefficients'),
        theta: ratio('deviation from 20 °C'),
        alpha: ratio('expansion coefficient of the standard'),
        dTheta: ratio('difference of temperatures'),
      },
      output: { kind: 'length', says: 'length of the gauge' },
      evaluate: (x) => ({
        value: x.ls + x.d - x.ls * (x.dAlpha * x.theta + x.alpha * x.dTheta),
        partials: {
          ls: 1 - (x.dAlpha * x.theta + x.alpha * x.dTheta),
          d: 1,
          dAlpha: -x.ls * x.theta,
          theta: -x.ls * x.dAlpha,
          alpha: -x.ls * x.dTheta,
          dTheta: -x.ls * x.alpha,
        },
      }),
    })
    const length = measured(endGauge, {
      ls: [50_000_623 * NANOMETRE, 25 * NANOMETRE],
      d: [d.value, d.u],
      dAlpha: [0, 1e-6 / Math.sqrt(3)],
      theta: [-0.1, 0.41],
      alpha: [11.5e-6, 1.2e-6],
      dTheta: [0, 0.05 / Math.sqrt(3)],
    })
    expect(length.value / NANOMETRE).toBeCloseTo(50_000_838, 3)
    expect(Math.abs(length.u / NANOMETRE - 32)).toBeLessThan(0.5)
  })

  // NIST Technical Note 1900, Example E3, falling-ball viscometer: 5.69 mPa s with standard uncertainty 1.03, read in public metrology notebooks.
  it('NIST TN 1900 E3: the viscosity is 5.69 with a standard uncertainty of 1.03 mPa s', () => {
    const viscosity = formula({
      id: 'falling-ball-viscosity',
      version: 1,
      says: 'mu = muC · (rhoB − rhoM) · tM ÷ ((rhoB − rhoC) · tC)',
      source: 'NIST TN 1900, E3 (read in notebooks that quote it)',
      inputs: {
        muC: ratio('calibration viscosity'),
        rhoB: ratio('ball'),
        rhoM: ratio('solution'),
        rhoC: ratio('calibration liquid'),
        tM: ratio('fall time'),
        tC: ratio('calibration fall time'),
      },
      output: ratio('viscosity, mPa s'),
      evaluate: (x) => {
        const mu = (x.muC * (x.rhoB - x.rhoM) * x.tM) / ((x.rhoB - x.rhoC) * x.tC)
        return {
          value: mu,
          partials: {
            muC: mu / x.muC,
            rhoB: mu / (x.rhoB - x.rhoM) - mu / (x.rhoB - x.rhoC),
            rhoM: -mu / (x.rhoB - x.rhoM),
            rhoC: mu / (x.rhoB - x.rhoC),
            tM: mu / x.tM,
            tC: -mu / x.tC,
          },
        }
      },
    })
    const answer = measured(viscosity, {
      muC: [4.63, 0.0463],
      rhoB: [2217, 0.5],
      rhoM: [1180, 0.5],
      rhoC: [810, 0.5],
      tM: [61, 6.1],
      tC: [36.6, 5.49],
    })
    expect(Math.abs(answer.value - 5.69)).toBeLessThan(0.006)
    expect(Math.abs(answer.u - 1.03)).toBeLessThan(0.006)
  })
})

/** The k-th point of the van der Corput sequence in this base: evenly spread over 0..1 and the same on every run. */
function spread(k: number, base: number): number {
  let at = 0
  for (let rest = k, step = 1 / base; rest > 0; rest = Math.floor(rest / base), step /= base) at += (rest % base) * step
  return at
}

/** Standard deviation of a formula over normally spread inputs (Box–Muller on Halton points): propagation of distributions as in JCGM 101:2008. */
function sampled(chosen: Formula, inputs: Readonly<Record<string, readonly [number, number]>>): number {
  const primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29]
  const values = Array.from({ length: 20_000 }, (_, k) => {
    const x = Object.entries(inputs).map(([name, [value, u]], i) => {
      const radius = Math.sqrt(-2 * Math.log(spread(k + 1, primes[2 * i] ?? Number.NaN)))
      return [name, value + u * radius * Math.cos(2 * Math.PI * spread(k + 1, primes[2 * i + 1] ?? Number.NaN))] as const
    })
    return valueOf(chosen, Object.fromEntries(x))
  })
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) * (v - mean), 0) / (values.length - 1))
}

// Second route: JCGM 101:2008 propagates whole distributions instead of sensitivities. With small doubts both must agree within the sampling.
describe('first-order propagation against sampled distributions', () => {
  it.each<[string, Formula, Record<string, readonly [number, number]>]>([
    ['stress area of a 7/16-14 thread', threadStressArea, { 'major-diameter': [11.1125, 0.02], pitch: [25.4 / 14, 0.01] }],
    [
      'spring rate from two loads',
      springRateFromLoads,
      { 'first-height': [43.18, 0.05], 'first-load': [378, 4], 'second-height': [32.89, 0.05], 'second-load': [956, 9] },
    ],
    ['share of the specified load', springLoadShare, { 'measured-load': [350, 4], 'specified-load': [378, 2] }],
    ['tension on a stud', studTension, { 'tip-force': [956, 10], ratio: [1.5, 0.02] }],
    ['margin after facing', marginAfterFacing, { margin: [2.413, 0.02], 'normal-stock': [0.2, 0.01], 'per-normal': [1.414, 0.01] }],
    [
      'margin after facing from the angle',
      marginAfterFacingAtAngle,
      { margin: [2.413, 0.02], 'normal-stock': [0.2, 0.01], angle: [45, 0.25] },
    ],
    [
      'outside diameter after the cuts',
      seatOutsideDiameterAfterFeeds,
      {
        'outside-diameter': [47.5, 0.05],
        'top-feed': [0.12, 0.01],
        'seat-feed': [0.05, 0.01],
        'seat-angle': [45, 0.1],
        'top-angle': [30, 0.1],
      },
    ],
    [
      'middle of the contact',
      contactCentre,
      {
        'valve-diameter': [49.28, 0.05],
        'outside-diameter': [47.55, 0.1],
        'inside-diameter': [45.75, 0.1],
        'face-width': [3.77, 0.05],
        'face-angle': [45, 0.2],
      },
    ],
    [
      'side-play to clearance',
      sidePlayToClearance,
      { 'side-play': [0.14, 0.01], 'guide-length': [54.6, 0.2], 'indicator-distance': [25, 0.5] },
    ],
    ['groove by Roark', grooveConcentrationRoark, { diameter: [9.525, 0.05], depth: [0.3, 0.01], 'root-radius': [0.25, 0.01] }],
    [
      'Goodman',
      goodmanSafety,
      { 'alternating-stress': [60, 2], 'mean-stress': [150, 4], 'endurance-limit': [250, 8], 'tensile-strength': [900, 20] },
    ],
    ['intake-face correction', intakeFaceCorrection, { cut: [0.25, 0.01], 'bank-angle': [90, 0.1], 'face-raise': [55, 0.3] }],
    [
      'oil level',
      poolLevel,
      { flow: [3, 0.05], drains: [3, 0], 'drain-diameter': [10, 0.05], 'drain-length': [30, 0.5], viscosity: [80, 1] },
    ],
  ])('%s', (_name, chosen, inputs) => {
    const { u } = measured(chosen, inputs)
    expect(Math.abs(sampled(chosen, inputs) / u - 1)).toBeLessThan(0.02)
  })
})
