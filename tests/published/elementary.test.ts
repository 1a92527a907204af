import { all, create } from 'mathjs'
import type { BigNumber } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { cosDegrees, degreesOfTangent, exp, ln, PI, power, RADIAN, sinDegrees, tanDegrees } from '../../src/compute/elementary.ts'

// Independent reference: mathjs with numbers of 40 decimal digits, rounded to a double at the end.
const long = create(all ?? {}, { number: 'BigNumber', precision: 40 })
const big = (x: number): BigNumber => long.bignumber(x)

/** Difference in units of the last place of the reference, at least that of a number of size `least`. */
function lastPlaces(value: number, reference: BigNumber, least: number): number {
  const size = Math.max(Math.abs(reference.toNumber()), least)
  return Math.abs(long.subtract(big(value), reference).toNumber()) / (2 ** Math.floor(Math.log2(size)) * Number.EPSILON)
}

// The angle in radians is rounded once before the function sees it, which costs up to a place more near 90°.
const angles = Array.from({ length: 179 }, (_, k) => k / 2)

describe('elementary functions against 40 digits (mathjs)', () => {
  it('sine, cosine and tangent of 0 to 89 degrees', () => {
    for (const angle of angles) {
      const radians = long.multiply(big(angle), long.divide(long.pi as unknown as BigNumber, big(180))) as BigNumber
      expect(lastPlaces(sinDegrees(angle), long.sin(radians), 2 ** -20), `sin ${String(angle)}°`).toBeLessThan(3)
      expect(lastPlaces(cosDegrees(angle), long.cos(radians), 0.5), `cos ${String(angle)}°`).toBeLessThan(3)
      const tangent = long.tan(radians)
      const steep = 1 + tangent.toNumber() * tangent.toNumber()
      expect(lastPlaces(tanDegrees(angle), tangent, 2 ** -20) / steep, `tan ${String(angle)}°`).toBeLessThan(4)
      expect(Math.abs(degreesOfTangent(tanDegrees(angle)) - angle)).toBeLessThan(1e-13)
    }
  })

  it('exponentials, logarithms and powers', () => {
    for (let k = 1; k <= 60; k += 1) {
      const x = k * 0.375 // eighths, so that the decimal reference starts from the very same number
      expect(lastPlaces(exp(-x), long.exp(big(-x)), 0)).toBeLessThan(1)
      expect(lastPlaces(ln(x), long.log(big(x)), 2 ** -20)).toBeLessThan(1)
      expect(lastPlaces(power(x, -0.125), long.exp(long.multiply(big(-0.125), long.log(big(x))) as BigNumber), 0)).toBeLessThan(3)
    }
  })

  // Portability: literal doubles, so that a change of package, version or engine that moves one bit is seen here.
  it('gives the very doubles that old decisions were made with', () => {
    expect([PI, RADIAN]).toEqual([3.141592653589793, 0.017453292519943295])
    expect([sinDegrees(30), cosDegrees(45), tanDegrees(70), degreesOfTangent(0.03125)]).toEqual([
      0.49999999999999994, 0.7071067811865476, 2.7474774194546216, 1.7899106082460694,
    ])
    expect([exp(-0.5), ln(0.1), power(690, -0.265)]).toEqual([0.6065306597126334, -2.3025850929940455, 0.17689069609271088])
  })
})
