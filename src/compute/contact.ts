import { cosDegrees, RADIAN, sinDegrees } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const SOURCE = 'Plane geometry along the valve face, a line at the face angle from the margin edge inward.'
const diameter = (says: string): FormulaInput => ({ kind: 'length', says, least: 10, most: 150 })
const VALVE = diameter('diameter of the valve where face and margin meet')
const OUTSIDE = diameter('outside diameter of the contact, or of the seat ring')
const INSIDE = diameter('inside diameter of the contact, or of the seat ring')
const FACE_WIDTH: FormulaInput = { kind: 'length', says: 'width of the valve face, along the face', least: 0.5, most: 20 }
const FACE_ANGLE: FormulaInput = { kind: 'angle', says: 'face angle, measured from the head plane', least: 15, most: 60 }
const SEAT_ANGLE: FormulaInput = { ...FACE_ANGLE, says: 'seat angle, measured from the head plane' }

const overhangs = (x: Readonly<Record<'valve-diameter' | 'outside-diameter', number>>): string | undefined =>
  x['outside-diameter'] > x['valve-diameter']
    ? '“outside-diameter” is more than “valve-diameter”: the seat hangs over the face.'
    : undefined

/** How far in from the margin edge a diameter lies, along the face, with its change by each of its three figures. */
function inFromMargin(valve: number, at: number, angle: number) {
  const cosine = cosDegrees(angle)
  const value = (valve - at) / (2 * cosine)
  return { value, diameter: 0.5 / cosine, angle: (value * sinDegrees(angle) * RADIAN) / cosine }
}

/**
 * Where the contact's middle lies on the valve face, as a share of the face's width in from the margin edge: length ÷ length, no
 * unit; 0 is the margin edge, 0.5 the middle of the face, 1 its inner edge. Refused where the seat hangs over the face.
 */
export const contactCentre = formula({
  id: 'contact-centre',
  version: 1,
  says: 'Middle of the contact = (2 × valve diameter − outside diameter − inside diameter) ÷ (4 × cos(face angle) × width of the face).',
  source: SOURCE,
  inputs: {
    'valve-diameter': VALVE,
    'outside-diameter': OUTSIDE,
    'inside-diameter': INSIDE,
    'face-width': FACE_WIDTH,
    'face-angle': FACE_ANGLE,
  },
  output: { kind: 'ratio', says: 'middle of the contact as a share of the face width, in from the margin edge' },
  evaluate: (x) => {
    const outer = inFromMargin(x['valve-diameter'], x['outside-diameter'], x['face-angle'])
    const inner = inFromMargin(x['valve-diameter'], x['inside-diameter'], x['face-angle'])
    const width = x['face-width']
    const value = (outer.value + inner.value) / (2 * width)
    return {
      value,
      partials: {
        'valve-diameter': outer.diameter / width,
        'outside-diameter': -outer.diameter / (2 * width),
        'inside-diameter': -outer.diameter / (2 * width),
        'face-width': -value / width,
        'face-angle': (outer.angle + inner.angle) / (2 * width),
      },
    }
  },
  refuses: (x) =>
    overhangs(x) ?? (x['inside-diameter'] >= x['outside-diameter'] ? '“inside-diameter” must be less than “outside-diameter”.' : undefined),
})

/** Bare face between margin edge and contact, along the face: (length − length) ÷ cos(angle), mm. Negative: the seat hangs over the face. */
export const bareFaceOuter = formula({
  id: 'bare-face-outer',
  version: 1,
  says: 'Bare face outside the contact = (valve diameter − outside diameter of the contact) ÷ (2 × cos(face angle)).',
  source: SOURCE,
  inputs: { 'valve-diameter': VALVE, 'outside-diameter': OUTSIDE, 'face-angle': FACE_ANGLE },
  output: { kind: 'length', says: 'bare face between margin edge and contact, along the face' },
  evaluate: (x) => {
    const outer = inFromMargin(x['valve-diameter'], x['outside-diameter'], x['face-angle'])
    return {
      value: outer.value,
      partials: { 'valve-diameter': outer.diameter, 'outside-diameter': -outer.diameter, 'face-angle': outer.angle },
    }
  },
})

/** Bare face between the contact and the face's inner edge, along the face: length − length ÷ cos(angle), mm. Negative: contact runs off the face. */
export const bareFaceInner = formula({
  id: 'bare-face-inner',
  version: 1,
  says: 'Bare face inside the contact = width of the face − (valve diameter − inside diameter of the contact) ÷ (2 × cos(face angle)).',
  source: SOURCE,
  inputs: { 'valve-diameter': VALVE, 'inside-diameter': INSIDE, 'face-width': FACE_WIDTH, 'face-angle': FACE_ANGLE },
  output: { kind: 'length', says: 'bare face between contact and inner edge, along the face' },
  evaluate: (x) => {
    const inner = inFromMargin(x['valve-diameter'], x['inside-diameter'], x['face-angle'])
    return {
      value: x['face-width'] - inner.value,
      partials: { 'valve-diameter': -inner.diameter, 'inside-diameter': inner.diameter, 'face-width': 1, 'face-angle': -inner.angle },
    }
  },
})

/**
 * Interference angle: difference of two angles, degrees, both from the head plane. Above zero the seat is the steeper one and first
 * contact is at the outer, combustion-side edge, as it should be; below zero it starts inside. Never mix angles of two conventions.
 */
export const interferenceAngle = formula({
  id: 'interference-angle',
  version: 1,
  says: 'Interference angle = seat angle − face angle, both measured from the head plane.',
  source: 'Definition (a difference); seat steeper than face, contact at the top of the seat: US Army TM 5-6115-400-35.',
  inputs: { 'seat-angle': SEAT_ANGLE, 'face-angle': FACE_ANGLE },
  output: { kind: 'angle', says: 'interference angle; above zero, contact starts at the outer edge' },
  evaluate: (x) => ({ value: x['seat-angle'] - x['face-angle'], partials: { 'seat-angle': 1, 'face-angle': -1 } }),
})

/** Gap at the inner edge of the seat when the outer edge touches, square to the face: length × sin(angle), mm. It shows how little an angle is. */
export const interferenceGap = formula({
  id: 'interference-gap',
  version: 1,
  says: 'Gap at the seat’s inner edge = width of the seat along its face × sin(seat angle − face angle).',
  source: 'Plane geometry: two lines from one point, open by the interference angle.',
  inputs: {
    width: { kind: 'length', says: 'width of the seat, along its face', least: 0, most: 15 },
    'seat-angle': SEAT_ANGLE,
    'face-angle': FACE_ANGLE,
  },
  output: { kind: 'length', says: 'gap at the inner edge of the seat, square to the face' },
  weighs: 'explains',
  evaluate: (x) => {
    const open = x['seat-angle'] - x['face-angle']
    const turn = x.width * cosDegrees(open) * RADIAN
    return { value: x.width * sinDegrees(open), partials: { width: sinDegrees(open), 'seat-angle': turn, 'face-angle': -turn } }
  },
})
