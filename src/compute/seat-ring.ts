import { cosDegrees, RADIAN, sinDegrees } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const diameter = (says: string): FormulaInput => ({ kind: 'length', says, least: 10, most: 150 })
const OUTSIDE = diameter('outside diameter of the seat ring: where the top cut meets the seat')
const INSIDE = diameter('inside diameter of the seat ring: where the throat cut, or the throat bore, meets the seat')
const WIDTH: FormulaInput = { kind: 'length', says: 'width of the seat, along its face', least: 0, most: 15 }
const ANGLE: FormulaInput = { kind: 'angle', says: 'seat angle, measured from the head plane', least: 15, most: 60 }
const SOURCE =
  'Plane geometry of the seat’s section: a line at the seat angle between two radii. Width is along the face; seen from above it is the cosine of that.'

/** What a width along the face adds to a diameter: both edges together. */
const across = (width: number, angle: number) => ({
  value: 2 * width * cosDegrees(angle),
  width: 2 * cosDegrees(angle),
  angle: -2 * width * sinDegrees(angle) * RADIAN,
})

/** Outside diameter of a seat ring: length + length × cos(angle), mm. Rings of 10–150 mm, seats of 15–60° from the head plane. */
export const seatOutsideDiameter = formula({
  id: 'seat-outside-diameter',
  version: 1,
  says: 'Outside diameter of the seat = inside diameter + 2 × width along the face × cos(seat angle).',
  source: SOURCE,
  inputs: { 'inside-diameter': INSIDE, width: WIDTH, angle: ANGLE },
  output: { kind: 'length', says: 'outside diameter of the seat ring' },
  evaluate: (x) => {
    const ring = across(x.width, x.angle)
    return { value: x['inside-diameter'] + ring.value, partials: { 'inside-diameter': 1, width: ring.width, angle: ring.angle } }
  },
})

/** Inside diameter of a seat ring: length − length × cos(angle), mm. Same ranges; a ring wider than its own radius is refused. */
export const seatInsideDiameter = formula({
  id: 'seat-inside-diameter',
  version: 1,
  says: 'Inside diameter of the seat = outside diameter − 2 × width along the face × cos(seat angle).',
  source: SOURCE,
  inputs: { 'outside-diameter': OUTSIDE, width: WIDTH, angle: ANGLE },
  output: { kind: 'length', says: 'inside diameter of the seat ring' },
  evaluate: (x) => {
    const ring = across(x.width, x.angle)
    return { value: x['outside-diameter'] - ring.value, partials: { 'outside-diameter': 1, width: -ring.width, angle: -ring.angle } }
  },
  refuses: (x) =>
    across(x.width, x.angle).value >= x['outside-diameter'] ? '“width” leaves no hole inside “outside-diameter”.' : undefined,
})

/** Width of a seat along its face, from its two edges: (length − length) ÷ cos(angle), mm. Same ranges. */
export const seatWidth = formula({
  id: 'seat-width',
  version: 1,
  says: 'Width of the seat along its face = (outside diameter − inside diameter) ÷ (2 × cos(seat angle)).',
  source: SOURCE,
  inputs: { 'outside-diameter': OUTSIDE, 'inside-diameter': INSIDE, angle: ANGLE },
  output: { kind: 'length', says: 'width of the seat, along its face' },
  evaluate: (x) => {
    const cosine = cosDegrees(x.angle)
    const value = (x['outside-diameter'] - x['inside-diameter']) / (2 * cosine)
    return {
      value,
      partials: {
        'outside-diameter': 0.5 / cosine,
        'inside-diameter': -0.5 / cosine,
        angle: (value * sinDegrees(x.angle) * RADIAN) / cosine,
      },
    }
  },
  refuses: (x) => (x['inside-diameter'] >= x['outside-diameter'] ? '“inside-diameter” must be less than “outside-diameter”.' : undefined),
})
