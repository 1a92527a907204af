import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { apply } from '../../src/compute/formula.ts'
import { FORMULAS } from '../../src/compute/registry.ts'
import type { QuantityKind } from '../../src/quantity/measure.ts'
import { inRange, rangeOf, sensible } from './lattice.ts'

const measures = (x: Record<string, number>, u: (name: string) => number) =>
  Object.fromEntries(Object.entries(x).map(([name, value]) => [name, { value, u: u(name) }]))

/** How a kept unit grows when the unit of length is divided by `l` and the unit of force by `f`. */
const SCALE: Partial<Record<QuantityKind, (l: number, f: number) => number>> = {
  length: (l) => l,
  force: (_l, f) => f,
  stiffness: (l, f) => f / l,
  torque: (l, f) => l * f,
  area: (l) => l * l,
  stress: (l, f) => f / (l * l),
  ratio: () => 1,
  count: () => 1,
}
const scaleOf = (kind: QuantityKind) => {
  const scale = SCALE[kind]
  if (scale === undefined) throw new Error(`say how ${kind} scales`)
  return scale
}

describe.each([...FORMULAS])('%s', (_key, formula) => {
  it('has a valid range for every input', () => {
    for (const input of Object.values(formula.inputs)) expect(rangeOf(input).span).toBeGreaterThan(0)
  })

  it('gives the sensitivities that a central difference finds', () => {
    fc.assert(
      fc.property(sensible(formula), (x) => {
        const { value, partials } = formula.evaluate(x)
        expect(Object.keys(partials).sort()).toEqual(Object.keys(formula.inputs).sort())
        for (const [name, input] of Object.entries(formula.inputs)) {
          const { span } = rangeOf(input)
          const at = x[name] ?? Number.NaN
          const up = at + span * 1e-7
          const down = at - span * 1e-7
          const slope = (formula.evaluate({ ...x, [name]: up }).value - formula.evaluate({ ...x, [name]: down }).value) / (up - down)
          const partial = partials[name] ?? Number.NaN
          const scale = Math.max(Math.abs(slope), Math.abs(value) / span)
          expect(Math.abs(partial - slope), `∂/∂${name}: ${String(partial)} against ${String(slope)}`).toBeLessThanOrEqual(1e-6 * scale)
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
        const moved = formula.evaluate({ ...x, [name]: (x[name] ?? 0) + rangeOf(input).span / 7 })
        if (moved.value !== formula.evaluate(x).value) idle.delete(name)
      }
    }
    expect([...idle]).toEqual([])
  })

  it('says so when it is evaluated without one of its inputs', () => {
    expect(() => formula.evaluate({})).toThrow(Object.keys(formula.inputs)[0])
  })

  it('keeps its dimensions: other units of length and force give the same quantity', () => {
    fc.assert(
      fc.property(sensible(formula), fc.constantFrom(0.5, 2, 8), fc.constantFrom(0.25, 4), (x, l, f) => {
        const scaled = Object.fromEntries(
          Object.entries(formula.inputs).map(([name, input]) => [name, (x[name] ?? Number.NaN) * scaleOf(input.kind)(l, f)]),
        )
        const expected = formula.evaluate(x).value * scaleOf(formula.output.kind)(l, f)
        // Powers of two only: scaling by them is exact in binary, so the figures must be equal and not merely close.
        expect(formula.evaluate(scaled).value).toBe(expected)
      }),
    )
  })

  it('is exact when its inputs are, and scales its doubt with theirs', () => {
    fc.assert(
      fc.property(sensible(formula), fc.constantFrom(2, 0.5, 16), (x, times) => {
        const exact = apply(
          formula,
          measures(x, () => 0),
        )
        expect(exact).toEqual({ ok: true, value: formula.evaluate(x).value + 0, u: 0 })
        const doubt = (name: string) => (Math.abs(x[name] ?? 0) + 1) / 1024
        const once = apply(formula, measures(x, doubt))
        const more = apply(
          formula,
          measures(x, (name) => times * doubt(name)),
        )
        if (!once.ok || !more.ok) throw new Error('refused')
        expect(once.u).toBeGreaterThan(0)
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
          measures(x, () => 0.01),
        )
        const alone = Object.keys(formula.inputs).map((only) =>
          apply(
            formula,
            measures(x, (name) => (name === only ? 0.01 : 0)),
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
          const beyond = low ? least - (span * k) / 1000 : least + span + (span * k) / 1000
          const answer = apply(
            formula,
            measures({ ...x, [name]: beyond }, () => 0),
          )
          if (answer.ok) throw new Error(`${name} = ${String(beyond)} was taken`)
          expect(answer.why).toContain(`“${name}”`)
          expect(answer.why).toContain(`${formula.id}@${String(formula.version)}`)
        },
      ),
    )
  })
})
