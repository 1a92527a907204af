/**
 * A number without a unit. The rules, and why:
 * - Counts and ratios have no unit. An angle is in degrees: nobody in the trade writes another.
 * - A length as a fraction ("5/64") or with a leading point (".012") is in inches: metric shops write neither. Said back as a note.
 *   Halves and quarters in words ("two and a half") are asked back: they are said of thou as well.
 * - A whole number ("12") is always asked back: it could be thou, and nothing in it tells.
 * - A decimal ("0.012", "8.68") is read only where one of inch and mm fits the plausible range and the other lies outside it,
 *   and that by more than a factor of four; for inches three decimals after a point do instead of the factor, since that is
 *   how inch readings are written and mm hardly ever. Otherwise it is asked back, and so it is where no plausible range is known.
 * - Every other kind is asked back.
 */
import type { ReadContext } from './context.ts'
import type { Fault } from './fault.ts'
import type { Figure } from './figure.ts'
import { KEPT_UNIT } from './measure.ts'
import { isPlausible, valueIn } from './spoken.ts'
import { question } from './unit-words.ts'
import type { UnitRead } from './unit-words.ts'
import { keptUnit, UNITS, unitOf } from './units.ts'
import type { Unit } from './units.ts'

const FAR = 4
const INCH_DECIMALS = 3

/** Outside the plausible range by more than the factor. */
function isFar(value: number, context: ReadContext): boolean {
  if (context.plausible === undefined) return false
  const { lo, hi } = context.plausible
  const size = Math.abs(value)
  const most = Math.max(Math.abs(lo), Math.abs(hi))
  const least = lo > 0 ? lo : hi < 0 ? -hi : 0
  return size > FAR * most || size < least / FAR
}

function decimalLength(figure: Figure, context: ReadContext): UnitRead | undefined {
  if (context.plausible === undefined) return undefined
  const [inch, mm] = [unitOf('in'), unitOf('mm')]
  const [asInch, asMm] = [valueIn(figure, inch), valueIn(figure, mm)]
  const [inchFits, mmFits] = [isPlausible(asInch, context), isPlausible(asMm, context)]
  const read = (unit: Unit, not: Unit): UnitRead => ({
    unit,
    notes: [`no unit was written: read as ${unit.symbol}, since ${figure.text} ${not.symbol} is not plausible for ${context.label}`],
  })
  if (inchFits && !mmFits && ((figure.decimals >= INCH_DECIMALS && figure.comma !== true) || isFar(asMm, context))) return read(inch, mm)
  if (mmFits && !inchFits && isFar(asInch, context)) return read(mm, inch)
  return undefined
}

/** The units worth offering when a unit is missing, most usual first. */
function offered(figure: Figure, context: ReadContext): readonly Unit[] {
  if (context.kind === 'length') return (figure.form === 'decimal' ? ['in', 'mm', 'thou'] : ['thou', 'mm', 'in']).map(unitOf)
  return UNITS.filter((unit) => unit.kind === context.kind && unit.rare !== true)
}

/** The unit of a number that was written without one and has no field to give it, or the question to ask. */
export function unitOfBare(figure: Figure, context: ReadContext): UnitRead | Fault {
  if (KEPT_UNIT[context.kind] === '') return { unit: keptUnit(context.kind), notes: [] }
  if (context.kind === 'angle') return { unit: unitOf('deg'), notes: ['no unit was written: read as degrees'] }
  if (context.kind === 'length') {
    if (figure.form === 'fraction' && figure.halves !== true)
      return { unit: unitOf('in'), notes: ['no unit was written: a fraction is read as inches'] }
    if (figure.form === 'leading dot')
      return { unit: unitOf('in'), notes: ['no unit was written: a figure with a leading point is read as inches'] }
    const decimal = figure.form === 'decimal' ? decimalLength(figure, context) : undefined
    if (decimal !== undefined) return decimal
  }
  return question('unit-missing', figure, offered(figure, context), context, `"${figure.text}" has no unit.`)
}
