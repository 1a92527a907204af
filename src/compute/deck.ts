import { cosDegrees, RADIAN, sinDegrees } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const CUT: FormulaInput = { kind: 'length', says: 'how much comes off the deck of the head', least: 0, most: 5 }
const BANK: FormulaInput = { kind: 'angle', says: 'angle between the banks of the V, the whole of it', least: 30, most: 130 }
const RAISE: FormulaInput = {
  kind: 'angle',
  says: 'how far the square to the intake face is raised from the horizontal, head on the engine; half the bank angle where the face is parallel to the bores',
  least: 0,
  most: 80,
}
const CLEARANCE: FormulaInput = { kind: 'length', says: 'piston to valve as it is, measured along the valve', least: 0, most: 30 }
const VALVE_ANGLE: FormulaInput = { kind: 'angle', says: 'angle between valve and bore', least: 0, most: 45 }
const SINK: FormulaInput = { kind: 'length', says: 'sink of the valve by the seat and face work', least: 0, most: 5 }
const V_SOURCE =
  'Plane geometry of a head that moves down its bores, derived and solved again with vectors; the shop chart’s 1.23 and 1.71 for 90° are its 55° case.'

/** Thickness of a head once its deck is cut: difference of two lengths, mm. Heads of 20–300 mm. */
export const thicknessLeft = formula({
  id: 'thickness-left',
  version: 1,
  says: 'Thickness left = thickness as measured − cut.',
  source: 'Definition (a difference).',
  inputs: { thickness: { kind: 'length', says: 'thickness of the head as measured', least: 20, most: 300 }, cut: CUT },
  output: { kind: 'length', says: 'thickness of the head after the cut' },
  evaluate: (x) => ({ value: x.thickness - x.cut, partials: { thickness: 1, cut: -1 } }),
})

/**
 * What must come off each intake face of a V after both heads (or both decks) are cut alike, so that the manifold sits and its ports
 * line up: length × sin ÷ cos, mm. The total on each side, free to be shared between head face and manifold. Gaskets of another thickness work against it.
 */
export const intakeFaceCorrection = formula({
  id: 'intake-face-correction',
  version: 1,
  says: 'Cut off each intake face = deck cut × sin(half the bank angle) ÷ cos(raise of the intake face’s square).',
  source: V_SOURCE,
  inputs: { cut: CUT, 'bank-angle': BANK, 'face-raise': RAISE },
  output: { kind: 'length', says: 'cut off each intake face, square to it' },
  evaluate: (x) => {
    const [half, cosine] = [x['bank-angle'] / 2, cosDegrees(x['face-raise'])]
    const value = (x.cut * sinDegrees(half)) / cosine
    return {
      value,
      partials: {
        cut: sinDegrees(half) / cosine,
        'bank-angle': (x.cut * cosDegrees(half) * RADIAN) / (2 * cosine),
        'face-raise': (value * sinDegrees(x['face-raise']) * RADIAN) / cosine,
      },
    }
  },
})

/** How far the manifold comes down, ports in line again: length × cos ÷ cos, mm. What must be free, or cut, at the valley's end rails. */
export const manifoldDrop = formula({
  id: 'manifold-drop',
  version: 1,
  says: 'Drop of the manifold = deck cut × cos(half the bank angle − raise of the intake face’s square) ÷ cos(raise).',
  source: V_SOURCE,
  inputs: { cut: CUT, 'bank-angle': BANK, 'face-raise': RAISE },
  output: { kind: 'length', says: 'how far the manifold comes down' },
  evaluate: (x) => {
    const [turn, cosine] = [x['bank-angle'] / 2 - x['face-raise'], cosDegrees(x['face-raise'])]
    const value = (x.cut * cosDegrees(turn)) / cosine
    const bank = (-x.cut * sinDegrees(turn) * RADIAN) / cosine
    return {
      value,
      partials: {
        cut: cosDegrees(turn) / cosine,
        'bank-angle': bank / 2,
        'face-raise': -bank + (value * sinDegrees(x['face-raise']) * RADIAN) / cosine,
      },
    }
  },
})

/**
 * Piston to valve along the valve once the deck is cut, pocket parallel to the valve's head: length − length × cos(angle) + sink, mm.
 * Not for a flat crown, which comes nearer: see `piston-to-valve-after-cut-flat-crown`; where nobody says which, take that one.
 */
export const pistonToValveAfterCut = formula({
  id: 'piston-to-valve-after-cut',
  version: 1,
  says: 'Piston to valve after the cut = piston to valve before − cut × cos(valve angle) + sink, for a pocket parallel to the valve’s head.',
  source: 'Plane geometry: the piston’s pocket moves along the bore, the valve along its own axis.',
  inputs: { clearance: CLEARANCE, cut: CUT, 'valve-angle': VALVE_ANGLE, sink: SINK },
  output: { kind: 'length', says: 'piston to valve after the cut, along the valve' },
  evaluate: (x) => {
    const cosine = cosDegrees(x['valve-angle'])
    return {
      value: x.clearance - x.cut * cosine + x.sink,
      partials: { clearance: 1, cut: -cosine, 'valve-angle': x.cut * sinDegrees(x['valve-angle']) * RADIAN, sink: 1 },
    }
  },
})

/** The same for a flat crown square to the bore: length − length ÷ cos(angle) + sink, mm. The safe one where the crown is not known. */
export const pistonToValveAfterCutFlatCrown = formula({
  id: 'piston-to-valve-after-cut-flat-crown',
  version: 1,
  says: 'Piston to valve after the cut = piston to valve before − cut ÷ cos(valve angle) + sink, for a flat crown.',
  source: 'Plane geometry: a crown square to the bore, met along the valve’s axis.',
  inputs: { clearance: CLEARANCE, cut: CUT, 'valve-angle': VALVE_ANGLE, sink: SINK },
  output: { kind: 'length', says: 'piston to valve after the cut, along the valve' },
  evaluate: (x) => {
    const cosine = cosDegrees(x['valve-angle'])
    const taken = x.cut / cosine
    return {
      value: x.clearance - taken + x.sink,
      partials: { clearance: 1, cut: -1 / cosine, 'valve-angle': (-taken * sinDegrees(x['valve-angle']) * RADIAN) / cosine, sink: 1 },
    }
  },
})
