/**
 * Decimal arithmetic to 40 digits, so that a figure is converted exactly and rounded to a double once.
 * The only file that knows mathjs; of that library only its units and its big numbers are taken.
 */
import { bignumberDependencies, create, unitDependencies } from 'mathjs'
import type { BigNumber } from 'mathjs'

const math = create({ ...unitDependencies, ...bignumberDependencies }, { number: 'BigNumber', precision: 40 })

/** A decimal number of up to 40 significant digits. */
export type Exact = BigNumber

/** Reads a plain decimal ("0.012", "1e-3"). Callers have checked the text: anything else throws. */
export function exact(text: string): Exact {
  return math.bignumber(text)
}

/** n ÷ d to 40 digits; d must not be zero. */
export function quotient(n: string, d: string): Exact {
  return exact(n).div(exact(d))
}

/** A finite double as the shortest decimal that reads back as the same double. */
export function exactOf(value: number): Exact {
  return exact(String(value))
}

/** The nearest double: the one rounding of a conversion. Never −0. */
export function toDouble(x: Exact): number {
  return Number(x.toString()) + 0
}

/** How many of `into` make one `unit`, both as mathjs writes them ("lbf/in" into "N/mm"). */
export function factorBetween(unit: string, into: string): Exact {
  return math.bignumber(math.unit(exact('1'), unit).toNumeric(into))
}
