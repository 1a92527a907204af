import { apply } from '../../src/compute/formula.ts'
import type { Formula } from '../../src/compute/formula.ts'

/** Exact by definition (NIST SP 811, recalled): the kept units of an inch, a pound-force, a pound-force per inch and a psi. */
export const INCH = 25.4
export const POUND = 4.4482216152605
export const POUND_PER_INCH = POUND / INCH
export const PSI = POUND / (INCH * INCH)

/** The value of a formula at exact inputs; throws where it is refused. */
export function valueOf(formula: Formula, inputs: Readonly<Record<string, number>>): number {
  const answer = apply(formula, Object.fromEntries(Object.entries(inputs).map(([name, value]) => [name, { value, u: 0 }])))
  if (!answer.ok) throw new Error(answer.why)
  return answer.value
}

/** Value and standard uncertainty of a formula at inputs given as [value, u]; throws where it is refused. */
export function measured(formula: Formula, inputs: Readonly<Record<string, readonly [number, number]>>): { value: number; u: number } {
  const answer = apply(formula, Object.fromEntries(Object.entries(inputs).map(([name, [value, u]]) => [name, { value, u }])))
  if (!answer.ok) throw new Error(answer.why)
  return { value: answer.value, u: answer.u }
}

/** Half a step of the last digit that a printed figure shows, with a hair for binary fractions: 0.4675 gives 0.00005. */
export function halfStep(printed: string): number {
  const digits = printed.split('.')[1]?.length ?? 0
  return Number(`0.5e-${String(digits)}`) * 1.0001
}
