import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { KEPT_UNIT } from '../../src/quantity/measure.ts'
import type { QuantityKind } from '../../src/quantity/measure.ts'
import { readQuantity } from '../../src/quantity/read.ts'
import { show } from '../../src/quantity/show.ts'
import { LENGTH, MARGIN, mustAsk } from './reading.ts'

const kinds = Object.keys(KEPT_UNIT) as QuantityKind[]

/** Milliseconds that the fastest of three runs takes: a busy machine must not fail the test. */
function fastest(run: () => void): number {
  const times = [0, 1, 2].map(() => {
    const start = performance.now()
    run()
    return performance.now() - start
  })
  return Math.min(...times)
}

describe('hostile text', () => {
  it('a megabyte is refused without being looked at, and not echoed', () => {
    for (const text of ['9'.repeat(1_000_000), '1 '.repeat(500_000), ' '.repeat(1_000_000), '\u202e'.repeat(1_000_000)]) {
      expect(JSON.stringify(mustAsk(text)).length).toBeLessThan(400)
      expect(mustAsk(text).code).toBe('too-long')
      expect(
        fastest(() => {
          for (let i = 0; i < 1000; i += 1) readQuantity(text, LENGTH)
        }),
      ).toBeLessThan(200)
    }
  })

  it('the longest text that is read is read in a moment, whatever it repeats', () => {
    const pieces = [
      '1 ',
      '1-',
      '1/',
      '1,',
      '1.',
      '(',
      'a-',
      'and ',
      'one ',
      'of a ',
      'twenty-',
      '½',
      '"',
      'in',
      '/',
      '1 and 1/',
      'e1',
      '- ',
      '=1',
      '1 in,',
      'thou ',
      'point ',
    ]
    for (const piece of pieces) {
      for (const start of ['', '1 ', '12 thou ', '1e', 'a ']) {
        const text = (start + piece.repeat(200)).slice(0, 200)
        expect(
          fastest(() => {
            for (let i = 0; i < 10; i += 1) readQuantity(text, MARGIN)
          }),
        ).toBeLessThan(100)
      }
    }
  })

  it.each([
    ['a direction mark', '\u200f0.012 in'],
    ['an override', '\u202e210.0 in'],
    ['an isolate', '0.012\u2066 in'],
    ['a zero-width space', '0.0\u200b12 in'],
    ['a joiner', '0.012\u200d in'],
    ['a null', '0.012\u0000 in'],
    ['an escape', '\u001b[31m0.012 in'],
    ['a bell', '0.012\u0007 in'],
    ['a line break inside', '0.012\n in'],
    ['a carriage return', '0.012\r0.5 in'],
    ['a lone surrogate', '0.012\ud800 in'],
    ['a soft hyphen', '0.0\u00ad12 in'],
    ['a line separator', '0.012\u2028in'],
    ['a private character', '0.012\ue000 in'],
  ])('%s is refused and not echoed', (_what, text) => {
    const fault = mustAsk(text)
    expect(fault.code).toBe('hidden-characters')
    // Nothing but printable characters in the answer.
    expect(/^[\x20-\x7e]*$/.test(JSON.stringify(fault))).toBe(true)
  })

  it('a unit field of a megabyte is refused shortly', () => {
    const fault = mustAsk('12', { ...LENGTH, unit: 'in'.repeat(500_000) })
    expect(fault.code).toBe('unit-unknown')
    expect(JSON.stringify(fault).length).toBeLessThan(400)
  })

  it('what is not text at all is refused, not thrown', () => {
    for (const bad of [12, null, undefined, {}, ['0.012 in'], true]) {
      expect(mustAsk(JSON.parse(JSON.stringify({ v: bad ?? null })).v, LENGTH).code).toBe('not-a-number')
    }
  })
})

describe('any text at all', () => {
  const alphabet = fc.string({ unit: fc.constantFrom(...' 0123456789.,/-+()="\'°%#eEabdefhilmnortu½µ'), maxLength: 40 })
  const worded = fc
    .array(
      fc.constantFrom(
        '12',
        '1/2',
        '.5',
        '0,3',
        '-',
        'in',
        'thou',
        'mm',
        'tenths',
        'and',
        'a',
        'half',
        'of',
        'point',
        'twenty',
        'ten',
        '/',
        '(',
        ')',
        'lb',
        'kg',
        'mil',
        '°',
        'to',
      ),
      { maxLength: 8 },
    )
    .map((w) => w.join(' '))
  const any = fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), alphabet, worded)

  it('is either read as a finite quantity or asked back in short words; nothing is thrown', () => {
    fc.assert(
      fc.property(any, fc.constantFrom(...kinds), fc.constantFrom(undefined, 'in', 'mm', 'thou', 'lb', ''), (typed, kind, unit) => {
        const reading = readQuantity(typed, { kind, label: 'a figure', ...(unit === undefined ? {} : { unit }) })
        if (reading.ok) {
          const { value, u, resolution } = reading.quantity
          expect([value, u, resolution].every(Number.isFinite)).toBe(true)
          expect(Object.is(value, -0)).toBe(false)
          expect(u).toBeGreaterThanOrEqual(0)
          expect(resolution).toBeGreaterThan(0)
          expect(show(value, kind, { typed }).length).toBeLessThan(200)
        } else {
          for (const fault of reading.faults) expect(fault.says.length + fault.mend.length).toBeLessThan(900)
          expect(reading.faults.length).toBe(1)
        }
      }),
      { numRuns: 3000 },
    )
  })

  it('is never read outside the plausible range', () => {
    fc.assert(
      fc.property(any, (typed) => {
        const reading = readQuantity(typed, MARGIN)
        if (reading.ok) {
          expect(reading.quantity.value).toBeGreaterThanOrEqual(0.254)
          expect(reading.quantity.value).toBeLessThanOrEqual(2.54)
        }
      }),
      { numRuns: 2000 },
    )
  })
})
