import { describe, expect, it } from 'vitest'
import { apply } from '../../src/compute/formula.ts'
import { drainFlow, poolLevel, poolLevelDoubleFlow, poolLevelHalfFlow } from '../../src/compute/oil.ts'
import { viscosityAtTemperature } from '../../src/compute/viscosity.ts'
import { valueOf } from './figures.ts'

/** Second route: the Darcy form, head = (0.5 + 1 + 64 ÷ Re × length ÷ diameter) × V² ÷ 2g, the speed found by halving. SI units. */
function flowByHalving(head: number, length: number, diameter: number, viscosity: number): number {
  let [low, high] = [1e-9, 10]
  for (let k = 0; k < 100; k += 1) {
    const speed = (low + high) / 2
    const friction = (64 * viscosity * length) / (speed * diameter * diameter)
    if (((1.5 + friction) * speed * speed) / 2 / 9.80665 < head) low = speed
    else high = speed
  }
  return low * (Math.PI / 4) * diameter * diameter * 60_000
}

describe('oil on the head', () => {
  // Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Example 8.2 (read in a textbook companion): oil of 0.40 Pa s and 900 kg/m³, pipe of
  // 20 mm and 10 m, 2.0e-5 m³/s: 20.4 kPa. A pipe far longer than a drain: the equation is asked past the formula's range.
  it('Munson, Example 8.2: 20.4 kPa', () => {
    const head = poolLevel.evaluate({
      flow: 1.2,
      drains: 1,
      'drain-diameter': 20,
      'drain-length': 10000,
      viscosity: (0.4 / 900) * 1e6,
    }).value
    expect(Math.abs((900 * 9.80665 * head) / 1e6 - 20.4)).toBeLessThan(0.06)
  })

  // Derived, by the quadratic and by halving on the Darcy form, which is done again here.
  it.each([
    [10, 30, 8, 60, 0.30321943363493437],
    [6, 20, 6, 400, 0.014024893955386888],
  ])('%d mm over a drain %d mm long, %d mm wide, %d mm²/s (derived)', (head, length, diameter, viscosity, expected) => {
    const flow = valueOf(drainFlow, { head, 'drain-length': length, 'drain-diameter': diameter, viscosity })
    expect(flow / expected).toBeCloseTo(1, 6)
    expect(flowByHalving(head / 1000, length / 1000, diameter / 1000, viscosity / 1e6) / flow).toBeCloseTo(1, 6)
  })

  const box = { flow: 3, drains: 3, 'drain-diameter': 10, 'drain-length': 30, viscosity: 80 }

  // Derived, bisection and a second root-finder: 3 L/min through three holes of 10 mm at 80 mm²/s stand 20.06 mm over the sills.
  it('a pool of 20.06 mm (derived), which drains what comes in', () => {
    const level = valueOf(poolLevel, box)
    expect(level / 20.06275227594338).toBeCloseTo(1, 5)
    expect(3 * valueOf(drainFlow, { head: level, 'drain-length': 30, 'drain-diameter': 10, viscosity: 80 })).toBeCloseTo(3, 9)
  })

  it('the three levels hold the doubt of a factor of two on the flow', () => {
    expect(valueOf(poolLevelHalfFlow, box)).toBeCloseTo(valueOf(poolLevel, { ...box, flow: 1.5 }), 12)
    expect(valueOf(poolLevelDoubleFlow, box)).toBeCloseTo(valueOf(poolLevel, { ...box, flow: 6 }), 12)
    for (const each of [poolLevel, poolLevelHalfFlow, poolLevelDoubleFlow]) expect(each.weighs).toBe('explains')
  })

  it('refuses a turbulent stream instead of guessing at it', () => {
    const exactly = Object.fromEntries(
      Object.entries({ ...box, flow: 40, viscosity: 5, drains: 1 }).map(([name, value]) => [name, { value, u: 0 }]),
    )
    const answer = apply(poolLevel, exactly)
    expect(answer.ok ? '' : answer.why).toContain('turbulent')
  })
})

describe('viscosity by Walther’s line', () => {
  const oil = { 'at-forty': 100, 'at-hundred': 11.4 }

  // Equation of ASTM D341 (recalled); the values by its coefficients A 9.05932 and B 3.50902, and by direct interpolation.
  it.each([
    [60, 40.21697094543026],
    [120, 7.271157530375812],
  ])('100 and 11.4 mm²/s: at %d °C %d (derived)', (temperature, expected) => {
    const found = valueOf(viscosityAtTemperature, { ...oil, temperature })
    expect(found / expected).toBeCloseTo(1, 9)
    const line = 9.05932111271292 - 3.509015444531482 * Math.log10(temperature + 273.15)
    expect(found / (10 ** (10 ** line) - 0.7)).toBeCloseTo(1, 6)
  })

  it('gives the sheet’s own two figures back', () => {
    expect(valueOf(viscosityAtTemperature, { ...oil, temperature: 40 })).toBeCloseTo(100, 9)
    expect(valueOf(viscosityAtTemperature, { ...oil, temperature: 100 })).toBeCloseTo(11.4, 9)
  })

  it('refuses an oil that thickens as it warms', () => {
    const mixed = { 'at-forty': { value: 10, u: 0 }, 'at-hundred': { value: 11, u: 0 }, temperature: { value: 60, u: 0 } }
    expect(apply(viscosityAtTemperature, mixed).ok).toBe(false)
  })
})
