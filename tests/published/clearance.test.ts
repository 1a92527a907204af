import { describe, expect, it } from 'vitest'
import { springInPocket, stemClearance, stemWear } from '../../src/compute/clearance.ts'
import { INCH, valueOf } from './figures.ts'

// Differences with no published figure: derived from the invented demo engines, whose sheets print both inches and millimetres, so that each
// case is worked in the one and compared in the other.
describe('clearances (derived, invented figures)', () => {
  it.each([
    ['QL-6P intake, least', 0.3735, 0.3723, 0.0012, 0.03],
    ['QL-6P intake, most', 0.374, 0.3717, 0.0023, 0.058],
    ['QL-6P exhaust, least', 0.3735, 0.3715, 0.002, 0.051],
    ['QL-6P exhaust, most', 0.374, 0.371, 0.003, 0.076],
    ['QL-8S intake, least', 0.3427, 0.3416, 0.0011, 0.028],
    ['QL-8S exhaust, most', 0.3432, 0.3405, 0.0027, 0.069],
  ])('%s: stem clearance', (_name, bore, stem, inches, millimetres) => {
    const clearance = valueOf(stemClearance, { bore: bore * INCH, stem: stem * INCH })
    expect(clearance / INCH).toBeCloseTo(inches, 9)
    expect(Math.abs(clearance - millimetres)).toBeLessThanOrEqual(0.0005)
  })

  it.each([
    ['QL-6P intake at its minimum', 9.441, 9.416, 0.001],
    ['QL-8S exhaust at its minimum', 8.649, 8.623, 0.001],
    ['QL-6P intake, a new stem at its high limit', 9.441, 9.456, -0.0006],
  ])('%s: stem wear', (_name, low, reading, inches) => {
    // The sheet's millimetres are rounded to 0.001.
    expect(Math.abs(valueOf(stemWear, { 'new-low-limit': low, measured: reading }) - inches * INCH)).toBeLessThanOrEqual(0.001)
  })

  it.each([
    ['QL-6P', 1.27, 1.25, 0.02],
    ['K-2 outer in its pocket', 1.285, 1.27, 0.015],
    ['K-2 inner in the outer', 0.906, 0.89, 0.016],
  ])('%s: spring in its pocket', (_name, pocket, spring, play) => {
    expect(valueOf(springInPocket, { pocket: pocket * INCH, 'spring-outside-diameter': spring * INCH }) / INCH).toBeCloseTo(play, 9)
  })
})
