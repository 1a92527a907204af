import solver from 'javascript-lp-solver'

/** The closest pair of parallel planes (or lines) round a set of heights. */
export interface Zone {
  /** Distance between the two, square to them. */
  readonly width: number
  /** Change of the width with each height: only the readings that touch have any. */
  readonly weights: readonly number[]
  /** Slope of the planes along each column of positions. */
  readonly slopes: readonly number[]
}

/** The solver rounds what it hands back to eight places; heights are stretched to this, so that the places fall far below a reading. */
const STRETCH = 1000
/** How nearly the two programs must meet, as a share of the spread of the heights. */
const MEET = 1e-6
/** Weights are of readings above and below, one unit each way; under this the solver found nothing that touches. */
const TOUCH = 0.5

interface Scaled {
  readonly values: readonly number[]
  readonly half: number
}

/** A column brought to −1 … 1. A column without spread stays at 0. */
function scaled(column: readonly number[]): Scaled {
  const [least, most] = [Math.min(...column), Math.max(...column)]
  const half = (most - least) / 2
  return { values: column.map((v) => (half === 0 ? 0 : (v - least - half) / half)), half }
}

/**
 * The plane whose greatest distance from any height, up or down, is least: minimise t with −t ≤ height − plane ≤ t. Every free
 * number is written as the difference of two that are at least 0; the solver's own free variables give wrong answers.
 */
function closestPlane(columns: readonly Scaled[], heights: readonly number[]): readonly number[] | undefined {
  const names = ['level', ...columns.map((_, k) => `slope${String(k)}`)]
  const constraints: Record<string, { min: number } | { max: number }> = {}
  const variables: Record<string, Record<string, number>> = { t: { cost: 1 } }
  const add = (variable: string, row: string, coefficient: number): void => {
    const named = (variables[variable] ??= {})
    named[row] = coefficient
  }
  for (const [i, height] of heights.entries()) {
    const [above, below] = [`above${String(i)}`, `below${String(i)}`]
    constraints[above] = { min: height * STRETCH }
    constraints[below] = { max: height * STRETCH }
    add('t', above, 1)
    add('t', below, -1)
    for (const [k, name] of names.entries()) {
      const coefficient = k === 0 ? 1 : (columns[k - 1]?.values[i] ?? Number.NaN)
      for (const row of [above, below]) {
        add(`${name}+`, row, coefficient)
        add(`${name}-`, row, -coefficient)
      }
    }
  }
  const found = solver.Solve({ optimize: 'cost', opType: 'min', constraints, variables })
  if (!found.feasible) return undefined
  return names.slice(1).map((name) => (numberAt(found, `${name}+`) - numberAt(found, `${name}-`)) / STRETCH)
}

/**
 * The same question from the other side: weights on the heights that no plane can answer (they balance in sum and along every
 * column), one unit up and one down, chosen to make the most of the heights. What they make is the width; they are its sensitivities.
 */
function touching(columns: readonly Scaled[], heights: readonly number[]): readonly number[] | undefined {
  const constraints: Record<string, { equal: number } | { max: number }> = { sum: { equal: 0 }, weight: { max: 2 } }
  for (const k of columns.keys()) constraints[`column${String(k)}`] = { equal: 0 }
  const variables: Record<string, Record<string, number>> = {}
  for (const [i, height] of heights.entries()) {
    for (const [name, sign] of [
      ['up', 1],
      ['down', -1],
    ] as const) {
      const balance = columns.map((column, k) => [`column${String(k)}`, sign * (column.values[i] ?? Number.NaN)])
      variables[`${name}${String(i)}`] = {
        height: sign * height * STRETCH,
        sum: sign,
        weight: 1,
        ...(Object.fromEntries(balance) as Record<string, number>),
      }
    }
  }
  const found = solver.Solve({ optimize: 'height', opType: 'max', constraints, variables })
  if (!found.feasible) return undefined
  return heights.map((_, i) => numberAt(found, `up${String(i)}`) - numberAt(found, `down${String(i)}`))
}

function numberAt(found: Readonly<Record<string, unknown>>, name: string): number {
  const value = found[name]
  return typeof value === 'number' ? value : 0
}

const across = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)

/** A bulge off the middle: heights that no plane fits. It says what touches where the readings themselves show no unevenness. */
const bulge = (columns: readonly Scaled[], heights: readonly number[]): readonly number[] =>
  heights.map((_, i) => 1 / (1 + columns.reduce((sum, c) => sum + ((c.values[i] ?? 0) - 0.3) * ((c.values[i] ?? 0) - 0.3), 0)))

/**
 * Minimum zone of heights over positions (one column for a line, two for a face), by two linear programs that must meet: a pair of
 * planes that encloses every reading, and weights that prove no closer pair does. Undefined where they don't. Deviations are taken
 * along the height and turned square to the plane at the end: exact for small tilt, and callers refuse large. The order of readings doesn't
 * matter. Source: ISO 1101 and ISO 12781-1, minimum zone (recalled); the programs are the textbook Chebyshev fit and its dual.
 */
export function minimumZone(columns: readonly (readonly number[])[], heights: readonly number[]): Zone | undefined {
  const order = heights.map((_, i) => i).sort((a, b) => firstDifference([...columns, heights], a, b) || a - b)
  const sorted = (list: readonly number[]): readonly number[] => order.map((i) => list[i] ?? Number.NaN)
  const positions = columns.map((column) => scaled(sorted(column)))
  const tall = scaled(sorted(heights))
  const tilt = closestPlane(positions, tall.values)
  let weights = touching(positions, tall.values)
  if (tilt === undefined || weights === undefined) return undefined
  const enclosed = across(tall.values.map((h, i) => h - tilt.reduce((sum, s, k) => sum + s * (positions[k]?.values[i] ?? Number.NaN), 0)))
  const proven = weights.reduce((sum, w, i) => sum + w * (tall.values[i] ?? Number.NaN), 0)
  if (!(Math.abs(enclosed - proven) <= MEET)) return undefined
  const held = (list: readonly number[]): number => list.reduce((sum, w) => sum + Math.abs(w), 0)
  if (held(weights) < TOUCH) weights = touching(positions, bulge(positions, tall.values))
  if (weights === undefined || held(weights) < TOUCH) return undefined
  const slopes = tilt.map((s, k) => (s * tall.half) / (positions[k]?.half ?? Number.NaN))
  const square = Math.sqrt(1 + slopes.reduce((sum, s) => sum + s * s, 0))
  const back: number[] = []
  for (const [at, i] of order.entries()) back[i] = (weights[at] ?? Number.NaN) / square
  return { width: (enclosed * tall.half) / square, weights: back, slopes }
}

function firstDifference(lists: readonly (readonly number[])[], a: number, b: number): number {
  for (const list of lists) {
    const difference = (list[a] ?? 0) - (list[b] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}
