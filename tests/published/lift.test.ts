import { unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { grossLift, netLift } from '../../src/compute/lift.ts'
import { INCH, valueOf } from './figures.ts'

describe('valve lift', () => {
  // Common practice in the trade.
  it.each([
    [0.3, 1.5, 0.45],
    [0.3, 1.6, 0.48],
  ])('a lobe of %d in with ratio %d lifts the valve %d in', (lobe, ratio, lift) => {
    expect(valueOf(grossLift, { 'lobe-lift': lobe * INCH, ratio }) / INCH).toBeCloseTo(lift, 12)
  })

  // Derived, invented figures of the demo engines, in inches and again in the millimetres that their sheets print beside them.
  it.each([
    ['QL-6P stock', 0.27, 6.858, 1.5, 10.287],
    ['QL-6P with card P-2', 0.3, 7.62, 1.5, 11.43],
    ['QL-8S stock', 0.275, 6.985, 1.6, 11.176],
    ['QL-8S with card H-2', 0.32, 8.128, 1.6, 13.005],
  ])('%s (invented)', (_name, lobeInches, lobe, ratio, lift) => {
    expect(lobe).toBeCloseTo(lobeInches * INCH, 9)
    expect(Math.abs(valueOf(grossLift, { 'lobe-lift': lobe, ratio }) - lift)).toBeLessThan(0.0005)
  })

  // No published figure (a difference); second route through mathjs' units.
  it.each([
    [10.287, '0.012 in'],
    [10.287, '0.018 in'],
    [11.43, '0.3 mm'],
  ])('%d mm less a lash of %s agrees with mathjs', (gross, lash) => {
    const expected = unit(gross, 'mm').toNumber('mm') - unit(lash).toNumber('mm')
    expect(valueOf(netLift, { 'gross-lift': gross, lash: unit(lash).toNumber('mm') })).toBeCloseTo(expected, 12)
  })
})
