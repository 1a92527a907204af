/** Is the figure plausible at all, and if not, which slip would explain it? */
import type { ReadContext } from './context.ts'
import { exact, toDouble } from './exact.ts'
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import type { Figure } from './figure.ts'
import { both, isPlausible, orList, rangeIn, typable, valueIn } from './spoken.ts'
import { keptOf, UNITS } from './units.ts'
import type { Unit } from './units.ts'

const MOST_OFFERED = 3

/** The figure with its decimal point moved. */
function shifted(figure: Figure, power: number): Figure {
  const by = exact(`1e${power}`)
  const value = figure.value.times(by)
  const decimals = Math.max(0, figure.decimals - power)
  return { ...figure, value, step: figure.step.times(by), decimals, text: value.toFixed(decimals) }
}

/** Slips of the pen that would have made a plausible figure into this one: another unit, a moved point, a lost sign, a full angle. */
function slips(figure: Figure, unit: Unit, context: ReadContext): readonly string[] {
  const found: string[] = []
  const offer = (f: Figure, u: Unit): void => {
    if (isPlausible(toDouble(keptOf(f.value, u)), context)) found.push(typable(f, u))
  }
  if (figure.form !== 'fraction') for (const power of [-1, 1, -2, 2, -3, 3]) offer(shifted(figure, power), unit)
  for (const other of UNITS) if (other.kind === unit.kind && other.id !== unit.id && other.rare !== true) offer(figure, other)
  if (figure.value.isNegative()) offer({ ...figure, value: figure.value.neg(), text: figure.text.slice(1) }, unit)
  if (unit.kind === 'angle') offer({ ...figure, value: figure.value.div(2), text: figure.value.div(2).toString() }, unit)
  return found.slice(0, MOST_OFFERED)
}

/** Undefined when the figure lies in the plausible range or none is known; else what is wrong, with the slips that would explain it. */
export function implausible(figure: Figure, unit: Unit, context: ReadContext): Fault | undefined {
  const value = valueIn(figure, unit)
  if (isPlausible(value, context)) return undefined
  const choices = slips(figure, unit, context)
  const meant = choices.length === 0 ? '' : `Did you mean ${orList(choices)}? `
  const mend = `${meant}Check the figure and its unit against the part.`
  const negative = value < 0 && (context.plausible?.lo ?? 0) >= 0
  const says = negative
    ? `${both(value, figure, unit)} is less than nothing, and ${context.label} can't be.`
    : `${both(value, figure, unit)} is outside what is plausible for ${context.label}: ${rangeIn(context, unit)}.`
  return { ...fault(negative ? 'sign-not-allowed' : 'out-of-range', '', says, mend), choices }
}
