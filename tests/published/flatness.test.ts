import type solver from 'javascript-lp-solver'
import { describe, expect, it } from 'vitest'
import { flatnessMinimumZone, straightnessMinimumZone } from '../../src/compute/flatness.ts'
import { applyGroup } from '../../src/compute/formula.ts'
import { minimumZone } from '../../src/compute/minimum-zone.ts'

type Point = readonly [x: number, y: number, z: number]

const columns = (points: readonly Point[]) => ({ x: points.map(([x]) => x), y: points.map(([, y]) => y), z: points.map(([, , z]) => z) })

function flatness(points: readonly Point[], u = 0): { value: number; u: number } {
  const lists = Object.fromEntries(
    Object.entries(columns(points)).map(([name, list]) => [name, list.map((value) => ({ value, u: name === 'z' ? u : 0 }))]),
  )
  const answer = applyGroup(flatnessMinimumZone, lists)
  if (!answer.ok) throw new Error(answer.why)
  return { value: answer.value, u: answer.u }
}

/** Second route: every plane through three of the points, and every plane parallel to two of their chords; the least enclosing distance square to it. */
function exhaustive(points: readonly Point[]): number {
  let best = Infinity
  const plane = (a: number, b: number): void => {
    const off = points.map(([x, y, z]) => z - a * x - b * y)
    best = Math.min(best, (Math.max(...off) - Math.min(...off)) / Math.sqrt(1 + a * a + b * b))
  }
  const chords: Point[] = []
  for (const [i, p] of points.entries()) for (const q of points.slice(i + 1)) chords.push([q[0] - p[0], q[1] - p[1], q[2] - p[2]])
  for (const [i, u] of chords.entries()) {
    for (const v of chords.slice(i + 1)) {
      const across = u[0] * v[1] - v[0] * u[1]
      if (Math.abs(across) > 1e-6) plane((u[2] * v[1] - v[2] * u[1]) / across, (u[0] * v[2] - v[0] * u[2]) / across)
    }
  }
  return best
}

/** Least-squares flatness, which the standards also allow and which is never smaller: normal equations solved by hand for a, b, c. */
function leastSquares(points: readonly Point[]): number {
  const n = points.length
  const mean = ([0, 1, 2] as const).map((k) => points.reduce((sum, p) => sum + p[k], 0) / n)
  const [mx, my, mz] = [mean[0] ?? 0, mean[1] ?? 0, mean[2] ?? 0]
  const sum = (f: (x: number, y: number, z: number) => number): number => points.reduce((s, [x, y, z]) => s + f(x - mx, y - my, z - mz), 0)
  const [xx, xy, yy, xz, yz] = [
    sum((x) => x * x),
    sum((x, y) => x * y),
    sum((_x, y) => y * y),
    sum((x, _y, z) => x * z),
    sum((_x, y, z) => y * z),
  ]
  const across = xx * yy - xy * xy
  const [a, b] = [(xz * yy - yz * xy) / across, (yz * xx - xz * xy) / across]
  const off = points.map(([x, y, z]) => z - a * x - b * y)
  return Math.max(...off) - Math.min(...off)
}

const GRID: readonly Point[] = [
  [0, 0, 0],
  [110, 0, -0.012],
  [220, 0, -0.02],
  [330, 0, -0.015],
  [440, 0, 0.003],
  [0, 90, -0.018],
  [110, 90, -0.034],
  [220, 90, -0.041],
  [330, 90, -0.03],
  [440, 90, -0.008],
  [0, 180, -0.006],
  [110, 180, -0.022],
  [220, 180, -0.028],
  [330, 180, -0.019],
  [440, 180, 0.005],
]
const SADDLE: readonly Point[] = [
  [0, 0, 0.01],
  [150, 0, 0.003],
  [300, 0, -0.004],
  [0, 100, 0.005],
  [150, 100, 0.008],
  [300, 100, 0.011],
  [0, 200, 0],
  [150, 200, 0.013],
  [300, 200, 0.026],
]
const THREE_AND_ONE: readonly Point[] = [
  [0, 0, 0],
  [300, 0, 0.009000000000000001],
  [150, 200, -0.0034999999999999996],
  [150, 80, -0.0287],
  [75, 60, -0.012150000000000001],
  [225, 60, -0.0056500000000000005],
  [150, 20, -0.0043],
  [150, 150, -0.0165],
]
// Data of a question in a public engineering forum (read); no answer was given there. The only set here with a tilt that counts.
const FORUM: readonly Point[] = [
  [11.5, 7, 1.1],
  [18.5, 6.9, 1.03],
  [4.5, 13, 1.02],
  [25.5, 30, 1.03],
  [11.5, 37.5, 1.02],
]

// No published data set with a stated minimum-zone answer was found. Each set is constructed with a proof, or worked by a linear program and by exhaustive search.
describe('flatness by minimum zone', () => {
  it.each([
    ['a saddle: opposite corners high and low, which proves 0.020', SADDLE, 0.02, 0.02, 1e-6],
    ['three highs and a low inside their triangle, which proves 0.030', THREE_AND_ONE, 0.0299999999625, 0.032629049111807154, 1e-7],
    ['a deck of 5 × 3', GRID, 0.04349999996223958, 0.045133333333333255, 1e-7],
    ['five points of a forum question', FORUM, 0.06726205752811945, 0.07209731317604229, 1e-7],
  ])('%s', (_name, points, zone, squares, within) => {
    const { value } = flatness(points)
    expect(Math.abs(value / zone - 1)).toBeLessThan(within)
    expect(Math.abs(exhaustive(points) / value - 1)).toBeLessThan(1e-7)
    expect(Math.abs(leastSquares(points) / squares - 1)).toBeLessThan(1e-6)
    expect(value).toBeLessThanOrEqual(squares * (1 + 1e-9))
  })

  it('agrees with exhaustive search on a hundred uneven faces', () => {
    for (let k = 0; k < 100; k += 1) {
      const points = Array.from({ length: 5 + (k % 8) }, (_, i): Point => {
        const turn = (i + 1) * (i + k + 3)
        return [((turn * 97) % 401) + i * 0.01, (turn * 61 + i * 17) % 181, ((turn * 37) % 53) / 1000]
      })
      expect(Math.abs(flatness(points).value - exhaustive(points))).toBeLessThan(1e-8)
    }
  })

  // Derived: the width is half of two heights less half of two others on the saddle, so u is that of one reading; on three and one it is
  // √(0.3² + 0.3² + 0.4² + 1) of it, from the low's place in the triangle.
  it('has the doubt of the readings that touch, and of no other', () => {
    expect(flatness(SADDLE, 0.005).u).toBeCloseTo(0.005, 8)
    expect(flatness(THREE_AND_ONE, 0.005).u).toBeCloseTo(0.005 * Math.sqrt(0.3 ** 2 + 0.3 ** 2 + 0.4 ** 2 + 1), 8)
    const { x, y, z } = columns(THREE_AND_ONE)
    expect(minimumZone([x, y], z)?.weights.map((w) => Number(w.toFixed(6)) + 0)).toEqual([0.3, 0.3, 0.4, -1, 0, 0, 0, 0])
  })

  it('is the same tilted, turned over and moved', () => {
    const { value } = flatness(GRID)
    const moved = GRID.map(([x, y, z]): Point => [440 - x, y + 50, 3 - z + 0.0003 * x - 0.0007 * y])
    expect(Math.abs(flatness(moved).value - value)).toBeLessThan(1e-7)
  })

  it('takes the largest grid in well under a second', () => {
    const points = Array.from({ length: 200 }, (_, i): Point => [(i % 20) * 22, Math.floor(i / 20) * 18, ((i * 7919) % 101) / 2000])
    const start = performance.now()
    flatness(points)
    expect(performance.now() - start).toBeLessThan(1000)
  })
})

describe('straightness by minimum zone', () => {
  // Constructed; by pairs of points and by linear program: 0.029 mm.
  it('five points along 400 mm', () => {
    const [x, z] = [
      [0, 100, 200, 300, 400],
      [0, 0.018, 0.031, 0.022, 0.004],
    ]
    const lists = { x: x.map((value) => ({ value, u: 0 })), z: z.map((value) => ({ value, u: 0.004 })) }
    const answer = applyGroup(straightnessMinimumZone, lists)
    if (!answer.ok) throw new Error(answer.why)
    expect(Math.abs(answer.value / 0.028999999999999998 - 1)).toBeLessThan(1e-6)
    // Both ends count half, the middle whole.
    expect(answer.u).toBeCloseTo(0.004 * Math.sqrt(0.5 ** 2 + 0.5 ** 2 + 1), 8)
  })
})

// The solver has one build for Node and one for browsers and workerd; a decision must be the same on both.
describe('the solver’s two builds', () => {
  it('give the same numbers to the last bit', async () => {
    const builds = await Promise.all(
      ['index.mjs', 'index.browser.mjs'].map(
        async (file) =>
          (await import(new URL(`../../node_modules/javascript-lp-solver/dist/${file}`, import.meta.url).href)) as {
            default: typeof solver
          },
      ),
    )
    const [node, web] = builds.map((build) => GRID.map((_, skip) => build.default.Solve(program(GRID.filter((_point, i) => i !== skip)))))
    expect(web).toEqual(node)
    expect(node?.every((found) => found.feasible)).toBe(true)
  })

  function program(points: readonly Point[]) {
    const sides = points.flatMap((point, i) =>
      ([1, -1] as const).map((sign) => [`${String(i)}${sign === 1 ? 'up' : 'down'}`, point, sign] as const),
    )
    return {
      optimize: 'height',
      opType: 'max' as const,
      constraints: { sum: { equal: 0 }, x: { equal: 0 }, y: { equal: 0 }, weight: { max: 2 } },
      variables: Object.fromEntries(
        sides.map(([name, [x, y, z], sign]) => [
          name,
          { height: sign * z * 1000, sum: sign, x: (sign * x) / 440, y: (sign * y) / 180, weight: 1 },
        ]),
      ),
    }
  }
})
