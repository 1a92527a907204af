import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { apply } from '../../src/compute/formula.ts'
import type { Formula } from '../../src/compute/formula.ts'
import { FORMULAS, formulaNamed } from '../../src/compute/registry.ts'
import type { QuantityKind } from '../../src/quantity/measure.ts'
import { inRange, rangeOf, sensible } from './lattice.ts'

/** Every value with that doubt; counts have none. */
const measures = (formula: Formula, x: Record<string, number>, u: (name: string) => number) =>
  Object.fromEntries(Object.entries(x).map(([name, value]) => [name, { value, u: formula.inputs[name]?.whole === true ? 0 : u(name) }]))

/** How a kept unit grows when the unit of length is divided by `l` and the unit of force by `f`. */
const SCALE: Partial<Record<QuantityKind, (l: number, f: number) => number>> = {
  length: (l) => l,
  force: (_l, f) => f,
  stiffness: (l, f) => f / l,
  torque: (l, f) => l * f,
  area: (l) => l * l,
  stress: (l, f) => f / (l * l),
  volume: (l) => l * l * l,
  mass: (l, f) => f / l,
  flow: (l) => l * l * l,
  angle: () => 1,
  temperature: () => 1,
  ratio: () => 1,
  count: () => 1,
}
const scaleOf = (kind: QuantityKind) => {
  const scale = SCALE[kind]
  if (scale === undefined) throw new Error(`say how ${kind} scales`)
  return scale
}

/** Fits and constants of nature that hold in their own units only: their figures are checked in tests/published. */
const OWN_UNITS = new Set([
  'drain-flow@1',
  'notch-factor-heywood@1',
  'notch-factor-neuber@1',
  'pool-level-double-flow@1',
  'pool-level-half-flow@1',
  'pool-level@1',
  'size-factor@1',
  'surface-factor@1',
])

describe.each([...FORMULAS])('%s', (_key, formula) => {
  it('has a valid range for every input', () => {
    for (const input of Object.values(formula.inputs)) expect(rangeOf(input).span).toBeGreaterThan(0)
  })

  it('gives the sensitivities that a finite difference finds', () => {
    fc.assert(
      fc.property(sensible(formula), (x) => {
        const { value, partials } = formula.evaluate(x)
        expect(Object.keys(partials).sort()).toEqual(Object.keys(formula.inputs).sort())
        for (const [name, input] of Object.entries(formula.inputs)) {
          const partial = partials[name] ?? Number.NaN
          if (input.whole === true) {
            expect(partial).toBe(0)
            continue
          }
          const { span } = rangeOf(input)
          const at = x[name] ?? Number.NaN
          const step = span * 1e-7
          const of = (moved: number): number => formula.evaluate({ ...x, [name]: moved }).value
          const [up, down] = [(of(at + step) - value) / step, (value - of(at - step)) / step]
          const central = (of(at + step) - of(at - step)) / (at + step - (at - step))
          const scale = Math.max(Math.abs(partial), Math.abs(value) / span)
          // Where a formula has a corner (the larger of two, the branches of a fit), the slope to one side must be the one given.
          const corner = Math.abs(up - down) > 1e-3 * scale
          // The last term is the rounding of formulas that take their value from 1: chances, factors.
          const off = corner ? Math.min(Math.abs(partial - up), Math.abs(partial - down)) : Math.abs(partial - central)
          expect(off, `∂/∂${name}: ${String(partial)} against ${String(central)}`).toBeLessThanOrEqual(
            (corner ? 1e-3 : 1e-6) * scale + (4 * Number.EPSILON) / step,
          )
        }
      }),
    )
  })

  it('reads no input that it does not declare', () => {
    fc.assert(
      fc.property(sensible(formula), (x) => {
        const undeclared: PropertyKey[] = []
        const watched = new Proxy(x, {
          get(target, name, receiver): unknown {
            if (typeof name !== 'string' || !Object.hasOwn(formula.inputs, name)) undeclared.push(name)
            return Reflect.get(target, name, receiver)
          },
        })
        formula.evaluate(watched)
        formula.refuses?.(watched)
        expect(undeclared).toEqual([])
      }),
    )
  })

  it('hangs on every input that it declares', () => {
    const idle = new Set(Object.keys(formula.inputs))
    for (const x of fc.sample(sensible(formula), 20)) {
      for (const [name, input] of Object.entries(formula.inputs)) {
        const moved = formula.evaluate({ ...x, [name]: (x[name] ?? 0) + (input.whole === true ? 1 : rangeOf(input).span / 7) })
        if (moved.value !== formula.evaluate(x).value) idle.delete(name)
      }
    }
    expect([...idle]).toEqual([])
  })

  it('says so when it is evaluated without one of its inputs', () => {
    expect(() => formula.evaluate({})).toThrow(Object.keys(formula.inputs)[0])
  })

  it('is exact when its inputs are, and scales its doubt with theirs', () => {
    fc.assert(
      fc.property(sensible(formula), fc.constantFrom(2, 0.5, 16), (x, times) => {
        const exact = apply(
          formula,
          measures(formula, x, () => 0),
        )
        expect(exact).toEqual({ ok: true, value: formula.evaluate(x).value + 0, u: 0 })
        const doubt = (name: string) => (Math.abs(x[name] ?? 0) + 1) / 1024
        const once = apply(formula, measures(formula, x, doubt))
        const more = apply(
          formula,
          measures(formula, x, (name) => times * doubt(name)),
        )
        if (!once.ok || !more.ok) throw new Error('refused')
        if (Object.values(formula.inputs).some((input) => input.whole !== true)) expect(once.u).toBeGreaterThan(0)
        expect(more.u).toBe(times * once.u)
        expect(once.value).toBe(exact.ok ? exact.value : Number.NaN)
      }),
    )
  })

  it('has at least the doubt of each input alone, and no more than all of them in step', () => {
    fc.assert(
      fc.property(sensible(formula), (x) => {
        const all = apply(
          formula,
          measures(formula, x, () => 0.01),
        )
        const alone = Object.keys(formula.inputs).map((only) =>
          apply(
            formula,
            measures(formula, x, (name) => (name === only ? 0.01 : 0)),
          ),
        )
        const us = alone.map((a) => (a.ok ? a.u : Number.NaN))
        if (!all.ok) throw new Error(all.why)
        expect(all.u).toBeGreaterThanOrEqual(Math.max(...us) * (1 - 1e-12))
        expect(all.u).toBeLessThanOrEqual(us.reduce((sum, u) => sum + u, 0) * (1 + 1e-12))
      }),
    )
  })

  it('refuses a value outside its valid range and names the input', () => {
    fc.assert(
      fc.property(
        inRange(formula),
        fc.constantFrom(...Object.keys(formula.inputs)),
        fc.boolean(),
        fc.integer({ min: 1, max: 1000 }),
        (x, name, low, k) => {
          const input = formula.inputs[name]
          if (input === undefined) throw new Error(name)
          const { least, span } = rangeOf(input)
          const step = input.whole === true ? k : (span * k) / 1000
          const beyond = low ? least - step : least + span + step
          const answer = apply(
            formula,
            measures(formula, { ...x, [name]: beyond }, () => 0),
          )
          if (answer.ok) throw new Error(`${name} = ${String(beyond)} was taken`)
          expect(answer.why).toContain(`“${name}”`)
          expect(answer.why).toContain(`${formula.id}@${String(formula.version)}`)
        },
      ),
    )
  })
})

/** The same quantity after the units of length and force were made smaller, and what the formula then gives. Powers of two: exact in binary. */
function scaledPair(formula: Formula, x: Record<string, number>, l: number, f: number): readonly [number, number] {
  const scaled = Object.entries(formula.inputs).map(([name, input]) => [name, (x[name] ?? Number.NaN) * scaleOf(input.kind)(l, f)] as const)
  return [formula.evaluate(x).value * scaleOf(formula.output.kind)(l, f), formula.evaluate(Object.fromEntries(scaled)).value]
}

describe('dimensions: other units of length and force give the same quantity', () => {
  it.each([...FORMULAS].filter(([key]) => !OWN_UNITS.has(key)))('%s', (_key, formula) => {
    fc.assert(
      fc.property(sensible(formula), fc.constantFrom(0.5, 2, 8), fc.constantFrom(0.25, 4), (x, l, f) => {
        // Scaling by powers of two is exact, so the figures must be equal and not merely close.
        const [expected, given] = scaledPair(formula, x, l, f)
        expect(given).toBe(expected)
      }),
    )
  })

  it.each([...OWN_UNITS])('%s is listed as holding in its own units, and does', (key) => {
    const formula = formulaNamed(key)
    for (const x of fc.sample(sensible(formula), 20)) {
      const [expected, given] = scaledPair(formula, x, 8, 4)
      expect(given).not.toBe(expected)
    }
  })
})
