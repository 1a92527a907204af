import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { chamberAfterMilling, chamberAfterSink, clearanceVolume, compressionRatio, sinkVolume } from '../../src/compute/compression.ts'
import { INCH, valueOf } from './figures.ts'

const SQUARE_INCH = INCH * INCH

describe('compression', () => {
  // Derived, direct and by integrating the ratio's change with volume: 4.000 × 3.480 in, 64 cm³, gasket 4.1 × 0.039 in, deck 0.025 in, dish 5 cm³.
  const clearance = (chamber: number): number =>
    valueOf(clearanceVolume, {
      chamber,
      'gasket-bore': 4.1 * INCH,
      'gasket-thickness': 0.039 * INCH,
      bore: 4 * INCH,
      'deck-clearance': 0.025 * INCH,
      dish: 5,
    })
  const ratio = (left: number): number => valueOf(compressionRatio, { bore: 4 * INCH, stroke: 3.48 * INCH, 'clearance-volume': left })

  it('9.677 as it stands (derived), and again through mathjs’ units', () => {
    expect(clearance(64)).toBeCloseTo(82.5858338356574, 6)
    expect(ratio(clearance(64))).toBeCloseTo(9.677301742865813, 9)
    const swept = 'pi / 4 * (4 in)^2 * 3.48 in'
    const left = '64 cm^3 + pi / 4 * (4.1 in)^2 * 0.039 in + pi / 4 * (4 in)^2 * 0.025 in + 5 cm^3'
    expect(ratio(clearance(64))).toBeCloseTo(Number(evaluate(`number((${swept}) / (${left}) + 1)`)), 9)
  })

  it('0.020 in off a chamber opening of 7.8 in² takes 2.556 cm³ and brings it to 9.954 (derived)', () => {
    const chamber = valueOf(chamberAfterMilling, { chamber: 64, opening: 7.8 * SQUARE_INCH, cut: 0.02 * INCH })
    expect(64 - chamber).toBeCloseTo(2.5563819839999997, 9)
    expect(ratio(clearance(chamber))).toBeCloseTo(9.954480922929564, 9)
    // Second route: dCR/dV = −swept ÷ V², stepped through the cut.
    const swept = 716.6221998781763
    let [volume, by] = [clearance(64), 9.677301742865813]
    const step = 2.5563819839999997 / 4000
    for (let k = 0; k < 4000; k += 1) {
      by += (swept / (volume - step / 2) ** 2) * step
      volume -= step
    }
    expect(by).toBeCloseTo(9.954480922929564, 6)
  })

  // Derived: 51.308 mm valve sunk 0.508 mm; with a relief cut of 27.5 mm radius round it. Second route: rings of the same depth added up.
  it('a sunk valve adds its disc, and the ring that the cutter clears (derived)', () => {
    const disc = valueOf(sinkVolume, { diameter: 51.308, sink: 0.508 })
    const ring = valueOf(sinkVolume, { diameter: 55, sink: 0.508 })
    expect(disc).toBeCloseTo(1.0503251524363901, 9)
    expect(ring).toBeCloseTo(1.2069213576928588, 9)
    let sum = 0
    for (let k = 0; k < 5000; k += 1) {
      const [r, dr] = [((k + 0.5) * 27.5) / 5000, 27.5 / 5000]
      sum += 2 * Math.PI * r * dr * 0.508
    }
    expect(sum / 1000).toBeCloseTo(ring, 6)
    expect(valueOf(chamberAfterSink, { chamber: 64, 'intake-gain': disc, 'exhaust-gain': 0.5 })).toBeCloseTo(65.5503251524, 9)
  })

  // Derived, invented figures of the demo engines: ratio new, and after the cuts that their sheets name.
  it.each([
    ['QL-6P', 98.43, 95.25, 78, 3.98, 0.04, 0.02, 5, 0, 58, 8.627],
    ['QL-6P at minimum thickness', 98.43, 95.25, 78, 3.98, 0.04, 0.02, 5, 0.03, 58, 8.999],
    ['QL-8S', 102.11, 90.42, 70, 4.09, 0.04, 0.01, 5, 0, 52, 9.641],
    ['QL-8S, 0.010 in off', 102.11, 90.42, 70, 4.09, 0.04, 0.01, 5, 0.01, 52, 9.78],
    ['QL-8S, 0.020 in off', 102.11, 90.42, 70, 4.09, 0.04, 0.01, 5, 0.02, 52, 9.92],
  ])('%s (invented)', (_name, bore, stroke, chamber, gasketBore, gasket, deck, dish, cut, opening, expected) => {
    const left = valueOf(clearanceVolume, {
      chamber: valueOf(chamberAfterMilling, { chamber, opening: opening * 100, cut: cut * INCH }),
      'gasket-bore': gasketBore * INCH,
      'gasket-thickness': gasket * INCH,
      bore,
      'deck-clearance': deck * INCH,
      dish,
    })
    expect(Math.abs(valueOf(compressionRatio, { bore, stroke, 'clearance-volume': left }) - expected)).toBeLessThan(0.006)
  })

  // Common practice's worked figure: 716 cm³ swept, 90 to 86 cm³ of clearance is 8.96 to 9.33. Bore and stroke chosen to sweep 716 cm³.
  it.each([
    [90, 8.96],
    [86, 9.33],
  ])('716 cm³ over %d cm³ is %d', (left, expected) => {
    const stroke = (716 * 1000) / ((Math.PI / 4) * 100 * 100)
    expect(Math.abs(valueOf(compressionRatio, { bore: 100, stroke, 'clearance-volume': left }) - expected)).toBeLessThan(0.006)
  })
})
