import { cos, unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { marginAfterFacing, marginAfterFacingAtAngle, sinkFromNormalStock, totalSink } from '../../src/compute/face.ts'
import { INCH, valueOf } from './figures.ts'

const perNormal = (degrees: number): number => 1 / Number(cos(unit(degrees, 'deg')))

/**
 * Second route: the face as a line through two points of the valve's section (radius, height above the margin's foot), moved square to
 * itself by the stock; the margin is where the moved line meets the head's rim. No cosine: unit normal from the points.
 */
function marginBySection(margin: number, stock: number, rise: number, run: number): number {
  const length = Math.hypot(rise, run)
  const normal = { out: rise / length, up: run / length } // the face falls `rise` for each `run` outward
  const foot = { radius: 20 - stock * normal.out, height: margin - stock * normal.up }
  return foot.height - (rise / run) * (20 - foot.radius)
}

describe('margin after facing', () => {
  // Common practice, and geometry: 0.010 in square off a 45° face takes 0.014 in of margin; 30° takes 1.15 per unit.
  it('0.010 in off a 45° face takes 0.014 in of margin', () => {
    const left = valueOf(marginAfterFacing, { margin: 0.07 * INCH, 'normal-stock': 0.01 * INCH, 'per-normal': perNormal(45) })
    expect(Math.abs(0.07 - left / INCH - 0.014)).toBeLessThan(0.0002)
  })

  it('a 30° face takes 1.15 per unit', () => {
    expect(Math.abs(10 - valueOf(marginAfterFacing, { margin: 10, 'normal-stock': 1, 'per-normal': perNormal(30) }) - 1.15)).toBeLessThan(
      0.005,
    )
  })

  // Derived, no published figure: worked in closed form and by moving the section line.
  it.each([
    [45, 0.1, 1.5, 1.3585786437626906],
    [30, 0.15, 1.2, 1.0267949192431123],
  ])('a %d° face, %d mm off a margin of %d mm (derived)', (degrees, stock, margin, expected) => {
    const left = valueOf(marginAfterFacing, { margin, 'normal-stock': stock, 'per-normal': perNormal(degrees) })
    expect(left).toBeCloseTo(expected, 9)
    const rise = degrees === 45 ? 1 : Math.sqrt(1 / 3)
    expect(marginBySection(margin, stock, rise, 1)).toBeCloseTo(left, 9)
  })

  // Derived, invented: QL-8S exhaust 6, 0.006 in square off a 45° face leaves 0.0765 in of 0.085.
  it('QL-8S exhaust 6 (invented)', () => {
    const left = valueOf(marginAfterFacing, { margin: 0.085 * INCH, 'normal-stock': 0.006 * INCH, 'per-normal': perNormal(45) })
    expect(Math.abs(left / INCH - 0.0765)).toBeLessThan(0.00005)
  })
})

describe('facing and sink from the angle', () => {
  // Derived: stock 0.1 mm at 45° and 0.15 mm at 30°, the same cases as above, and what they sink the valve by.
  it.each([
    [45, 0.1, 1.5, 1.3585786437626906, 0.1414213562373095],
    [30, 0.15, 1.2, 1.0267949192431123, 0.1732050807568877],
  ])('a %d° face, %d mm off a margin of %d mm (derived)', (angle, stock, margin, left, sink) => {
    expect(valueOf(marginAfterFacingAtAngle, { margin, 'normal-stock': stock, angle })).toBeCloseTo(left, 9)
    expect(valueOf(sinkFromNormalStock, { 'normal-stock': stock, angle })).toBeCloseTo(sink, 9)
    expect(marginBySection(margin, stock, angle === 45 ? 1 : Math.sqrt(1 / 3), 1)).toBeCloseTo(left, 9)
  })

  it('both versions agree, the one from the angle and the one from its ratio', () => {
    for (const angle of [0, 15, 30, 44, 45, 60]) {
      const taken = { margin: 2, 'normal-stock': 0.2 }
      const given = valueOf(marginAfterFacing, { ...taken, 'per-normal': Math.min(2, perNormal(angle)) })
      expect(valueOf(marginAfterFacingAtAngle, { ...taken, angle })).toBeCloseTo(given, 12)
    }
  })

  // Derived: seat feed 0.254 mm and 0.1 mm off a 45° face raise the tip by 0.3954 mm.
  it('seat feed and face stock add up to the rise of the tip', () => {
    const rise = valueOf(totalSink, { 'seat-feed': 0.254, 'face-normal-stock': 0.1, 'face-angle': 45 })
    expect(rise).toBeCloseTo(0.3954213562373095, 12)
    // Square to a 45° seat that feed is 0.1796 mm of stock, and comes back to itself.
    expect(valueOf(sinkFromNormalStock, { 'normal-stock': 0.17960512242138307, angle: 45 })).toBeCloseTo(0.254, 12)
  })

  // Derived, invented: QL-8S exhaust 6, 0.006 in off the face and 0.010 in of seat feed sink it by 0.0185 in and leave 0.0765 in of margin.
  it('QL-8S exhaust 6 (invented)', () => {
    const face = { 'face-normal-stock': 0.006 * INCH, 'face-angle': 45 }
    expect(Math.abs(valueOf(totalSink, { 'seat-feed': 0.01 * INCH, ...face }) / INCH - 0.0185)).toBeLessThan(0.00005)
    const left = valueOf(marginAfterFacingAtAngle, { margin: 0.085 * INCH, 'normal-stock': 0.006 * INCH, angle: 45 })
    expect(Math.abs(left / INCH - 0.0765)).toBeLessThan(0.00005)
  })
})
