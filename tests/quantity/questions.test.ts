import { describe, expect, it } from 'vitest'
import type { ReadContext } from '../../src/quantity/read.ts'
import { readQuantity } from '../../src/quantity/read.ts'
import { ANGLE, DECK, FREE_LENGTH, LENGTH, LOAD, MARGIN, mustAsk, RUNOUT, STEM } from './reading.ts'

const TEMPERATURE: ReadContext = { kind: 'temperature', label: 'wash temperature' }
const COUNT: ReadContext = { kind: 'count', label: 'coils' }

describe('asks back instead of guessing', () => {
  it.each<[string, ReadContext, string, readonly string[]]>([
    ['12', LENGTH, 'unit-missing', ['12 thou', '12 mm', '12 in']],
    ['12', MARGIN, 'unit-missing', ['12 thou']],
    ['twelve', MARGIN, 'unit-missing', ['12 thou']],
    ['0.012', LENGTH, 'unit-missing', ['0.012 in', '0.012 mm', '0.012 thou']],
    ['0.002', RUNOUT, 'unit-missing', ['0.002 in', '0.002 mm', '0.002 thou']],
    // Only millimetres are plausible, but inches miss by less than four times: it could be a worn part, or a slip.
    ['0.3', MARGIN, 'unit-missing', ['0.3 mm']],
    ['half', LENGTH, 'unit-missing', ['1/2 thou', '1/2 mm', '1/2 in']],
    ['two and a half', LENGTH, 'unit-missing', ['2-1/2 thou', '2-1/2 mm', '2-1/2 in']],
    // Three decimals after a comma are no inch shop's writing.
    ['0,015', { kind: 'length', label: 'clearance', plausible: { lo: 0.02, hi: 0.4 } }, 'unit-missing', ['0.015 in']],
    ['110', LOAD, 'unit-missing', ['110 lb', '110 kgf']],
    ['120', TEMPERATURE, 'unit-missing', ['120 °C', '120 °F']],
    ['120°', TEMPERATURE, 'unit-ambiguous', ['120 °C', '120 °F']],
    ['two tenths', LENGTH, 'tenths', ['2 tenths of a thou', '2 tenths of a mm']],
    ['2 tenths', { ...LENGTH, unit: 'in' }, 'tenths', ['2 tenths of a thou', '2 tenths of a mm']],
    ['three-hundredths', LENGTH, 'unit-ambiguous', ['3 hundredths of a mm', '3 hundredths of an inch']],
    ['ten-thousandths', LENGTH, 'unit-ambiguous', ['10 thou', '0.0001 in']],
    ['one and a half mil', LENGTH, 'unit-ambiguous', ['1-1/2 thou', '1-1/2 mm']],
    ['12 mil', { ...LENGTH, unit: 'mm' }, 'unit-ambiguous', ['12 thou', '12 mm']],
    ['50 kg', LOAD, 'unit-ambiguous', ['50 kgf']],
    ['1,200 lb', { kind: 'force', label: 'load' }, 'comma-ambiguous', ['1.200 lb', '1200 lb']],
  ])('%s', (typed, context, code, choices) => {
    const fault = mustAsk(typed, context)
    expect(fault.code).toBe(code)
    expect(fault.choices).toEqual(choices)
  })

  it('every choice on offer reads, as it stands, as a plausible quantity', () => {
    const asked: readonly (readonly [string, ReadContext])[] = [
      ['12', MARGIN],
      ['0.002', RUNOUT],
      ['110', LOAD],
      ['two tenths', LENGTH],
      ['three-hundredths', LENGTH],
      ['one and a half mil', LENGTH],
      ['ten-thousandths', LENGTH],
      ['50 kg', LOAD],
      ['0.12 in', MARGIN],
      ['0.6 in', MARGIN],
      ['12 mm', MARGIN],
      ['60 N', LOAD],
      ['90', ANGLE],
      ['-0.02 in', MARGIN],
      ['0.006 in (0.015 mm)', LENGTH],
    ]
    for (const [typed, context] of asked) {
      const { choices = [] } = mustAsk(typed, context)
      expect(choices.length).toBeGreaterThan(0)
      for (const choice of choices) expect(readQuantity(choice, context)).toMatchObject({ ok: true })
    }
  })

  it('says what a bare twelve could be', () => {
    expect(mustAsk('12', MARGIN).says).toContain('12 thou = 0.012 in = 0.305 mm')
    expect(mustAsk('12', LENGTH).says).toContain('12 mm = 0.472 in')
  })
})

describe('outside the plausible range', () => {
  it.each<[string, ReadContext, readonly string[]]>([
    ['0.12 in', MARGIN, ['0.012 in']],
    ['0.6 in', MARGIN, ['0.06 in', '0.6 mm']],
    ['12 mm', MARGIN, ['1.2 mm', '12 thou']],
    ['.3', MARGIN, ['0.03 in', '0.3 mm']],
    ['60 N', LOAD, ['600 N', '60 lb', '60 kgf']],
    ['90°', ANGLE, ['45°']],
    ['3', { ...STEM, unit: 'mm' }, []],
  ])('%s', (typed, context, choices) => {
    const fault = mustAsk(typed, context)
    expect(fault.code).toBe('out-of-range')
    expect(fault.choices).toEqual(choices)
    if (choices[0] !== undefined) expect(fault.mend).toContain(`Did you mean ${choices[0]}`)
  })

  it('gives the range in both systems', () => {
    expect(mustAsk('0.12 in', MARGIN).says).toContain('0.0100 in to 0.1000 in (0.25 mm to 2.54 mm)')
    expect(mustAsk('9 mm', MARGIN).says).toContain('0.25 mm to 2.54 mm (0.0100 in to 0.1000 in)')
  })

  it('holds the ends of the range, in either unit', () => {
    for (const typed of ['0.010 in', '10 thou', '0.254 mm', '0.100 in', '2.54 mm'])
      expect(readQuantity(typed, MARGIN)).toMatchObject({ ok: true })
    for (const typed of ['0.0099 in', '0.2539 mm', '0.1001 in', '2.541 mm']) expect(mustAsk(typed, MARGIN).code).toBe('out-of-range')
  })

  it('takes a sign only where the range reaches below zero', () => {
    expect(mustAsk('-0.02 in', MARGIN)).toMatchObject({ code: 'sign-not-allowed', choices: ['0.02 in'] })
    expect(readQuantity('-0.02 in', DECK)).toMatchObject({ ok: true })
  })
})

describe('what contradicts itself', () => {
  it.each<[string, ReadContext, string]>([
    ['12 thou', { ...MARGIN, unit: 'mm' }, 'unit-conflict'],
    ['0.3 mm', { ...MARGIN, unit: 'in' }, 'unit-conflict'],
    ['110 lb', { ...LOAD, unit: 'N' }, 'unit-conflict'],
    ['5/64', { ...MARGIN, unit: 'mm' }, 'unit-conflict'],
    ['0.012 in (12 thou)', { ...MARGIN, unit: 'mm' }, 'unit-conflict'],
    ['0.006 in (0.015 mm)', LENGTH, 'pair-disagrees'],
    ['110 lb', MARGIN, 'wrong-kind'],
    ['12 thou', LOAD, 'wrong-kind'],
    ['30 psi', LOAD, 'wrong-kind'],
    ['12', { ...MARGIN, unit: 'lb' }, 'wrong-kind'],
    ['12', { ...MARGIN, unit: 'furlong' }, 'unit-unknown'],
    ['12 furlongs', MARGIN, 'unit-unknown'],
    ['5.5', COUNT, 'not-whole'],
    ['-3', COUNT, 'not-whole'],
    ['1/2', COUNT, 'not-whole'],
    ['12 in', COUNT, 'wrong-kind'],
    ['5/63', LENGTH, 'odd-fraction'],
    ['1/3 in', LENGTH, 'odd-fraction'],
    ['260/1157 N', LOAD, 'odd-fraction'],
  ])('%s for %o', (typed, context, code) => {
    expect(mustAsk(typed, context).code).toBe(code)
  })
})

describe('what is no figure', () => {
  it.each<[string, string]>([
    ['', 'not-a-number'],
    ['   ', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['-Infinity mm', 'not-a-number'],
    ['1e400', 'not-a-number'],
    ['1e400 in', 'not-a-number'],
    ['1e-400 in', 'not-a-number'],
    ['thin', 'not-a-number'],
    ['thou', 'not-a-number'],
    ['--5 thou', 'not-a-number'],
    ['1/0 in', 'not-a-number'],
    ['1.2.3 in', 'not-a-number'],
    ['1,2,3 mm', 'not-a-number'],
    ['1 17/16 in', 'not-a-number'],
    ['one hundred thou', 'not-a-number'],
    [`${'9'.repeat(31)} mm`, 'not-a-number'],
    ['٣ mm', 'not-a-number'],
    ['１２ mm', 'not-a-number'],
    ['12² mm', 'unit-unknown'],
    ['0.010-0.012 in', 'not-one-figure'],
    ['10-12 thou', 'not-one-figure'],
    ['10 to 12 thou', 'not-one-figure'],
    ['1 200 mm', 'not-one-figure'],
    ['12 thou 13 thou', 'not-one-figure'],
    ['<0.002 in', 'not-one-figure'],
    ['0.012 ± 0.001 in', 'not-one-figure'],
    ['~12 thou', 'not-one-figure'],
    ['12 thou (0.305 mm', 'not-one-figure'],
    ['12 thou (0.305 mm) or so', 'not-one-figure'],
    ['0.012 in = 0.305 mm = 12 thou', 'not-one-figure'],
  ])('%j', (typed, code) => {
    expect(mustAsk(typed).code).toBe(code)
  })

  it('names where it stood and what stood there', () => {
    expect(mustAsk('12', { ...FREE_LENGTH, pointer: '/findings/3/value' })).toMatchObject({ pointer: '/findings/3/value', value: '12' })
  })

  it('refuses an instrument without a usable doubt', () => {
    for (const instrument of [
      { id: 'x', label: 'x', k: 2 },
      { id: 'x', label: 'x', expanded: Number.NaN, k: 2 },
      { id: 'x', label: 'x', expanded: 1, k: 0 },
      { id: 'x', label: 'x', relative: Number.POSITIVE_INFINITY, k: 2 },
    ]) {
      expect(mustAsk('1 mm', { ...LENGTH, instrument }).code).toBe('instrument-unusable')
    }
  })
})
