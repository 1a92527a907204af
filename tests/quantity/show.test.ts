import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { QuantityKind, ReadQuantity } from '../../src/quantity/measure.ts'
import { inUnit, show, showWithDoubt } from '../../src/quantity/show.ts'
import { UNITS } from '../../src/quantity/units.ts'
import { mustRead } from './reading.ts'

describe('show', () => {
  it.each<[number, QuantityKind, Parameters<typeof show>[2], string]>([
    [0.254, 'length', { typed: '10 thou' }, '0.010 in (0.25 mm)'],
    [0.254, 'length', { typed: '0.010 in' }, '0.010 in (0.25 mm)'],
    [0.3048, 'length', { typed: '.012' }, '0.012 in (0.30 mm)'],
    [0.3, 'length', { typed: '0.30 mm' }, '0.30 mm (0.0118 in)'],
    [0.3, 'length', { unit: 'mm', digits: 2 }, '0.30 mm (0.0118 in)'],
    [1.984375, 'length', { typed: '5/64' }, '5/64 in (2.0 mm)'],
    [26.9875, 'length', { typed: '1 1/16 in' }, '1-1/16 in (27 mm)'],
    [1156.53761396773, 'force', { typed: '260 lb' }, '260 lb (1157 N)'],
    [489, 'force', { typed: '489 N' }, '489 N (109.9 lb)'],
    [61.29439233626673, 'stiffness', { typed: '350 lb/in' }, '350 lb/in (61.3 N/mm)'],
    [67.79089741657002, 'torque', { typed: '50 ft-lb' }, '50 lb·ft (68 N·m)'],
    [45, 'angle', { typed: '45' }, '45°'],
    [44.5, 'angle', { typed: '44.5 deg' }, '44.5°'],
    [54.44444444444444, 'temperature', { typed: '130 F' }, '130 °F (54.4 °C)'],
    [1.6, 'ratio', { typed: '1.60' }, '1.60'],
    [8, 'count', { typed: '8' }, '8'],
    [64, 'volume', { typed: '64 cc' }, '64 cm³ (3.91 in³)'],
    // Nothing known of how it was typed: the unit's habit, but never fewer than two digits that count.
    [0.0127, 'length', {}, '0.013 mm (0.0005 in)'],
    [25.4, 'length', { unit: 'in' }, '1.0000 in (25.40 mm)'],
    [0.00508, 'length', { resolution: 0.00254 }, '0.005 mm (0.0002 in)'],
    [0, 'length', { typed: '0 in' }, '0 in (0 mm)'],
  ])('%d as %s %o is %s', (value, kind, options, text) => {
    expect(show(value, kind, options)).toBe(text)
  })

  it('writes a real minus sign, and none before nothing', () => {
    expect(show(-0.127, 'length', { typed: '-0.005 in' })).toBe('−0.005 in (−0.13 mm)')
    expect(show(-0.0001, 'length', { unit: 'mm', digits: 2 })).toBe('0.00 mm (0.0000 in)')
    expect(inUnit(-1, 'mm', 1)).toBe('−1.0 mm')
  })

  it('keeps no fraction that the value does not have', () => {
    expect(show(2, 'length', { typed: '5/64 in' })).toBe('0.08 in (2.0 mm)')
  })

  it('says so where there is no number', () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY])
      expect([show(bad, 'length'), inUnit(bad, 'mm', 2)]).toEqual(['no number', 'no number'])
  })
})

describe('showWithDoubt', () => {
  it.each<[number, number, QuantityKind, string | undefined, string]>([
    [0.1016, 0.00254, 'length', 'in', '0.0040 ± 0.0002 in (0.102 ± 0.005 mm), k = 2'],
    [0.3, 0.0075, 'length', 'mm', '0.300 ± 0.015 mm (0.0118 ± 0.0006 in), k = 2'],
    [489.304377678655, 7.339565665179825, 'force', 'lb', '110 ± 3 lb (489 ± 15 N), k = 2'],
    [45, 0.125, 'angle', undefined, '45.00 ± 0.25°, k = 2'],
    [-0.127, 0.00254, 'length', 'in', '−0.0050 ± 0.0002 in (−0.127 ± 0.005 mm), k = 2'],
    [8, 0, 'count', undefined, '8'],
  ])('%d, u %d', (value, u, kind, unit, text) => {
    expect(showWithDoubt({ value, u }, kind, unit === undefined ? {} : { unit })).toBe(text)
  })
})

describe('what show wrote reads back', () => {
  const back = (q: ReadQuantity, text: string): void => {
    const again = mustRead(text, { kind: q.kind, label: 'a figure' })
    expect(Math.abs(again.value - q.value)).toBeLessThanOrEqual((q.resolution / 2) * (1 + 1e-9))
  }

  it('to within half the typed step, in every unit, with both figures agreeing', () => {
    const units = UNITS.filter((u) => u.kind !== 'count' && u.kind !== 'ratio')
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.integer({ min: -99_999, max: 99_999 }),
        fc.integer({ min: 0, max: 4 }),
        (unit, n, decimals) => {
          const typed = `${(n / 10 ** decimals).toFixed(decimals)} ${unit.said[0] ?? unit.symbol}`
          const q = mustRead(typed, { kind: unit.kind, label: 'a figure' })
          back(q, show(q.value, q.kind, { typed }))
          back(q, show(q.value, q.kind, { unit: q.unit, resolution: q.resolution }))
        },
      ),
      { numRuns: 500 },
    )
  })

  it('fractions exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9 }), fc.constantFrom(2, 4, 8, 16, 32, 64), fc.nat(), (whole, d, more) => {
        const n = 1 + (more % (d - 1))
        const typed = `${whole}-${n}/${d} in`
        const q = mustRead(typed)
        expect(mustRead(show(q.value, 'length', { typed })).value).toBe(q.value)
      }),
    )
  })
})
