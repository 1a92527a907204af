import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ReadContext } from '../../src/quantity/read.ts'
import { ANGLE, DECK, FREE_LENGTH, LENGTH, LOAD, MARGIN, mustRead, STEM } from './reading.ts'

const INCH = 25.4

describe('lengths as people write them: value and step in inches', () => {
  it.each<[string, number, number]>([
    ['12 thou', 0.012, 0.001],
    ['12thou', 0.012, 0.001],
    ['12 thous', 0.012, 0.001],
    ['12 thousandths', 0.012, 0.001],
    ['12 thousandths of an inch', 0.012, 0.001],
    ['0.012 in', 0.012, 0.001],
    ['0.012 in.', 0.012, 0.001],
    ['0.012IN', 0.012, 0.001],
    ['.012', 0.012, 0.001],
    ['.012"', 0.012, 0.001],
    ['.012”', 0.012, 0.001],
    [".012''", 0.012, 0.001],
    ['.0120"', 0.012, 0.0001],
    ['1.700 in', 1.7, 0.001],
    ['+0.012 in', 0.012, 0.001],
    ['  0.012 in  ', 0.012, 0.001],
    ['1e-3 in', 0.001, 0.001],
    ['twelve thou', 0.012, 0.001],
    ['Twenty-one thou', 0.021, 0.001],
    ['ninety nine thou', 0.099, 0.001],
    ['a thou', 0.001, 0.001],
    ['ten thousandths', 0.01, 0.001],
    ['half a thou', 0.0005, 0.0005],
    ['a half thou', 0.0005, 0.0005],
    ['a quarter of a thou', 0.00025, 0.00025],
    ['one and a half thou', 0.0015, 0.0005],
    ['2 and a half thou', 0.0025, 0.0005],
    ['2 1/2 thou', 0.0025, 0.0005],
    ['2.5 thou', 0.0025, 0.0001],
    ['2 ten-thousandths', 0.0002, 0.0001],
    ['two tenths of a thou', 0.0002, 0.0001],
    ['three quarters of an inch', 0.75, 0.25],
  ])('%s', (typed, inches, step) => {
    const read = mustRead(typed)
    expect(read.value).toBeCloseTo(inches * INCH, 12)
    expect(read.resolution).toBeCloseTo(step * INCH, 12)
    expect(read.typed).toBe(typed.trim())
  })

  // What people type, fraction and double of the inch: exact by definition.
  it.each<[string, number, number]>([
    ['5/64', 5, 64],
    ['5/64"', 5, 64],
    ['5 / 64 in', 5, 64],
    ['5⁄64', 5, 64],
    ['1-1/16', 17, 16],
    ['1 1/16 in', 17, 16],
    ['1 1/16"', 17, 16],
    ['1–1/16', 17, 16],
    ['2 3/64"', 131, 64],
    ['1-1/2', 3, 2],
    ['1½', 3, 2],
    ['1-½ in', 3, 2],
    ['¾"', 3, 4],
    ['3/32', 3, 32],
    ['1/64 in', 1, 64],
    ['1 and 1/16 in', 17, 16],
    ['sixteenth', 1, 16],
    ['a thirty-second', 1, 32],
    ['three sixteenths', 3, 16],
    ['five sixty-fourths of an inch', 5, 64],
    ['3 sixteenths', 3, 16],
    ['one and three quarters inch', 7, 4],
  ])('%s is %d/%d in', (typed, n, d) => {
    const read = mustRead(typed)
    // One division of two whole numbers rounds once, as the reader must.
    expect(read.value).toBe((n * 254) / (d * 10))
    expect(read.resolution).toBeCloseTo(INCH / d, 12)
    expect(read.unit).toBe('in')
  })

  it('a minus before a fraction is a sign, not a dash of a mixed number', () => {
    expect(mustRead('-1/64', DECK).value).toBe(-0.396875)
    expect(mustRead('−0.005 in', DECK).value).toBeCloseTo(-0.127, 12)
    expect(mustRead('minus five thou', DECK).value).toBeCloseTo(-0.127, 12)
  })
})

describe('millimetres and decimal commas', () => {
  it.each<[string, number, number]>([
    ['0.3 mm', 0.3, 0.1],
    ['0,3 mm', 0.3, 0.1],
    ['0,30mm', 0.3, 0.01],
    ['8,68 mm', 8.68, 0.01],
    ['0,305 mm', 0.305, 0.001],
    ['25 microns', 0.025, 0.001],
    ['25 µm', 0.025, 0.001],
    ['1.234,5 mm', 1234.5, 0.1],
    ['1,234.5 mm', 1234.5, 0.1],
    ['1,234,567 mm', 1234567, 1],
    ['half a mm', 0.5, 0.5],
    ['point three mm', 0.3, 0.1],
    ['point oh five mm', 0.05, 0.01],
    ['two tenths of a millimetre', 0.2, 0.1],
    ['3 hundredths of a mm', 0.03, 0.01],
  ])('%s', (typed, mm, step) => {
    const read = mustRead(typed)
    expect(read.value).toBeCloseTo(mm, 12)
    expect(read.resolution).toBeCloseTo(step, 12)
  })
})

describe('other kinds', () => {
  const of = (kind: ReadContext['kind']): ReadContext => ({ kind, label: kind })
  it.each<[string, ReadContext, number]>([
    ['110 lb', LOAD, 489.304377678655],
    ['110#', LOAD, 489.304377678655],
    ['110 lbs.', LOAD, 489.304377678655],
    ['50 kgf', LOAD, 490.3325],
    ['489 N', LOAD, 489],
    ['350 lb/in', of('stiffness'), 61.29439233626673],
    ['50 lb-ft', of('torque'), 67.79089741657002],
    ['20 N·m', of('torque'), 20],
    ['45°', ANGLE, 45],
    ['44.5 degrees', ANGLE, 44.5],
    ['130 °F', of('temperature'), 54.44444444444444],
    ['-10 C', of('temperature'), -10],
    ['64 cc', of('volume'), 64],
    ['1.6:1', of('ratio'), 1.6],
    ['1.6', of('ratio'), 1.6],
    ['3 %', of('ratio'), 0.03],
    ['8 L/min', of('flow'), 8],
    ['20 inHg', of('pressure'), 67.72778],
    ['20" Hg', of('pressure'), 67.72778],
    ['30 psi', of('pressure'), 206.8427187950508],
  ])('%s', (typed, context, expected) => {
    expect(mustRead(typed, context).value).toBeCloseTo(expected, 12)
  })

  it('counts are exact whole numbers', () => {
    for (const typed of ['12', 'twelve', '12 pieces', '1,234,567']) {
      const read = mustRead(typed, of('count'))
      expect([read.u, read.uFrom, read.resolution]).toEqual([0, 'exact', 1])
    }
    expect(mustRead('twelve', of('count')).value).toBe(12)
  })
})

describe('figures without a unit', () => {
  it.each<[string, ReadContext, string]>([
    ['.012', LENGTH, 'in'],
    ['5/64', LENGTH, 'in'],
    ['.012', MARGIN, 'in'],
    ['45', ANGLE, 'deg'],
    ['0.012', MARGIN, 'in'],
    ['8.68', STEM, 'mm'],
    ['0.3412', STEM, 'in'],
    ['1.95', FREE_LENGTH, 'in'],
    ['45.2', FREE_LENGTH, 'mm'],
    ['1,700', FREE_LENGTH, 'in'],
  ])('%s reads by itself for %o in %s, and says so', (typed, context, unit) => {
    const read = mustRead(typed, context)
    expect(read.unit).toBe(unit)
    expect(read.notes.join()).toContain('no unit was written')
  })

  it('takes the unit of the field, without a note', () => {
    expect(mustRead('0.3', { ...MARGIN, unit: 'mm' }).value).toBe(0.3)
    expect(mustRead('12', { ...MARGIN, unit: 'thou' }).value).toBe(0.3048)
    expect(mustRead('110', { ...LOAD, unit: 'lbs' }).notes.join()).not.toContain('unit')
  })

  it('reads a typed unit of the same system as the field, and says so', () => {
    const read = mustRead('12 thou', { ...MARGIN, unit: 'in' })
    expect([read.value, read.unit]).toEqual([0.3048, 'thou'])
    expect(read.notes.join()).toContain('the field says in')
  })
})

describe('what the shop decides', () => {
  const RUN: ReadContext = { kind: 'length', label: 'runout' }
  it('tenths', () => {
    expect(mustRead('two tenths', { ...RUN, tenths: 'ten-thousandths of an inch' }).value).toBe(0.00508)
    expect(mustRead('2 tenths', { ...RUN, tenths: 'tenths of a millimetre' }).value).toBe(0.2)
  })
  it('mils are thou where the shop is inch', () => {
    expect(mustRead('12 mil', { ...MARGIN, unit: 'in' }).value).toBe(0.3048)
    expect(mustRead('12 mils', { ...MARGIN, tenths: 'ten-thousandths of an inch' }).value).toBe(0.3048)
  })
  it('a field in kgf makes kg clear', () => {
    expect(mustRead('50 kg', { ...LOAD, unit: 'kgf' }).value).toBe(490.3325)
  })
})

describe('doubt', () => {
  const micrometer = { id: 'micrometer', label: 'micrometer', expanded: 0.00508, k: 2 }
  const tester = { id: 'spring-tester', label: 'spring tester', relative: 0.03, k: 2 }

  it('without an instrument is a rectangular half-step of what was typed (GUM 4.3.7: half-width a gives a/√3)', () => {
    const read = mustRead('0.3 mm')
    expect(read.u).toBeCloseTo(0.05 / Math.sqrt(3), 15)
    expect(read.uFrom).toBe('typed resolution')
    expect(read.notes.join()).toContain('0.1 mm')
  })
  it('with an instrument is U/k', () => {
    const read = mustRead('0.3412 in', { ...STEM, instrument: micrometer })
    expect([read.u, read.uFrom, read.notes]).toEqual([0.00254, 'instrument', []])
  })
  it('of a relative instrument follows the reading', () => {
    expect(mustRead('110 lb', { ...LOAD, instrument: tester }).u).toBeCloseTo(489.304377678655 * 0.015, 12)
  })
  it('is the step where that is coarser than the instrument, and says so', () => {
    const read = mustRead('0.34 in', { ...STEM, instrument: micrometer })
    expect(read.u).toBeCloseTo(0.254 / (2 * Math.sqrt(3)), 15)
    expect(read.uFrom).toBe('typed resolution')
    expect(read.notes.join()).toContain('micrometer')
  })
  it('is the same for both spellings of a reading with an instrument', () => {
    const inch = mustRead('0.0120 in', { ...MARGIN, instrument: micrometer })
    const mm = mustRead('0.3048 mm', { ...MARGIN, instrument: micrometer })
    expect([inch.value, inch.u]).toEqual([mm.value, mm.u])
  })
})

describe('spellings agree', () => {
  it('thou, inches, leading point and millimetres of one number give the identical double', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (n) => {
        const inch = (n / 1000).toFixed(3)
        const mm = `${Math.floor((n * 254) / 10_000)}.${String((n * 254) % 10_000).padStart(4, '0')}`
        const values = [`${n} thou`, `${inch} in`, `${inch}"`, `${mm} mm`, `${mm.replace('.', ',')} mm`].map((typed) => {
          // Four decimals: a comma with three could stand between thousands, and would be asked.
          return mustRead(typed).value
        })
        expect(new Set(values).size).toBe(1)
      }),
    )
  })
})
