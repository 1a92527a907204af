import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyGroup } from '../../src/compute/formula.ts'
import type { GroupFormula } from '../../src/compute/formula.ts'
import { GROUP_FORMULAS, groupFormulaNamed } from '../../src/compute/registry.ts'
import { rangeOf } from './lattice.ts'

type Columns = Record<string, readonly number[]>

const whyNot = (answer: ReturnType<typeof applyGroup>): string => (answer.ok ? `taken: ${String(answer.value)}` : answer.why)

/** Readings as a bench gives them: places on a head of 400 mm, heights of a few tenths, and for sets anything in the valid range. */
function readings(formula: GroupFormula, ties: boolean): fc.Arbitrary<Columns> {
  const one = (name: string): fc.Arbitrary<number> => {
    const range = formula.inputs[name]
    if (range === undefined) throw new Error(name)
    const [least, span] = name === 'z' ? [-0.1, 0.3] : name === 'values' ? [rangeOf(range).least + 1, rangeOf(range).span / 2] : [0, 400]
    const steps = name === 'x' || name === 'y' ? 40 : ties ? 12 : 1_000_003
    return fc.integer({ min: 0, max: steps }).map((k) => least + (span * k) / steps)
  }
  const names = Object.keys(formula.inputs)
  const rows = fc.array(fc.tuple(...names.map(one)), { minLength: formula.fewest, maxLength: 12 })
  return rows
    .map((list) => Object.fromEntries(names.map((name, at) => [name, list.map((row) => row[at] ?? Number.NaN)])))
    .filter((x) => formula.refuses?.(x) === undefined)
}

const measures = (x: Columns, u: number) =>
  Object.fromEntries(Object.entries(x).map(([name, list]) => [name, list.map((value) => ({ value, u }))]))

/** All lists turned over in step: the same readings, taken in the other order. */
const turned = (x: Columns): Columns => Object.fromEntries(Object.entries(x).map(([name, list]) => [name, list.toReversed()]))

const middle = (list: readonly number[]): number => {
  const sorted = list.toSorted((a, b) => a - b)
  return ((sorted[Math.floor((sorted.length - 1) / 2)] ?? 0) + (sorted[Math.floor(sorted.length / 2)] ?? 0)) / 2
}

describe.each([...GROUP_FORMULAS])('%s', (key, formula) => {
  it('gives sensitivities that lie between the slopes to either side', () => {
    // At ties a median, and a score by a median, have no slope to one side that stands for both; spread and zone have.
    const bends = /^set-(median|farthest)/.test(formula.id)
    const apart = (list: readonly number[]): boolean => {
      const distances = list.map((v) => Math.abs(v - middle(list))).sort((a, b) => a - b)
      const gap = 1e-5 * Math.max(1, ...distances)
      // An even set's two middle readings are equally far from the median by its definition, and move together: no tie of distances.
      const rest = list.length % 2 === 0 ? distances.slice(1) : distances
      return rest.every((d, i) => i === 0 || d - (rest[i - 1] ?? d) > gap)
    }
    fc.assert(
      fc.property(
        fc.boolean().chain((ties) => readings(formula, ties && !bends)),
        (x) => {
          const { value, partials } = formula.evaluate(x)
          const name = x['z'] === undefined ? 'values' : 'z'
          const list = x[name] ?? []
          fc.pre(!bends || apart(list))
          expect(partials[name]).toHaveLength(list.length)
          const step = Math.max(Math.max(...list) - Math.min(...list), ...list.map((v) => Math.abs(v) / 100), 0.01) * 1e-8
          for (const [i, at] of list.entries()) {
            const of = (moved: number): number => formula.evaluate({ ...x, [name]: list.with(i, moved) }).value
            const slopes = [(of(at + step) - value) / step, (value - of(at - step)) / step]
            const scale = Math.max(1, ...slopes.map(Math.abs))
            const partial = partials[name]?.[i] ?? Number.NaN
            expect(partial).toBeGreaterThanOrEqual(Math.min(...slopes) - 1e-3 * scale)
            expect(partial).toBeLessThanOrEqual(Math.max(...slopes) + 1e-3 * scale)
          }
        },
      ),
    )
  })

  it('does not hang on the order of the readings', () => {
    fc.assert(
      fc.property(readings(formula, true), fc.double({ min: 0, max: 0.01, noNaN: true }), (x, u) => {
        const [one, other] = [applyGroup(formula, measures(x, u)), applyGroup(formula, measures(turned(x), u))]
        if (!one.ok || !other.ok) throw new Error('refused')
        expect(other.value).toBe(one.value)
        if (formula.weighs === undefined) expect(Math.abs(other.u - one.u)).toBeLessThanOrEqual(1e-12)
      }),
    )
  })

  it('is exact when its readings are, doubts when they do, and twice as much when they doubt twice', () => {
    fc.assert(
      fc.property(readings(formula, true), (x) => {
        const [exact, once, twice] = [0, 0.001, 0.002].map((u) => applyGroup(formula, measures(x, u)))
        if (exact?.ok !== true || once?.ok !== true || twice?.ok !== true) throw new Error('refused')
        expect(exact.u).toBe(0)
        expect(once.u).toBeGreaterThan(0)
        expect(twice.u).toBe(2 * once.u)
        expect(Object.is(exact.value, -0)).toBe(false)
        expect(exact.value).toBeGreaterThanOrEqual(formula.id.startsWith('set-median') ? -Infinity : 0)
      }),
    )
  })

  it('refuses too few and too many readings, and says how many it takes', () => {
    const [x] = fc.sample(readings(formula, false), 1)
    if (x === undefined) throw new Error('no readings')
    const few = Object.fromEntries(Object.entries(x).map(([name, list]) => [name, list.slice(0, formula.fewest - 1)]))
    const many = Object.fromEntries(
      Object.entries(x).map(([name, list]) => [name, Array.from({ length: formula.most + 1 }, () => list[0] ?? 0)]),
    )
    expect(whyNot(applyGroup(formula, measures(few, 0)))).toContain(`at least ${String(formula.fewest)}`)
    expect(whyNot(applyGroup(formula, measures(many, 0)))).toContain(`at most ${String(formula.most)}`)
    expect(whyNot(applyGroup(formula, {}))).toContain('needs')
  })

  it('names the reading that is out of range or no number', () => {
    for (const name of Object.keys(formula.inputs)) {
      const [x] = fc.sample(readings(formula, false), 1)
      for (const bad of [Number.NaN, 1e9, -1e9]) {
        const sound = measures(x ?? {}, 0)
        const list = sound[name] ?? []
        expect(whyNot(applyGroup(formula, { ...sound, [name]: list.with(0, { value: bad, u: 0 }) }))).toContain(`${key}: “${name} 1”`)
        expect(whyNot(applyGroup(formula, { ...sound, [name]: list.with(0, { value: list[0]?.value ?? 0, u: -1 }) }))).toContain(
          `“${name} 1”`,
        )
      }
    }
  })
})

describe('applyGroup', () => {
  const spread = groupFormulaNamed('set-spread@1')
  const flatness = groupFormulaNamed('flatness-minimum-zone@1')
  const exactly = (list: readonly number[]) => list.map((value) => ({ value, u: 0 }))

  it('refuses lists of unequal length and names that it does not know', () => {
    const lists = { x: exactly([0, 100, 0, 100]), y: exactly([0, 0, 100, 100]), z: exactly([0, 0, 0]) }
    expect(whyNot(applyGroup(flatness, lists))).toContain('“z” has 3 entries')
    expect(whyNot(applyGroup(spread, { values: exactly([1, 2]), value: exactly([1]) }))).toContain('no input “value”')
    expect(whyNot(applyGroup(spread, Object.assign({ values: exactly([1, 2]) }, { constructor: exactly([1]) })))).toContain('“constructor”')
  })

  it('says so when a formula over lists is evaluated without one of them', () => {
    expect(() => flatness.evaluate({ x: [0], y: [0] })).toThrow('x, y, z')
  })

  it('refuses points on one line, and a part that is not level', () => {
    const diagonal = { x: exactly([0, 100, 200, 300]), y: exactly([0, 50, 100, 150]), z: exactly([0, 0.01, 0, 0]) }
    expect(whyNot(applyGroup(flatness, diagonal))).toContain('one line')
    const leaning = { x: exactly([0, 300, 0, 300]), y: exactly([0, 0, 100, 100]), z: exactly([0, 9, 0, 9.01]) }
    expect(whyNot(applyGroup(flatness, leaning))).toContain('level the part')
    const place = { x: exactly([5, 5, 5]), z: exactly([0, 1, 0]) }
    expect(whyNot(applyGroup(groupFormulaNamed('straightness-minimum-zone@1'), place))).toContain('1 different places')
  })

  it('a face without any unevenness still has the doubt of its readings', () => {
    const level = { x: [0, 150, 300, 0, 150, 300], y: [0, 0, 0, 100, 100, 100] }
    for (const z of [level.x.map(() => 0), level.x.map((x, i) => 0.0001 * x - 0.0002 * (level.y[i] ?? 0))]) {
      const answer = applyGroup(flatness, measures({ ...level, z }, 0.005))
      if (!answer.ok) throw new Error(answer.why)
      expect(answer.value).toBeLessThan(1e-10)
      // Of four touching readings each counts half: 0.005 mm. Three on one line: 0.005 × √1.5.
      expect(answer.u).toBeGreaterThanOrEqual(0.00499)
      expect(answer.u).toBeLessThanOrEqual(0.00707)
    }
  })

  it('a set with more than half its readings equal has no typical distance', () => {
    expect(whyNot(applyGroup(groupFormulaNamed('set-farthest@1'), { values: exactly([1, 1, 1, 5]) }))).toContain('equal')
  })
})
