import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const LIFT = { kind: 'length', says: 'gross lift at the valve', least: 0, most: 40 } as const
const CUT = { kind: 'length', says: 'how much the guide top is cut down', least: 0, most: 30 } as const
/** A room may already be less than nothing, and must then be judged, not refused. */
const room = (says: string): FormulaInput => ({ kind: 'length', says, least: -60, most: 150 })

/** Retainer underside to guide top with the valve closed: difference of three lengths, mm. Negative: they overlap. */
export const retainerToGuideTop = formula({
  id: 'retainer-to-guide-top',
  version: 1,
  says: 'Retainer to guide top, valve closed = installed height − depth of the retainer hub − height of the guide top above the spring seat.',
  source: 'Plane geometry along the valve’s axis; common practice is to measure it.',
  inputs: {
    'installed-height': {
      kind: 'length',
      says: 'installed height: spring seat to where the spring bears on the retainer, valve closed',
      least: 5,
      most: 300,
    },
    'retainer-hub': { kind: 'length', says: 'how far the retainer hangs below where the spring bears on it', least: 0, most: 30 },
    'guide-top': { kind: 'length', says: 'height of the guide top above the same spring seat', least: 0, most: 150 },
  },
  output: { kind: 'length', says: 'retainer underside to guide top, valve closed' },
  evaluate: (x) => ({
    value: x['installed-height'] - x['retainer-hub'] - x['guide-top'],
    partials: { 'installed-height': 1, 'retainer-hub': -1, 'guide-top': -1 },
  }),
})

/** Room between retainer and seal at full lift: difference of three lengths, mm. Negative: they strike. With no seal, its height is 0. */
export const retainerToSealClearance = formula({
  id: 'retainer-to-seal-clearance',
  version: 1,
  says: 'Retainer to seal at full lift = retainer underside to guide top (valve closed) − lift − height of the seal above the guide top.',
  source: 'Plane geometry along the valve’s axis; common practice.',
  inputs: {
    'retainer-to-guide-top': room('retainer underside to guide top, valve closed'),
    lift: LIFT,
    'seal-height': { kind: 'length', says: 'how far the fitted seal stands above the guide top', least: 0, most: 40 },
  },
  output: { kind: 'length', says: 'room between retainer and seal at full lift' },
  evaluate: (x) => ({
    value: x['retainer-to-guide-top'] - x.lift - x['seal-height'],
    partials: { 'retainer-to-guide-top': 1, lift: -1, 'seal-height': -1 },
  }),
})

/** The same room once the guide top is cut down, so that the seal sits lower: sum of two lengths, mm. Cut 0–30 mm. */
export const retainerToSealAfterCut = formula({
  id: 'retainer-to-seal-after-cut',
  version: 1,
  says: 'Retainer to seal after the guide top is cut = retainer to seal before + cut.',
  source: 'Plane geometry along the valve’s axis.',
  inputs: { 'retainer-to-seal': room('room between retainer and seal at full lift, before the cut'), cut: CUT },
  output: { kind: 'length', says: 'room between retainer and seal at full lift, after the cut' },
  evaluate: (x) => ({ value: x['retainer-to-seal'] + x.cut, partials: { 'retainer-to-seal': 1, cut: 1 } }),
})

/** Room on each side between the seal's body and the (innermost) spring: half a difference of diameters, mm. Negative: it does not go in. */
export const sealToSpringClearance = formula({
  id: 'seal-to-spring-clearance',
  version: 1,
  says: 'Seal to spring, each side = (inside diameter of the innermost spring − outside diameter of the seal body) ÷ 2.',
  source: 'Plane geometry of two circles on one axis.',
  inputs: {
    'spring-inside-diameter': { kind: 'length', says: 'inside diameter of the innermost spring or damper', least: 3, most: 100 },
    'seal-body-diameter': { kind: 'length', says: 'outside diameter of the seal’s body', least: 3, most: 100 },
  },
  output: { kind: 'length', says: 'room between seal and spring, each side' },
  evaluate: (x) => ({
    value: (x['spring-inside-diameter'] - x['seal-body-diameter']) / 2,
    partials: { 'spring-inside-diameter': 0.5, 'seal-body-diameter': -0.5 },
  }),
})

/** Guide length left once its top is cut: difference of two lengths, mm. Guides of 10–200 mm; a cut longer than the guide is refused. */
export const guideLengthLeft = formula({
  id: 'guide-length-left',
  version: 1,
  says: 'Guide length left = guide length before − cut off the guide top.',
  source: 'Definition (a difference).',
  inputs: { 'guide-length': { kind: 'length', says: 'length of the guide before the cut', least: 10, most: 200 }, cut: CUT },
  output: { kind: 'length', says: 'guide length left' },
  evaluate: (x) => ({ value: x['guide-length'] - x.cut, partials: { 'guide-length': 1, cut: -1 } }),
  refuses: (x) => (x.cut >= x['guide-length'] ? '“cut” is not less than “guide-length”, so no guide would be left.' : undefined),
})
