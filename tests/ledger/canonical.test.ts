import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonicalBytes, canonicalText } from '../../src/ledger/canonical.ts'
import { Refused } from '../../src/quantity/fault.ts'

/** The double whose IEEE 754 bits are given as 16 hexadecimal digits. */
function fromBits(hex: string): number {
  const view = new DataView(new ArrayBuffer(8))
  view.setBigUint64(0, BigInt(`0x${hex}`))
  return view.getFloat64(0)
}

// RFC 8785, Appendix B, Table 1: number serialisation samples (the whole table).
const NUMBERS: readonly (readonly [string, string])[] = [
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
]

describe('RFC 8785', () => {
  test.each(NUMBERS)('Appendix B: %s is written %s', (bits, text) => {
    expect(canonicalText(fromBits(bits))).toBe(text)
  })

  test.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])('Appendix B, note 3: %s has no text', (bits) => {
    expect(() => canonicalText({ depth: fromBits(bits) })).toThrow(Refused)
  })

  test('sections 3.2.2 to 3.2.4: the worked example gives the printed bytes', () => {
    const input: unknown = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`)
    const printed = `7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72
      75 65 2c 66 61 6c 73 65 5d 2c 22 6e 75 6d 62 65 72 73 22 3a
      5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31
      65 2b 33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37
      5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2 82 ac 24 5c 75 30 30
      30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d`
    expect(Buffer.from(canonicalBytes(input)).toString('hex')).toBe(printed.replaceAll(/\s/g, ''))
  })

  test('section 3.2.3: properties sort by UTF-16 code unit', () => {
    const input: unknown = JSON.parse(String.raw`{
      "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
    }`)
    const order = [...canonicalText(input).matchAll(/:"([^"]*)"/g)].map((m) => m[1])
    expect(order).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ])
  })
})

describe('one value, one text', () => {
  test('the text reads back as the same value, and the order of keys does not matter', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue()), (value) => {
        const turned = Object.fromEntries(Object.entries(value).reverse())
        expect(canonicalText(turned)).toBe(canonicalText(value))
        // JSON.stringify first, since -0 is 0 in JSON.
        expect(JSON.parse(canonicalText(value))).toEqual(JSON.parse(JSON.stringify(value)))
      }),
    )
  })
})

describe('what JSON can not hold is refused, and the place is named', () => {
  const loop: Record<string, unknown> = {}
  loop['self'] = loop
  const holed: unknown[] = [1, 2]
  holed.length = 3

  test.each<[string, unknown, string]>([
    ['undefined', { parts: [{ at: undefined }] }, '/parts/0/at'],
    ['undefined by itself', undefined, ''],
    ['NaN', { 'a/b': [1, Number.NaN] }, '/a~1b/1'],
    ['an infinity', [Number.NEGATIVE_INFINITY], '/0'],
    ['a bigint', { n: 1n }, '/n'],
    ['a function', { f: () => 1 }, '/f'],
    ['a symbol', [Symbol('s')], '/0'],
    ['a symbol as key', { [Symbol('s')]: 1 }, ''],
    ['a date', { on: new Date(0) }, '/on'],
    ['a map', { m: new Map() }, '/m'],
    ['a boxed number', { n: Object(1) as unknown }, '/n'],
    ['a hole in a list', { l: holed }, '/l/2'],
    ['a lone surrogate', { text: '\ud800' }, '/text'],
    ['a lone surrogate in a key', { o: { '\udead': 1 } }, '/o'],
  ])('%s', (_name, value, place) => {
    let thrown: unknown
    try {
      canonicalText(value)
    } catch (error) {
      thrown = error
    }
    expect(thrown).toBeInstanceOf(Refused)
    expect((thrown as Refused).faults.map((f) => [f.code, f.pointer])).toEqual([['not-canonical', place]])
  })

  test('a value within itself', () => {
    expect(() => canonicalText(loop)).toThrow(Refused)
  })

  test('the refusal does not repeat what was written', () => {
    const name = 'the quiet one of the night shift'
    let said = ''
    try {
      canonicalText({ by: `${name}\ud800` })
    } catch (error) {
      said = String(error)
    }
    expect(said).toContain('/by')
    expect(said).not.toContain(name)
  })
})
