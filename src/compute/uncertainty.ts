import type { Measure } from '../quantity/measure.ts'

/**
 * Combined standard uncertainty of a result, from the sensitivities ∂f/∂x and the inputs' standard uncertainties (k = 1):
 * u² = Σ (∂f/∂x · u(x))². First order, inputs uncorrelated. Unit: that of the result. Terms are added in the order of
 * `partials`, so that the same inputs give the same bits. A sensitivity without a measure of that name gives NaN.
 * Source: JCGM 100:2008 (GUM), 5.1.2, equation 10, recalled; checked on its example H.1.
 */
export function combinedUncertainty(partials: Readonly<Record<string, number>>, inputs: Readonly<Record<string, Measure>>): number {
  let variance = 0
  for (const [name, partial] of Object.entries(partials)) {
    const measured = Object.hasOwn(inputs, name) ? inputs[name] : undefined
    if (measured === undefined) return Number.NaN
    const term = partial * measured.u
    variance += term * term
  }
  return Math.sqrt(variance)
}
