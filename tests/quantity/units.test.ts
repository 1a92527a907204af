import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Refused } from '../../src/quantity/fault.ts'
import { KEPT_UNIT } from '../../src/quantity/measure.ts'
import type { QuantityKind } from '../../src/quantity/measure.ts'
import { fromKept, keptUnit, otherSystem, toKept, unitNamed, UNITS } from '../../src/quantity/units.ts'

/** n with so many decimals, as text: (304800, 6) is "0.304800". */
function decimalText(n: bigint, decimals: number): string {
  const digits = n.toString().padStart(decimals + 1, '0')
  return decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`
}

describe('exact factors', () => {
  // NIST SP 811 (2008), appendix B: figures that are exact by definition, and quotients of such (from memory; each can be worked out
  // from 1 in = 25.4 mm, 1 lb = 0.45359237 kg and 9.80665 m/s²).
  it.each([
    ['in', 25.4],
    ['thou', 0.0254],
    ['tenth-thou', 0.00254],
    ['uin', 0.0000254],
    ['um', 0.001],
    ['lb', 4.4482216152605],
    ['kgf', 9.80665],
    ['lb/in', 0.17512683524647636],
    ['lb ft', 1.3558179483314004],
    ['lb in', 0.1129848290276167],
    ['kgf m', 9.80665],
    ['psi', 6.894757293168361],
    ['bar', 100],
    ['psi-stress', 0.006894757293168361],
    ['ksi', 6.894757293168361],
    ['in^2', 645.16],
    ['in^3', 16.387064],
    ['gal', 3785.411784],
    ['gal/min', 3.785411784],
    ['cfm', 28.316846592],
    ['lb-mass', 0.45359237],
    ['oz-mass', 0.028349523125],
  ])('one %s is %d of the kept unit', (id, expected) => {
    expect(Math.abs(toKept('1', id) / expected - 1)).toBeLessThanOrEqual(1e-15)
  })

  it('takes the conventional inch of mercury, 3386.389 Pa (NIST SP 811 appendix B, from memory), and says so', () => {
    expect(toKept('1', 'inHg')).toBe(3.386389)
    expect(unitNamed('inHg', 'pressure')?.note).toContain('3386.389')
  })

  it('converts temperatures about their zeros', () => {
    expect(toKept('212', 'degF')).toBe(100)
    expect(toKept('-40', 'degF')).toBe(-40)
    expect(toKept('273.15', 'K')).toBe(0)
    expect(fromKept(100, 'degF')).toBe(212)
  })

  it('rounds once: 0.012 in is the double 0.3048', () => {
    expect(toKept('0.012', 'in')).toBe(0.3048)
    expect(toKept('12', 'thou')).toBe(0.3048)
    // In doubles 0.1 × 25.4 is 2.54, but 0.7 × 25.4 is 17.779999999999998.
    expect(toKept('0.7', 'in')).toBe(17.78)
  })
})

describe('spellings of one number', () => {
  const cases: readonly (readonly [string, string, bigint, number])[] = [
    ['in', 'mm', 254n, 1],
    ['thou', 'in', 1n, 3],
    ['kgf', 'N', 980665n, 5],
    ['lb', 'N', 44482216152605n, 13],
    ['in^2', 'mm^2', 64516n, 2],
    ['gal/min', 'L/min', 3785411784n, 9],
  ]
  it.each(cases)('%s and %s give the identical double', (from, into, many, more) => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 99_999_999n }), fc.integer({ min: 0, max: 6 }), (n, decimals) => {
        expect(toKept(decimalText(n, decimals), from)).toBe(toKept(decimalText(n * many, decimals + more), into))
      }),
    )
  })

  it('fromKept undoes toKept to the last digits', () => {
    fc.assert(
      fc.property(fc.constantFrom(...UNITS), fc.integer({ min: -999_999, max: 999_999 }), (unit, n) => {
        const figure = n / 1000
        expect(Math.abs(fromKept(toKept(String(figure), unit.id), unit.id) - figure)).toBeLessThanOrEqual(
          Math.abs(figure) * 1e-14 + (unit.zero === undefined ? 0 : 1e-12),
        )
      }),
    )
  })
})

describe('names', () => {
  it.each<[string, QuantityKind, string]>([
    ['thous', 'length', 'thou'],
    ['mil', 'length', 'thou'],
    ['Thousandths of an inch', 'length', 'thou'],
    ['"', 'length', 'in'],
    ["''", 'length', 'in'],
    ['inches', 'length', 'in'],
    ['millimetres', 'length', 'mm'],
    ['micron', 'length', 'um'],
    ['µm', 'length', 'um'],
    ['lbs', 'force', 'lb'],
    ['pounds', 'force', 'lb'],
    ['kg-force', 'force', 'kgf'],
    ['pounds', 'mass', 'lb-mass'],
    ['lbs/in', 'stiffness', 'lb/in'],
    ['lb per inch', 'stiffness', 'lb/in'],
    ['N/mm', 'stiffness', 'N/mm'],
    ['lb.ft', 'torque', 'lb ft'],
    ['lb-ft', 'torque', 'lb ft'],
    ['ft-lbs', 'torque', 'lb ft'],
    ['lb·ft', 'torque', 'lb ft'],
    ['in-lb', 'torque', 'lb in'],
    ['Nm', 'torque', 'N m'],
    ['N·m', 'torque', 'N m'],
    ['PSI', 'pressure', 'psi'],
    ['psi', 'stress', 'psi-stress'],
    ['inches of mercury', 'pressure', 'inHg'],
    ['in. Hg', 'pressure', 'inHg'],
    ['°', 'angle', 'deg'],
    ['degrees', 'angle', 'deg'],
    ['°C', 'temperature', 'degC'],
    ['deg F', 'temperature', 'degF'],
    ['cc', 'volume', 'cm^3'],
    ['cm³', 'volume', 'cm^3'],
    ['in2', 'area', 'in^2'],
    ['sq. in.', 'area', 'in^2'],
    ['L/min', 'flow', 'L/min'],
    ['gpm', 'flow', 'gal/min'],
    ['%', 'ratio', '%'],
  ])('%s as a %s is %s', (said, kind, id) => {
    expect(unitNamed(said, kind)?.id).toBe(id)
  })

  it('knows no unit where the name belongs to another kind, and none for a force in kg', () => {
    expect(unitNamed('lb', 'length')).toBeUndefined()
    expect(unitNamed('kg', 'force')).toBeUndefined()
    expect(unitNamed('tenths', 'length')).toBeUndefined()
  })

  it('no name means two units of one kind', () => {
    for (const kind of Object.keys(KEPT_UNIT) as QuantityKind[]) {
      for (const unit of UNITS.filter((u) => u.kind === kind)) {
        for (const said of [unit.id, unit.symbol, ...unit.said].filter((s) => s !== ''))
          expect(`${said} → ${unitNamed(said, kind)?.id ?? 'none'}`).toBe(`${said} → ${unit.id}`)
      }
    }
  })

  it('the kept unit of each kind has factor 1 and no shifted zero', () => {
    for (const kind of Object.keys(KEPT_UNIT) as QuantityKind[]) {
      expect(keptUnit(kind).zero).toBeUndefined()
      expect(toKept('7.25', keptUnit(kind).id)).toBe(7.25)
    }
  })

  it('the other system is another system of the same kind', () => {
    for (const unit of UNITS) {
      const other = UNITS.find((u) => u.id === otherSystem(unit.id))
      expect(other === undefined).toBe(unit.system === undefined)
      if (other === undefined) continue
      expect(other.kind).toBe(unit.kind)
    }
    expect(otherSystem('in')).toBe('mm')
    expect(otherSystem('lb ft')).toBe('N m')
    expect(otherSystem('deg')).toBeUndefined()
  })
})

describe('what is no decimal', () => {
  it.each(['', ' ', '1e400', 'NaN', 'Infinity', '0x10', '1,5', '1/2', '12 thou', '--1', '1'.repeat(61)])('refuses %j', (text) => {
    expect(() => toKept(text, 'in')).toThrow(Refused)
  })
  it('refuses a unit that does not exist and a value that is not finite', () => {
    expect(() => toKept('1', 'furlong')).toThrow(Refused)
    expect(() => fromKept(Number.NaN, 'in')).toThrow(Refused)
    expect(() => fromKept(Number.POSITIVE_INFINITY, 'in')).toThrow(Refused)
  })
})
