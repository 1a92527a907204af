import * as fc from 'fast-check'
import type { Formula, FormulaInput } from '../../src/compute/formula.ts'

const STEPS = 1000

/** The valid range of an input; a formula without both ends is a fault that the registry test names. */
export function rangeOf(input: FormulaInput): { least: number; span: number } {
  const least = input.least ?? Number.NaN
  return { least, span: (input.most ?? Number.NaN) - least }
}

/**
 * Random values inside every input's valid range, on a lattice of a thousand steps, so that two values either are equal or
 * differ by enough for a finite difference to mean something. Counts are whole.
 */
export function inRange(formula: Formula): fc.Arbitrary<Record<string, number>> {
  return fc.record(
    Object.fromEntries(
      Object.entries(formula.inputs).map(([name, input]) => {
        const { least, span } = rangeOf(input)
        if (input.whole === true) return [name, fc.integer({ min: least, max: least + span })]
        return [name, fc.integer({ min: 1, max: STEPS - 1 }).map((k) => least + (span * k) / STEPS)]
      }),
    ),
    { noNullPrototype: true },
  )
}

/** The same, less what the formula refuses because the values make no sense together. */
export function sensible(formula: Formula): fc.Arbitrary<Record<string, number>> {
  return inRange(formula).filter((x) => formula.refuses?.(x) === undefined)
}
