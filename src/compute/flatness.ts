import { groupFormula } from './formula.ts'
import type { EvaluatedGroup, FormulaInput } from './formula.ts'
import { minimumZone } from './minimum-zone.ts'

const place = (says: string): FormulaInput => ({ kind: 'length', says, least: -2000, most: 2000 })
const HEIGHT: FormulaInput = {
  kind: 'length',
  says: 'height of the surface at that point, over one and the same datum',
  least: -50,
  most: 50,
}
/** Beyond this slope heights taken upright are no longer distances from the plane: level the part first. */
const LEVEL = 0.02
const SOURCE = 'ISO 1101 and ISO 12781-1, minimum zone (recalled); least squares, which these also allow, is never smaller.'

function zoneOf<Name extends string>(
  names: readonly Name[],
  columns: readonly (readonly number[])[],
  z: readonly number[],
): EvaluatedGroup<Name | 'z'> {
  const zone = minimumZone(columns, z)
  const nothing = z.map(() => Number.NaN)
  const partials = { z: zone?.weights ?? nothing } as Record<Name | 'z', readonly number[]>
  for (const [k, name] of names.entries()) partials[name] = zone?.weights.map((w) => -w * (zone.slopes[k] ?? Number.NaN)) ?? nothing
  return { value: zone?.width ?? Number.NaN, partials }
}

function tilted(columns: readonly (readonly number[])[], z: readonly number[]): string | undefined {
  const zone = minimumZone(columns, z)
  const steepest = Math.max(0, ...(zone?.slopes ?? []).map((s) => Math.abs(s)))
  return steepest > LEVEL
    ? `the readings “z” climb ${String(steepest)} for each unit of length; level the part, and take them again.`
    : undefined
}

/** Several readings at one place say nothing of shape: so many different places there must be. */
function tooFewPlaces(columns: readonly (readonly number[])[], fewest: number): string | undefined {
  const places = new Set((columns[0] ?? []).map((_, i) => columns.map((column) => String(column[i])).join(' ')))
  return places.size < fewest ? `readings at ${String(places.size)} different places are too few; it takes ${String(fewest)}.` : undefined
}

/** Points that all lie on one line, near enough, carry no plane: their spread across that line is as nothing beside that along it. */
function onOneLine(x: readonly number[], y: readonly number[]): boolean {
  const mean = (list: readonly number[]): number => list.reduce((sum, v) => sum + v, 0) / list.length
  const [mx, my] = [mean(x), mean(y)]
  let [xx, xy, yy] = [0, 0, 0]
  for (const [i, v] of x.entries()) {
    const [dx, dy] = [v - mx, (y[i] ?? Number.NaN) - my]
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
  }
  return xx * yy - xy * xy <= 1e-9 * xx * yy
}

/**
 * Flatness over a grid of readings: distance of the two closest parallel planes that hold all of them, mm. `z` over one datum (a
 * surface plate, a levelled part); gaps under a straightedge are not that, each line having its own. Few points understate it. The
 * doubt is that of the touching readings, three or four of them; a random error in every reading makes the figure a little too large.
 */
export const flatnessMinimumZone = groupFormula({
  id: 'flatness-minimum-zone',
  version: 1,
  says: 'Flatness = distance of the two closest parallel planes that hold every reading.',
  source: SOURCE,
  inputs: { x: place('place of the point along the face'), y: place('place of the point across the face'), z: HEIGHT },
  fewest: 4,
  most: 200,
  output: { kind: 'length', says: 'flatness, minimum zone' },
  evaluate: ({ x, y, z }) => zoneOf(['x', 'y'], [x, y], z),
  refuses: ({ x, y, z }) => {
    if (onOneLine(x, y)) return 'the points of “x” and “y” lie on one line, and that shows straightness, not flatness.'
    return tooFewPlaces([x, y], 4) ?? tilted([x, y], z)
  },
})

/** Straightness along one line of readings: distance of the two closest parallel lines that hold all of them, mm. At least three. Doubt as above. */
export const straightnessMinimumZone = groupFormula({
  id: 'straightness-minimum-zone',
  version: 1,
  says: 'Straightness = distance of the two closest parallel lines that hold every reading.',
  source: SOURCE,
  inputs: { x: place('place of the point along the line'), z: HEIGHT },
  fewest: 3,
  most: 200,
  output: { kind: 'length', says: 'straightness, minimum zone' },
  evaluate: ({ x, z }) => zoneOf(['x'], [x], z),
  refuses: ({ x, z }) => tooFewPlaces([x], 3) ?? tilted([x], z),
})
