import { describe, expect, it } from 'vitest'
import type { ReadContext } from '../../src/quantity/read.ts'
import { LENGTH, MARGIN, mustAsk, mustRead } from './reading.ts'

describe('one quantity said in two units', () => {
  it.each([
    '0.012 in (0.305 mm)',
    '0.012" / 0.30 mm',
    '.012" (.305mm)',
    '0.012 in = 0.3048 mm',
    '12 thou (0.3 mm)',
    '0.012 in, 0.305 mm',
    '0.012 in; 0.305 mm',
    '0.012 in [0,305 mm]',
    'twelve thou / 0.30 mm',
  ])('%s: the first is kept', (typed) => {
    const read = mustRead(typed)
    expect(read.value).toBe(0.3048)
    expect(read.notes.join()).toContain('both figures agree')
  })

  it('the second may be the finer one, or the one of the field', () => {
    expect(mustRead('0.3 mm (0.012 in)').value).toBe(0.3)
    expect(mustRead('0.012 in (0.305 mm)', { ...MARGIN, unit: 'mm' }).value).toBe(0.3048)
  })

  it('a fraction pairs with its millimetres', () => {
    expect(mustRead('5/64 / 1.98 mm').value).toBe(1.984375)
  })

  it('agreement ends with the two half-steps', () => {
    // 0.012 in ± 0.0005 in and mm in steps of 0.001: 0.3048 ± (0.0127 + 0.0005).
    expect(mustRead('0.012 in (0.318 mm)').value).toBe(0.3048)
    expect(mustAsk('0.012 in (0.319 mm)').code).toBe('pair-disagrees')
    expect(mustRead('0.012 in (0.292 mm)').value).toBe(0.3048)
    expect(mustAsk('0.012 in (0.291 mm)').code).toBe('pair-disagrees')
  })

  it('a figure of the pair without its unit is asked for', () => {
    expect(mustAsk('0.012 in (0.305)').code).toBe('unit-missing')
    expect(mustAsk('12 (0.305 mm)').code).toBe('unit-missing')
  })
})

describe('conversion misprints of published overhaul manuals are caught', () => {
  // Printed pairs as noted when the manuals' pages were read for the rulebook; where a manual is named, that is its number.
  const temperature: ReadContext = { kind: 'temperature', label: 'flash point' }
  it.each<[string, ReadContext, string]>([
    ['0.006 in (0.015 mm)', LENGTH, 'stem clearance limit, TM 9-4310-397-14'],
    ['0.760 mm (0.003 in)', LENGTH, 'seat run-out, a car maker’s specification'],
    ['3/32 in (3.2 mm)', LENGTH, 'contact width, TM 10-3930-671-24'],
    ['130 °F (50 °C)', temperature, 'solvent flash point, TM 9-2320-366-34-4'],
    ['0.010 in (0.23 mm)', LENGTH, 'tip stock, a car maker’s procedure'],
    ['0.0035 in (0.0189 mm)', LENGTH, 'stem clearance, TM 10-4320-344-24'],
    ['0.2344 in (0.3594 mm)', LENGTH, 'seat width, TM 10-4320-344-24'],
    ['0.3700 in (9.389 mm)', LENGTH, 'stem diameter, TM 10-4320-344-24'],
    ['1.0 mm (0.004 inch)', LENGTH, 'flatness example'],
    ['0.020 in (0.58 mm)', LENGTH, 'insert oversize'],
  ])('%s (%o, %s)', (typed, context) => {
    const fault = mustAsk(typed, context)
    expect(fault.code).toBe('pair-disagrees')
    // Both readings, each in both systems.
    expect(fault.says.match(/\(/g)?.length).toBe(2)
  })

  it.each([
    '0.006 in (0.15 mm)',
    '0.076 mm (0.003 in)',
    '3/32 in (2.38 mm)',
    '0.010 in (0.25 mm)',
    '0.0035 in (0.089 mm)',
    '0.3700 in (9.398 mm)',
    '0.10 mm (0.004 inch)',
    '0.020 in (0.51 mm)',
  ])('%s is right', (typed) => expect(mustRead(typed).notes.join()).toContain('both figures agree'))
})
