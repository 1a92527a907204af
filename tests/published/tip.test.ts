import { describe, expect, it } from 'vitest'
import { tipHeightLeft, tipStockLeft } from '../../src/compute/tip.ts'
import { INCH, valueOf } from './figures.ts'

// Differences with no published figure: derived from the invented demo engines, worked in inches against the millimetres of their sheets.
describe('tip stock and tip height (derived, invented figures)', () => {
  it.each([
    ['QL-6P intake', 4.905, 4.895],
    ['QL-6P exhaust', 4.92, 4.91],
    ['QL-8S intake', 4.775, 4.765],
    ['QL-8S exhaust', 4.785, 4.775],
  ])('%s: a new valve at its low limit has 0.010 in of tip', (_name, low, minimum) => {
    expect(valueOf(tipStockLeft, { 'overall-length': low * INCH, 'minimum-overall-length': minimum * INCH }) / INCH).toBeCloseTo(0.01, 9)
  })

  it('agrees with the sheet’s millimetres', () => {
    expect(valueOf(tipStockLeft, { 'overall-length': 124.59, 'minimum-overall-length': 124.33 })).toBeCloseTo(0.26, 9)
  })

  it('a valve that was ground too far shows less than nothing', () => {
    expect(valueOf(tipStockLeft, { 'overall-length': 124.3, 'minimum-overall-length': 124.33 })).toBeCloseTo(-0.03, 9)
  })

  it('a tip that stands 0.120 in and loses 0.010 in stands 0.110 in', () => {
    expect(valueOf(tipHeightLeft, { stands: 3.048, taken: 0.254 })).toBeCloseTo(0.11 * INCH, 12)
  })
})
