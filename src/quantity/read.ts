/** Reads a quantity as people write it. What is not clear is asked back, never guessed. */
import { unitOfBare } from './bare.ts'
import type { ReadContext, Reading } from './context.ts'
import { doubtOf } from './doubt.ts'
import { toDouble } from './exact.ts'
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import { isFault } from './figure.ts'
import type { Figure } from './figure.ts'
import { partsOf } from './parts.ts'
import type { Part } from './parts.ts'
import { implausible } from './plausible.ts'
import { both, isPlausible, orList, stepText, typable, valueIn } from './spoken.ts'
import { plainText } from './text.ts'
import { againstField, fieldUnit, unitWritten } from './unit-words.ts'
import { keptUnit, unitOf } from './units.ts'
import type { Unit } from './units.ts'

export type { InstrumentUse, ReadContext, Reading } from './context.ts'

/** A part with its unit settled. */
interface Settled {
  readonly figure: Figure
  readonly unit: Unit
  readonly value: number
  readonly resolution: number
  readonly notes: readonly string[]
}

/**
 * Reads "12 thou", ".012\"", "5/64", "1-1/16 in", "0,3 mm", "twelve thou", "0.012 in (0.305 mm)" and the like as a quantity of
 * the asked kind, in its kept unit, with resolution and standard uncertainty. Never throws on text. Faults: `too-long`, `hidden-characters`,
 * `not-a-number`, `not-one-figure`, `unit-missing`, `unit-unknown`, `unit-ambiguous`, `unit-conflict`, `wrong-kind`, `tenths`, `comma-ambiguous`,
 * `odd-fraction`, `pair-disagrees`, `out-of-range`, `sign-not-allowed`, `not-whole`, `instrument-unusable`.
 */
export function readQuantity(typed: string, context: ReadContext): Reading {
  const result = read(typed, context)
  if (!isFault(result)) return result
  const shown =
    result.value ??
    (typeof typed === 'string' && result.code !== 'hidden-characters' && result.code !== 'too-long' ? typed.trim() : undefined)
  const at = { ...result, pointer: context.pointer ?? '' }
  return { ok: false, faults: [shown === undefined ? at : { ...at, ...fault(at.code, at.pointer, at.says, at.mend, shown) }] }
}

function read(typed: string, context: ReadContext): Reading | Fault {
  const plain = plainText(typed)
  if (typeof plain !== 'string') return plain
  const parts = partsOf(plain)
  if (isFault(parts)) return parts
  const field = fieldUnit(context)
  if (field !== undefined && isFault(field)) return field
  // In a pair that says it both ways, either may be the field's unit.
  const second = parts.second === undefined ? undefined : settle(parts.second, context, undefined)
  if (second !== undefined && isFault(second)) return second
  const ownField = second !== undefined && field !== undefined && second.unit.system === field.system ? undefined : field
  const first = settle(parts.first, context, ownField)
  if (isFault(first)) return first
  const agreed = second === undefined ? [] : agreement(first, second)
  if (isFault(agreed)) return agreed
  const wrong = implausible(first.figure, first.unit, context) ?? whole(first, context)
  if (wrong !== undefined) return wrong
  const doubt = doubtOf(first.value, first.resolution, stepText(first.figure, first.unit), context)
  if (isFault(doubt)) return doubt
  const { value, resolution } = first
  const notes = [...first.figure.notes, ...first.notes, ...agreed, ...doubt.notes]
  return {
    ok: true,
    quantity: { kind: context.kind, value, u: doubt.u, typed: typed.trim(), unit: first.unit.id, resolution, uFrom: doubt.uFrom, notes },
  }
}

/** Finds the unit of one part and its kept value. */
function settle(part: Part, context: ReadContext, field: Unit | undefined): Settled | Fault {
  const chosen = unitFor(part.figure, part.unit, context, field)
  if (isFault(chosen)) return chosen
  const figure = commaSettled(part.figure, chosen.unit, context)
  if (isFault(figure)) return figure
  const { unit, notes } = chosen
  const value = valueIn(figure, unit)
  const resolution = context.kind === 'count' ? 1 : toDouble(figure.step.times(unit.factor))
  if (!Number.isFinite(value) || !Number.isFinite(resolution))
    return fault('not-a-number', '', 'The figure is beyond all measure.', 'Check the figure and its unit.')
  // No inch rule is divided so: most likely a digit is lost.
  if (unit.id === 'in' && figure.denominator !== undefined && [3, 5, 6].includes(figure.denominator)) {
    return fault(
      'odd-fraction',
      '',
      `Inches are not divided by ${figure.denominator}.`,
      'Write halves, quarters, eighths, sixteenths, thirty-seconds or sixty-fourths, or decimals.',
    )
  }
  return { figure, unit, value, resolution, notes }
}

function unitFor(
  figure: Figure,
  name: string,
  context: ReadContext,
  field: Unit | undefined,
): { unit: Unit; notes: readonly string[] } | Fault {
  if (name !== '') {
    const written = unitWritten(figure, name, context, field)
    if (isFault(written)) return written
    const against = againstField(written.unit, field, context.label)
    return isFault(against) ? against : { unit: written.unit, notes: [...written.notes, ...against] }
  }
  if (field === undefined) return unitOfBare(figure, context)
  if (context.kind === 'length' && figure.form === 'fraction' && field.system === 'metric') {
    return fault(
      'unit-conflict',
      '',
      `${figure.text} is a fraction, as inches are written, but the field says ${field.symbol}.`,
      `Write ${typable(figure, unitOf('in'))} with the field on in, or a decimal in ${field.symbol}.`,
    )
  }
  return { unit: field, notes: [] }
}

/** "1,200" is 1.2 or 1200: the plausible one where only one is, else a question. */
function commaSettled(figure: Figure, unit: Unit, context: ReadContext): Figure | Fault {
  const { thousands } = figure
  if (thousands === undefined) return figure
  const fits = [figure, thousands].filter((f) => isPlausible(valueIn(f, unit), context))
  if (context.plausible !== undefined && fits.length === 1 && fits[0] !== undefined) return fits[0]
  const choices = [figure, thousands].map((f) => typable(f, unit))
  return {
    ...fault(
      'comma-ambiguous',
      '',
      `The comma could be a decimal comma or stand between thousands: ${orList(choices)}.`,
      `Write ${orList(choices)}.`,
    ),
    choices,
  }
}

/** The two figures of a pair must agree within half a step of each, plus a hair for the last bit of a double. */
function agreement(first: Settled, second: Settled): readonly string[] | Fault {
  // A pair says one figure in two systems; two of the same system are two readings.
  if (first.unit.system === second.unit.system)
    return fault(
      'not-one-figure',
      '',
      'Two figures stand where one belongs.',
      'Send several readings as a list, or write the one that counts.',
    )
  const said = (s: Settled): string => both(s.value, s.figure, s.unit)
  const room = ((first.resolution + second.resolution) / 2) * (1 + 1e-9)
  if (Math.abs(first.value - second.value) <= room) return [`both figures agree; ${typable(first.figure, first.unit)} was kept`]
  const choices = [typable(first.figure, first.unit), typable(second.figure, second.unit)]
  return {
    ...fault(
      'pair-disagrees',
      '',
      `The two figures don't agree: ${said(first)} against ${said(second)}.`,
      `Write the one that was read: ${orList(choices)}.`,
    ),
    choices,
  }
}

function whole(first: Settled, context: ReadContext): Fault | undefined {
  if (context.kind !== 'count' || (Number.isSafeInteger(first.value) && first.value >= 0 && first.unit.id === keptUnit('count').id))
    return undefined
  return fault('not-whole', '', `${context.label} is counted, and ${first.figure.text} is no whole number.`, 'Write a whole number.')
}
