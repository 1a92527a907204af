import type { QuantityKind } from '../quantity/measure.ts'
import { groupFormula } from './formula.ts'
import type { EvaluatedGroup, FormulaInput, GroupFormula } from './formula.ts'

/** The kinds that parts of a set are compared by, how each is said, and its valid range in the kept unit. */
const KINDS = {
  length: { ending: '', values: { kind: 'length', says: 'the readings, one a part', least: -500, most: 2000 } },
  force: { ending: '-force', values: { kind: 'force', says: 'the loads, one a part', least: 0, most: 200000 } },
  volume: { ending: '-volume', values: { kind: 'volume', says: 'the volumes, one a chamber', least: -10, most: 500 } },
  pressure: { ending: '-pressure', values: { kind: 'pressure', says: 'the pressures or vacuums, one a valve', least: -200, most: 5000 } },
} as const satisfies Partial<Record<QuantityKind, { ending: string; values: FormulaInput }>>

type Kind = keyof typeof KINDS
type OnValues = EvaluatedGroup<'values'>

/** What the median of a normal set must be multiplied by to stand for its standard deviation; the factor of the modified z-score. */
const NORMAL = 0.6745

const zeros = (values: readonly number[]): number[] => values.map(() => 0)
/** Places of the entries from least to greatest; equal ones by place, so that the same list gives the same answer. */
const ranked = (values: readonly number[]): readonly number[] =>
  values.map((_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0) || a - b)

function spread(values: readonly number[]): OnValues {
  const order = ranked(values)
  const [least, most] = [order[0] ?? 0, order[order.length - 1] ?? 0]
  const partials = zeros(values)
  partials[least] = -1
  partials[most] = 1
  return { value: (values[most] ?? Number.NaN) - (values[least] ?? Number.NaN), partials: { values: partials } }
}

function median(values: readonly number[]): OnValues {
  const order = ranked(values)
  const [lower, upper] = [order[Math.floor((order.length - 1) / 2)] ?? 0, order[Math.floor(order.length / 2)] ?? 0]
  const partials = zeros(values)
  for (const at of [lower, upper]) partials[at] = (partials[at] ?? 0) + 0.5
  return { value: ((values[lower] ?? Number.NaN) + (values[upper] ?? Number.NaN)) / 2, partials: { values: partials } }
}

/** Distance of each entry from the median, with the sign that it was turned by. */
function apart(values: readonly number[]) {
  const middle = median(values)
  const signs = values.map((v) => (v >= middle.value ? 1 : -1))
  return { middle, signs, distances: values.map((v, i) => (signs[i] ?? 1) * (v - middle.value)) }
}

function farthest(values: readonly number[]): OnValues {
  const { middle, signs, distances } = apart(values)
  const order = ranked(distances)
  const far = order[order.length - 1] ?? 0
  const typical = median(distances)
  const distance = distances[far] ?? Number.NaN
  const value = (NORMAL * distance) / typical.value
  // Each distance changes with its own entry, and with the median by the entries that make the median.
  const change = (at: number, by: number): number => (signs[at] ?? 1) * ((at === by ? 1 : 0) - (middle.partials.values[by] ?? 0))
  const partials = values.map((_, by) => {
    const ofTypical = typical.partials.values.reduce((sum, p, at) => sum + p * change(at, by), 0)
    return (NORMAL * change(far, by)) / typical.value - (value * ofTypical) / typical.value
  })
  return { value, partials: { values: partials } }
}

function spreadOf(kind: Kind): GroupFormula {
  const { ending, values } = KINDS[kind]
  return groupFormula({
    id: `set-spread${ending}`,
    version: 1,
    says: 'Spread of the set = greatest reading − least reading.',
    source: 'Definition (a difference).',
    inputs: { values },
    fewest: 2,
    most: 200,
    output: { kind, says: 'spread of the set' },
    evaluate: (x) => spread(x.values),
  })
}

function medianOf(kind: Kind): GroupFormula {
  const { ending, values } = KINDS[kind]
  return groupFormula({
    id: `set-median${ending}`,
    version: 1,
    says: 'Median of the set = the middle reading in order of size; of an even number, the mean of the two in the middle.',
    source: 'Definition; NIST/SEMATECH e-Handbook of Statistical Methods, measures of location (recalled).',
    inputs: { values },
    fewest: 1,
    most: 200,
    output: { kind, says: 'median of the set' },
    evaluate: (x) => median(x.values),
  })
}

function farthestOf(kind: Kind): GroupFormula {
  const { ending, values } = KINDS[kind]
  return groupFormula({
    id: `set-farthest${ending}`,
    version: 1,
    says: 'Modified z-score of the farthest part = 0.6745 × its distance from the median ÷ the median of all such distances; a screen, above 3.5 the part stands out.',
    source: 'Iglewicz and Hoaglin’s modified z-score, as in the NIST/SEMATECH e-Handbook of Statistical Methods (from memory).',
    inputs: { values },
    fewest: 4,
    most: 200,
    output: { kind: 'ratio', says: 'modified z-score of the part farthest from the median' },
    weighs: 'explains',
    evaluate: (x) => farthest(x.values),
    refuses: (x) =>
      median(apart(x.values).distances).value === 0
        ? 'at least half of “values” are equal, so there is no spread to measure by.'
        : undefined,
  })
}

/**
 * Greatest less least of a set: of lengths in mm, forces in N, volumes in cm³, pressures in kPa. Two readings or more. First order: the
 * doubt is that of the two end readings; a set of doubtful readings spreads more than its parts do, which errs to the safe side.
 */
export const setSpread = spreadOf('length')
export const setSpreadForce = spreadOf('force')
export const setSpreadVolume = spreadOf('volume')
export const setSpreadPressure = spreadOf('pressure')

/** Middle reading of a set, in the unit of its kind. One reading or more. The doubt is that of the one or two in the middle. */
export const setMedian = medianOf('length')
export const setMedianForce = medianOf('force')
export const setMedianVolume = medianOf('volume')
export const setMedianPressure = medianOf('pressure')

/**
 * How far the oddest part stands from its set, in robust standard deviations, no unit. Four readings or more. Unlike Grubbs' test it
 * isn't masked by two bad parts. It points at a part to look at again, and decides nothing.
 */
export const setFarthest = farthestOf('length')
export const setFarthestForce = farthestOf('force')
export const setFarthestVolume = farthestOf('volume')
export const setFarthestPressure = farthestOf('pressure')
