import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { apply, formula } from '../../src/compute/formula.ts'
import { netLift } from '../../src/compute/lift.ts'
import { chanceRestSound } from '../../src/compute/odds.ts'
import { guideLengthLeft } from '../../src/compute/seal.ts'
import { springLoadAtHeight, springRateFromLoads } from '../../src/compute/spring.ts'
import { studTension } from '../../src/compute/stud.ts'
import { tipStockLeft } from '../../src/compute/tip.ts'
import { combinedUncertainty } from '../../src/compute/uncertainty.ts'

const exactly = (value: number) => ({ value, u: 0 })
const whyNot = (answer: ReturnType<typeof apply>): string => (answer.ok ? `taken: ${String(answer.value)}` : answer.why)

const quotient = formula({
  id: 'quotient',
  version: 1,
  says: 'a ÷ b',
  source: 'for this test',
  inputs: { a: { kind: 'ratio', says: 'a' }, b: { kind: 'ratio', says: 'b' } },
  output: { kind: 'ratio', says: 'a ÷ b' },
  evaluate: (x) => ({ value: x.a / x.b, partials: { a: 1 / x.b, b: -x.a / x.b / x.b } }),
})

describe('apply', () => {
  it('gives the value and the root of the summed squares of the doubts', () => {
    const answer = apply(tipStockLeft, {
      'overall-length': { value: 124.5, u: 0.003 },
      'minimum-overall-length': { value: 124.25, u: 0.004 },
    })
    expect(answer).toEqual({ ok: true, value: 0.25, u: 0.005 })
  })

  it('takes the ends of a valid range as inside it', () => {
    const ends = tipStockLeft.inputs['overall-length']
    for (const end of [ends?.least, ends?.most]) {
      expect(apply(tipStockLeft, { 'overall-length': exactly(end ?? Number.NaN), 'minimum-overall-length': exactly(100) }).ok).toBe(true)
    }
  })

  it('says how far off a value is, with the unit where there is one', () => {
    expect(whyNot(apply(tipStockLeft, { 'overall-length': exactly(4.9), 'minimum-overall-length': exactly(124) }))).toBe(
      'tip-stock-left@1: “overall-length” is 4.9 mm; the formula holds from 20 mm.',
    )
    expect(whyNot(apply(studTension, { 'tip-force': exactly(900), ratio: exactly(15) }))).toBe(
      'stud-tension@1: “ratio” is 15; the formula holds up to 4.',
    )
  })

  it('names the input that is missing, in words', () => {
    const why = whyNot(apply(tipStockLeft, { 'overall-length': exactly(124) }))
    expect(why).toContain('“minimum-overall-length”')
    expect(why).toContain('least overall length')
  })

  it('names an input that it does not know and lists those that it takes', () => {
    const why = whyNot(apply(tipStockLeft, { 'overall-length': exactly(124), 'minimum-overall-length': exactly(123), length: exactly(1) }))
    expect(why).toContain('“length”')
    expect(why).toContain('overall-length, minimum-overall-length')
  })

  it('does not take an inherited property for an input', () => {
    const sly = formula({
      id: 'sly',
      version: 1,
      says: 'valueOf',
      source: 'for this test',
      inputs: { valueOf: { kind: 'ratio', says: 'a' } },
      output: { kind: 'ratio', says: 'a' },
      evaluate: (x) => ({ value: x['valueOf'], partials: { valueOf: 1 } }),
    })
    expect(whyNot(apply(sly, {}))).toContain('needs “valueOf”')
    expect(whyNot(apply(quotient, Object.assign({ a: exactly(1), b: exactly(1) }, { constructor: exactly(1) })))).toContain('“constructor”')
  })

  it('refuses numbers that are none, and negative or endless doubt', () => {
    fc.assert(
      fc.property(fc.constantFrom('a', 'b'), fc.constantFrom(Number.NaN, Infinity, -Infinity), (name, bad) => {
        const sound = { a: exactly(1), b: exactly(2) }
        expect(whyNot(apply(quotient, { ...sound, [name]: exactly(bad) }))).toContain(`“${name}”`)
        expect(whyNot(apply(quotient, { ...sound, [name]: { value: 1, u: bad } }))).toContain(`“${name}”`)
        expect(whyNot(apply(quotient, { ...sound, [name]: { value: 1, u: -0.1 } }))).toContain(`“${name}”`)
      }),
    )
  })

  it('refuses a division by zero, whatever stands above the line', () => {
    for (const a of [0, 1, -1]) expect(whyNot(apply(quotient, { a: exactly(a), b: exactly(0) }))).toContain('no finite number')
  })

  it('refuses a result or a doubt that runs out of numbers', () => {
    expect(whyNot(apply(quotient, { a: exactly(1e300), b: exactly(1e-300) }))).toContain('no finite number')
    expect(whyNot(apply(quotient, { a: { value: 1, u: 1e300 }, b: exactly(1) }))).toContain('no finite number')
  })

  it('takes only whole counts, and none that doubts', () => {
    const inputs = { bad: exactly(1), 'looked-at': exactly(16), rest: exactly(15) }
    expect(apply(chanceRestSound, inputs).ok).toBe(true)
    expect(whyNot(apply(chanceRestSound, { ...inputs, bad: exactly(1.5) }))).toContain('“bad” is 1.5')
    expect(whyNot(apply(chanceRestSound, { ...inputs, bad: { value: 1, u: 0.5 } }))).toContain('“bad” is a count')
  })

  it('gives 0 and never −0', () => {
    const answer = apply(quotient, { a: exactly(0), b: exactly(-2) })
    expect(answer.ok && Object.is(answer.value, 0)).toBe(true)
  })

  it('does not hang on the order in which the inputs are handed in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, ua, ub) => {
          const one = apply(quotient, { a: { value: a, u: ua }, b: { value: 3, u: ub } })
          expect(apply(quotient, { b: { value: 3, u: ub }, a: { value: a, u: ua } })).toEqual(one)
        },
      ),
    )
  })
})

describe('values that make no sense together', () => {
  const rate = (h1: number, f1: number, h2: number, f2: number) =>
    apply(springRateFromLoads, {
      'first-height': exactly(h1),
      'first-load': exactly(f1),
      'second-height': exactly(h2),
      'second-load': exactly(f2),
    })

  it('two loads at one height give no rate', () => {
    expect(whyNot(rate(40, 400, 40, 900))).toContain('“second-height”')
  })

  it('a spring that pushes less when squeezed is a mix-up', () => {
    expect(whyNot(rate(43, 900, 33, 400))).toContain('“second-load”')
    expect(whyNot(rate(43, 400, 33, 400))).toContain('“second-load”')
  })

  it('a spring bears no load beyond its free length', () => {
    const at = (h: number) =>
      apply(springLoadAtHeight, { 'known-load': exactly(100), 'known-height': exactly(40), rate: exactly(50), height: exactly(h) })
    expect(at(42)).toEqual({ ok: true, value: 0, u: 0 })
    expect(whyNot(at(43))).toContain('longer than free')
  })

  it('lash beyond the lift leaves the valve shut', () => {
    expect(whyNot(apply(netLift, { 'gross-lift': exactly(0.5), lash: exactly(1) }))).toContain('“lash”')
    expect(apply(netLift, { 'gross-lift': exactly(1), lash: exactly(1) })).toEqual({ ok: true, value: 0, u: 0 })
  })

  it('a cut cannot take the whole guide', () => {
    expect(whyNot(apply(guideLengthLeft, { 'guide-length': exactly(20), cut: exactly(20) }))).toContain('“cut”')
  })
})

describe('combinedUncertainty', () => {
  it('is not a number where a sensitivity has no measure', () => {
    expect(combinedUncertainty({ a: 1 }, {})).toBeNaN()
    expect(combinedUncertainty({ toString: 1 }, {})).toBeNaN()
  })
})
