/** How readings are said back in questions. */
import { toDouble } from './exact.ts'
import type { Figure } from './figure.ts'
import type { ReadContext } from './context.ts'
import { inUnit, show } from './show.ts'
import { keptOf, otherSystem, unitOf } from './units.ts'
import type { Unit } from './units.ts'

/** The kept value that a figure has in a unit; may be infinite. */
export function valueIn(figure: Figure, unit: Unit): number {
  return toDouble(keptOf(figure.value, unit))
}

/** A figure with a unit, as it could be typed: "12 thou". */
export function typable(figure: Figure, unit: Unit): string {
  return `${figure.text}${unit.symbol === '' || unit.symbol === '°' ? '' : ' '}${unit.symbol}`
}

/** The step that the writing shows: "0.001 in", "1/64 in", "1 thou". */
export function stepText(figure: Figure, unit: Unit): string {
  if (unit.printedAs !== undefined && unit.rare === true) {
    const plain = unitOf(unit.printedAs)
    return typable({ ...figure, text: figure.step.times(unit.factor).div(plain.factor).toFixed() }, plain)
  }
  const text = figure.denominator === undefined ? figure.step.toFixed() : `1/${figure.denominator}`
  return typable({ ...figure, text }, unit)
}

/** The same in every way it could be said: "12 thou = 0.012 in = 0.305 mm". */
export function spelled(figure: Figure, unit: Unit): string {
  const value = valueIn(figure, unit)
  if (!Number.isFinite(value)) return typable(figure, unit)
  const step = figure.step.times(unit.factor)
  const ways = [typable(figure, unit)]
  if (unit.printedAs !== undefined) ways.push(inUnit(value, unit.printedAs, decimals(toDouble(step.div(unitOf(unit.printedAs).factor)))))
  const other = otherSystem(unit.id)
  // One digit more than the step asks for, so that 12 thou is told from 12.1.
  if (other !== undefined) ways.push(inUnit(value, other, decimals(toDouble(step.div(unitOf(other).factor).div(10)))))
  return ways.join(' = ')
}

function decimals(step: number): number {
  let n = 0
  for (let one = 1; one > step * (1 + 1e-9) && n < 9; one /= 10) n += 1
  return n
}

export const isPlausible = (value: number, context: ReadContext): boolean =>
  Number.isFinite(value) && (context.plausible === undefined || (value >= context.plausible.lo && value <= context.plausible.hi))

/** "0.010 in to 0.098 in (0.25 mm to 2.50 mm)": the plausible range in both systems, the unit's own first. */
export function rangeIn(context: ReadContext, unit: Unit): string {
  if (context.plausible === undefined) return 'any value'
  const first = unit.printedAs === undefined ? unit : unitOf(unit.printedAs)
  const { lo, hi } = context.plausible
  const span = (u: Unit): string => `${ends(lo, u)} to ${ends(hi, u)}`
  const other = otherSystem(first.id)
  return other === undefined ? span(first) : `${span(first)} (${span(unitOf(other))})`
}

const ends = (value: number, unit: Unit): string => show(value, unit.kind, { unit: unit.id }).split(' (')[0] ?? ''

/** Choices as a sentence part: "a", "a or b", "a, b or c". */
export function orList(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} or ${items.at(-1) ?? ''}`
}

/** The kept value as the kind's own unit and the other system show it, for faults. */
export const both = (value: number, figure: Figure, unit: Unit): string =>
  show(value, unit.kind, { unit: unit.id, resolution: toDouble(figure.step.times(unit.factor)) })
