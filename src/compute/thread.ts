import { formula } from './formula.ts'

/**
 * The 60° profile of ISO metric and Unified threads: a sharp triangle of height H = (√3 ÷ 2) · pitch, truncated.
 * Every diameter below is the major diameter less a fraction of H, so each is a · pitch with the fractions written out.
 */
const PI = 3.141592653589793
const TRIANGLE = Math.sqrt(3) / 2
const PITCH_DROP = (3 / 4) * TRIANGLE // 0.6495191
const INTERNAL_MINOR_DROP = (5 / 4) * TRIANGLE // 1.0825318
const EXTERNAL_MINOR_DROP = (17 / 12) * TRIANGLE // 1.2268695
const STRESS_DROP = (PITCH_DROP + EXTERNAL_MINOR_DROP) / 2 // 0.9381943: ISO takes the mean of pitch and root diameter, 13/12 H
const STRESS_DROP_UNIFIED = (9 / 8) * TRIANGLE // 0.9742786: Unified takes the pitch diameter less 3/8 H

/** 4–50 mm and 0.25–3.25 mm (100 to 8 threads an inch, near enough) keep every diameter below above zero in all pairings. */
const THREAD = {
  'major-diameter': { kind: 'length', says: 'basic major (nominal) diameter of the thread', least: 4, most: 50 },
  pitch: { kind: 'length', says: 'pitch of the thread; 25.4 mm ÷ threads per inch for Unified', least: 0.25, most: 3.25 },
} as const

const below = (drop: number) => (x: Readonly<Record<keyof typeof THREAD, number>>) => ({
  value: x['major-diameter'] - drop * x.pitch,
  partials: { 'major-diameter': 1, pitch: -drop },
})

/** Basic pitch diameter of a 60° thread: length from two lengths, mm. Major 4–50 mm, pitch 0.25–3.25 mm. */
export const threadPitchDiameter = formula({
  id: 'thread-pitch-diameter',
  version: 1,
  says: 'Basic pitch diameter = major diameter − (3/4) H, with H = (√3 ÷ 2) · pitch.',
  source: 'ISO 68-1 and ISO 724; the same basic profile in ASME B1.1. Equation recalled, checked on table values.',
  inputs: THREAD,
  output: { kind: 'length', says: 'basic pitch diameter' },
  evaluate: below(PITCH_DROP),
})

/** Basic minor diameter of the internal thread (the nut, the tapped hole): length from two lengths, mm. Ranges as above. */
export const threadMinorDiameterInternal = formula({
  id: 'thread-minor-diameter-internal',
  version: 1,
  says: 'Basic minor diameter of the internal thread = major diameter − (5/4) H, with H = (√3 ÷ 2) · pitch.',
  source: 'ISO 68-1 and ISO 724 (D1); the same basic profile in ASME B1.1. Equation recalled, checked on table values.',
  inputs: THREAD,
  output: { kind: 'length', says: 'basic minor diameter of the internal thread' },
  evaluate: below(INTERNAL_MINOR_DROP),
})

/**
 * Root of the external thread by the 17/12 H convention (d3 of the metric standards, and older Unified tables): length from
 * two lengths, mm. Newer Unified tables list the UNR root instead, major − (11/8) H, which is H/24 larger: compare like with like.
 */
export const threadMinorDiameterExternal = formula({
  id: 'thread-minor-diameter-external',
  version: 1,
  says: 'Minor (root) diameter of the external thread by the 17/12 H convention = major diameter − (17/12) H, with H = (√3 ÷ 2) · pitch.',
  source:
    'Root diameter d3 as used for the stress area in ISO 898-1; older Unified tables print it as D − 1.2269 ÷ n. Recalled, checked on table values.',
  inputs: THREAD,
  output: { kind: 'length', says: 'minor diameter of the external thread, 17/12 H convention' },
  evaluate: below(EXTERNAL_MINOR_DROP),
})

const circle = (drop: number) => (x: Readonly<Record<keyof typeof THREAD, number>>) => {
  const across = x['major-diameter'] - drop * x.pitch
  const slope = (PI / 2) * across
  return { value: (PI / 4) * across * across, partials: { 'major-diameter': slope, pitch: -slope * drop } }
}

/**
 * Tensile stress area of an ISO metric thread: area (mm²) from two lengths (mm). Not for Unified threads, whose standard takes a
 * smaller circle: on them this one is 1–2 % too large. Tables round to three figures: compare at 0.3 %. Ranges as above.
 */
export const threadStressArea = formula({
  id: 'thread-stress-area',
  version: 1,
  says: 'Stress area of a metric thread = (π ÷ 4) · (major diameter − (13/12) H)², with H = (√3 ÷ 2) · pitch: the circle on the mean of pitch and root diameter.',
  source: 'ISO 898-1 (nominal stress area, 0.9382 P). Equation recalled, checked on table values.',
  inputs: THREAD,
  output: { kind: 'area', says: 'tensile stress area' },
  evaluate: circle(STRESS_DROP),
})

/** Tensile stress area of a Unified thread: area (mm²) from two lengths (mm). For steels up to about 1,240 MPa. Ranges as above. */
export const threadStressAreaUnified = formula({
  id: 'thread-stress-area-unified',
  version: 1,
  says: 'Stress area of a Unified thread = (π ÷ 4) · (major diameter − (9/8) H)², with H = (√3 ÷ 2) · pitch.',
  source: 'ASME B1.1 (D − 0.9743 ÷ n). Equation recalled, checked on table values.',
  inputs: THREAD,
  output: { kind: 'area', says: 'tensile stress area' },
  evaluate: circle(STRESS_DROP_UNIFIED),
})

/** Proof load of a fastener: force (N) = stress (MPa, that is N/mm²) × area (mm²). Area 5–2,000 mm², stress 50–2,000 MPa. */
export const threadProofLoad = formula({
  id: 'thread-proof-load',
  version: 1,
  says: 'Proof load = proof stress of the grade × stress area of the thread.',
  source: 'ISO 898-1 and SAE J429 (proof load from stress area and proof stress); read in reprints of their tables.',
  inputs: {
    'proof-stress': { kind: 'stress', says: 'proof stress of the grade or property class', least: 50, most: 2000 },
    'stress-area': { kind: 'area', says: 'tensile stress area of the thread', least: 5, most: 2000 },
  },
  output: { kind: 'force', says: 'proof load' },
  evaluate: (x) => ({
    value: x['proof-stress'] * x['stress-area'],
    partials: { 'proof-stress': x['stress-area'], 'stress-area': x['proof-stress'] },
  }),
})
