import { cos, unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { bareFaceInner, bareFaceOuter, contactCentre, interferenceAngle, interferenceGap } from '../../src/compute/contact.ts'
import { INCH, valueOf } from './figures.ts'

// Derived, no published figure: closed form against sampling along the face. Margin edge to contact, contact to inner edge, share of the middle.
describe('where the contact lies on the face (derived)', () => {
  it.each([
    [51.3, 2.8, 50, 47.87868, 0.9192388155425097, 0.38076142739084506, 0.5961566764556544],
    [40.64, 2.6, 40.132, 37.967, 0.35921024484276803, 0.7099035738883575, 0.43255897518354147],
  ])('valve %d, face %d, ring %d to %d', (valve, face, outside, inside, outer, inner, centre) => {
    const on = { 'valve-diameter': valve, 'face-angle': 45 }
    expect(Math.abs(valueOf(bareFaceOuter, { ...on, 'outside-diameter': outside }) - outer)).toBeLessThan(2e-5)
    expect(Math.abs(valueOf(bareFaceInner, { ...on, 'inside-diameter': inside, 'face-width': face }) - inner)).toBeLessThan(2e-5)
    const middle = valueOf(contactCentre, { ...on, 'outside-diameter': outside, 'inside-diameter': inside, 'face-width': face })
    expect(Math.abs(middle - centre)).toBeLessThan(2e-5)
    expect(middle * face).toBeCloseTo((outer + (face - inner)) / 2, 4)
  })

  // Derived, invented figures of the demo engines: bare face in inches, as their checks print it.
  it.each([
    ['QL-6P intake', 30, 1.78, 0.127, 1.7135, 1.6269, 0.0384, 0.0386, 0.5],
    ['QL-6P exhaust', 45, 1.5, 0.1556, 1.444, 1.3337, 0.0396, 0.038, 0.51],
    ['QL-8S intake', 45, 1.94, 0.1485, 1.872, 1.8013, 0.0481, 0.0504, 0.49],
    ['QL-8S exhaust', 45, 1.56, 0.1485, 1.51, 1.3997, 0.0354, 0.0351, 0.5],
  ])('%s (invented)', (_name, angle, valve, face, outside, inside, outer, inner, centre) => {
    const on = { 'valve-diameter': valve * INCH, 'face-angle': angle }
    const [od, id, width] = [outside * INCH, inside * INCH, face * INCH]
    expect(Math.abs(valueOf(bareFaceOuter, { ...on, 'outside-diameter': od }) / INCH - outer)).toBeLessThan(0.0001)
    expect(Math.abs(valueOf(bareFaceInner, { ...on, 'inside-diameter': id, 'face-width': width }) / INCH - inner)).toBeLessThan(0.0002)
    expect(
      Math.abs(valueOf(contactCentre, { ...on, 'outside-diameter': od, 'inside-diameter': id, 'face-width': width }) - centre),
    ).toBeLessThan(0.006)
  })

  it('a seat that hangs over the face shows as less than no bare face', () => {
    expect(valueOf(bareFaceOuter, { 'valve-diameter': 40, 'outside-diameter': 40.2, 'face-angle': 45 })).toBeLessThan(0)
  })
})

describe('interference angle', () => {
  // US Army TM 5-6115-400-35 (read): the seat is ground 1 to 1½ degrees steeper than the face, so that contact is at the top of the seat.
  it('is above zero where the seat is the steeper one', () => {
    expect(valueOf(interferenceAngle, { 'seat-angle': 45, 'face-angle': 44 })).toBe(1)
    expect(valueOf(interferenceAngle, { 'seat-angle': 45, 'face-angle': 46 })).toBe(-1)
  })

  // Derived: ring of 50 mm, 1.5 mm wide, seat 45°, face 44°. Second route: the two lines' heights at the inner edge, turned square to the face.
  it('opens 0.026 mm over a seat of 1.5 mm at 1°', () => {
    const gap = valueOf(interferenceGap, { width: 1.5, 'seat-angle': 45, 'face-angle': 44 })
    expect(gap).toBeCloseTo(0.026178609655925267, 9)
    const radial = 1.5 * Number(cos(unit(45, 'deg')))
    const axial = radial * (1 - Math.tan((44 * Math.PI) / 180))
    expect(axial).toBeCloseTo(0.03639255000710502, 9)
    expect(axial * Number(cos(unit(44, 'deg')))).toBeCloseTo(gap, 12)
  })
})
