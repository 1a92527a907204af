import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  guideLengthLeft,
  retainerToGuideTop,
  retainerToSealAfterCut,
  retainerToSealClearance,
  sealToSpringClearance,
} from '../../src/compute/seal.ts'
import { INCH, measured, valueOf } from './figures.ts'

const IN_MM = 12
const viaMathjs = (expression: string): number => Number(evaluate(`number(${expression}, mm)`))

// Plain geometry with no published figure: each case is derived from the invented demo engines (sheets in inches) and worked a second
// time through mathjs' units.
describe('retainer, guide top and seal (derived, invented figures)', () => {
  it.each([
    ['QL-6P', 1.7, 0.08, 1.0, 0.62, 15.75],
    ['QL-8S', 1.75, 0.08, 1.03, 0.64, 16.26],
    ['QL-8S with the retainers of K-2', 1.75, 0.1, 1.03, 0.62, 15.75],
  ])('%s: retainer to guide top', (_name, installed, hub, top, inches, millimetres) => {
    const room = valueOf(retainerToGuideTop, { 'installed-height': installed * INCH, 'retainer-hub': hub * INCH, 'guide-top': top * INCH })
    expect(room / INCH).toBeCloseTo(inches, 9)
    expect(Math.abs(room - millimetres)).toBeLessThan(0.005)
    expect(room).toBeCloseTo(viaMathjs(`${String(installed)} in - ${String(hub)} in - ${String(top)} in`), IN_MM)
  })

  it.each([
    ['QL-6P umbrella, stock cam', 0.62, 0.405, 0.115, 0.1],
    ['QL-6P positive seal, stock cam', 0.62, 0.405, 0.13, 0.085],
    ['QL-6P positive seal under P-2', 0.62, 0.45, 0.13, 0.04],
    ['QL-6P umbrella under P-2', 0.62, 0.45, 0.115, 0.055],
    ['QL-8S positive seal, stock cam', 0.64, 0.44, 0.13, 0.07],
    ['QL-8S small-body seal under H-2', 0.62, 0.512, 0.115, -0.007],
    ['QL-8S umbrella under H-2', 0.62, 0.512, 0.11, -0.002],
  ])('%s: retainer to seal', (_name, room, lift, stands, left) => {
    const clearance = valueOf(retainerToSealClearance, {
      'retainer-to-guide-top': room * INCH,
      lift: lift * INCH,
      'seal-height': stands * INCH,
    })
    expect(clearance / INCH).toBeCloseTo(left, 9)
    expect(clearance).toBeCloseTo(viaMathjs(`${String(room)} in - ${String(lift)} in - ${String(stands)} in`), IN_MM)
  })

  it.each([
    [-0.007, 0.07, 0.063],
    [-0.007, 0.08, 0.073],
    [0.04, 0.03, 0.07],
  ])('a room of %d in is %d in more cut off the guide top later: %d in', (before, cut, after) => {
    expect(valueOf(retainerToSealAfterCut, { 'retainer-to-seal': before * INCH, cut: cut * INCH }) / INCH).toBeCloseTo(after, 9)
  })

  it.each([
    ['standard body in the inner spring of K-2', 0.64, 0.68, -0.02],
    ['small body in the inner spring of K-2', 0.64, 0.578, 0.031],
    ['QL-6P', 0.88, 0.69, 0.095],
    ['QL-8S', 0.888, 0.68, 0.104],
  ])('%s: seal to spring, each side', (_name, spring, body, side) => {
    expect(
      valueOf(sealToSpringClearance, { 'spring-inside-diameter': spring * INCH, 'seal-body-diameter': body * INCH }) / INCH,
    ).toBeCloseTo(side, 9)
  })

  it('a guide of 2.150 in keeps 2.070 in after a cut of 0.080 in', () => {
    expect(valueOf(guideLengthLeft, { 'guide-length': 2.15 * INCH, cut: 0.08 * INCH }) / INCH).toBeCloseTo(2.07, 9)
  })

  it('the doubts of four readings add as squares through the chain', () => {
    const u = 0.02
    const room = measured(retainerToGuideTop, { 'installed-height': [43.18, u], 'retainer-hub': [2.03, u], 'guide-top': [25.4, u] })
    const left = measured(retainerToSealClearance, {
      'retainer-to-guide-top': [room.value, room.u],
      lift: [10.29, 0],
      'seal-height': [3.3, u],
    })
    const cut = measured(retainerToSealAfterCut, { 'retainer-to-seal': [left.value, left.u], cut: [1.5, 0] })
    expect(cut.u).toBeCloseTo(2 * u, 12)
  })
})
