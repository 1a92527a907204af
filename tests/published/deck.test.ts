import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  intakeFaceCorrection,
  manifoldDrop,
  pistonToValveAfterCut,
  pistonToValveAfterCutFlatCrown,
  thicknessLeft,
} from '../../src/compute/deck.ts'
import { INCH, valueOf } from './figures.ts'

const radians = (degrees: number): number => (degrees * Math.PI) / 180

/**
 * Second route, in the engine's cross-section (outward, up): the head of one bank moves down its bore by the cut, the manifold straight down by
 * its drop, and what is left between the two moves lies wholly along the square to the intake face: two equations, solved by mathjs.
 */
function byVectors(bank: number, raise: number, cut: number): { face: number; drop: number } {
  const half = radians(bank / 2)
  const head = [-cut * Math.sin(half), -cut * Math.cos(half)]
  const square = [-Math.cos(radians(raise)), Math.sin(radians(raise))]
  const solved = lusolve(
    [
      [square[0] ?? 0, 0],
      [square[1] ?? 0, -1],
    ],
    head,
  ) as number[][]
  return { face: solved[0]?.[0] ?? Number.NaN, drop: solved[1]?.[0] ?? Number.NaN }
}

describe('a V engine’s manifold after the decks are cut', () => {
  // Derived, closed form and vectors: bank angle; turn of the face from parallel to the bore, so that its square is raised by half the bank + that.
  it.each([
    [90, 0, 0.9999999999999999, 1.414213562373095],
    [90, 5, 1.1000628676264839, 1.5498038280133435],
    [90, 10, 1.2328030518216349, 1.7169599212919475],
    [90, 20, 1.673157185101476, 2.223502166980337],
    [60, 10, 0.6527036446661393, 1.2855752193730787],
  ])('bank %d°, face turned %d°: %d and %d of the cut (derived)', (bank, turned, face, drop) => {
    const inputs = { cut: 1, 'bank-angle': bank, 'face-raise': bank / 2 + turned }
    expect(valueOf(intakeFaceCorrection, inputs)).toBeCloseTo(face, 9)
    expect(valueOf(manifoldDrop, inputs)).toBeCloseTo(drop, 9)
    const solved = byVectors(bank, bank / 2 + turned, 1)
    expect(solved.face).toBeCloseTo(face, 9)
    expect(solved.drop).toBeCloseTo(drop, 9)
  })

  // A chart common in shops (from memory): 0.020 in off the heads of a 90° V is 0.025 in off the face and 0.034 in off the manifold's bottom.
  it('agrees with the shop chart within its rounding (from memory)', () => {
    const inputs = { cut: 0.02 * INCH, 'bank-angle': 90, 'face-raise': 55 }
    expect(Math.abs(valueOf(intakeFaceCorrection, inputs) / INCH - 0.025)).toBeLessThan(0.0006)
    expect(Math.abs(valueOf(manifoldDrop, inputs) / INCH - 0.034)).toBeLessThan(0.0006)
  })

  it('QL-8S (invented): 1.233 and 1.717 of the cut', () => {
    const inputs = { cut: 0.254, 'bank-angle': 90, 'face-raise': 55 }
    expect(Math.abs(valueOf(intakeFaceCorrection, inputs) / 0.254 - 1.233)).toBeLessThan(0.0005)
    expect(Math.abs(valueOf(manifoldDrop, inputs) / 0.254 - 1.717)).toBeLessThan(0.0005)
  })
})

describe('piston to valve after a deck cut', () => {
  // Derived, invented: H-2 on QL-8S has 0.092 in; the valve stands 15° to the bore and the pockets are parallel to the valve heads.
  it.each([
    [0.01, 0.0823],
    [0.012, 0.0804],
    [0.015, 0.0775],
  ])('QL-8S with H-2, %d in off (invented)', (cut, expected) => {
    const left = valueOf(pistonToValveAfterCut, { clearance: 0.092 * INCH, cut: cut * INCH, 'valve-angle': 15, sink: 0 })
    expect(Math.abs(left / INCH - expected)).toBeLessThan(0.00006)
  })

  // Derived: 0.040 at 20° takes 0.038 from a parallel pocket and 0.043 from a flat crown. Second route: the crown as a line, met along the valve.
  it('0.040 at 20° takes 0.038 or 0.043', () => {
    const before = { clearance: 4, cut: 0.04 * INCH, 'valve-angle': 20, sink: 0 }
    expect(Math.abs((4 - valueOf(pistonToValveAfterCut, before)) / INCH - 0.038)).toBeLessThan(0.0005)
    expect(Math.abs((4 - valueOf(pistonToValveAfterCutFlatCrown, before)) / INCH - 0.043)).toBeLessThan(0.0005)
    const along = [Math.sin(radians(20)), Math.cos(radians(20))]
    const gap = (crown: number): number => crown / (along[1] ?? 1)
    expect(gap(10) - gap(10 - 0.04 * INCH)).toBeCloseTo(4 - valueOf(pistonToValveAfterCutFlatCrown, before), 12)
  })

  it('sink gives the clearance back', () => {
    const before = { clearance: 3, cut: 0.25, 'valve-angle': 15, sink: 0.4 }
    for (const each of [pistonToValveAfterCut, pistonToValveAfterCutFlatCrown]) {
      expect(valueOf(each, before) - valueOf(each, { ...before, sink: 0 })).toBeCloseTo(0.4, 12)
    }
  })
})

it('QL-8S (invented): 4.625 in less 0.012 in leaves 4.613 in', () => {
  expect(valueOf(thicknessLeft, { thickness: 4.625 * INCH, cut: 0.012 * INCH }) / INCH).toBeCloseTo(4.613, 9)
})
