/** Which unit a written name means. Where a name means two things, the shop's own habit decides or the reader asks; it never guesses. */
import type { ReadContext } from './context.ts'
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import type { Figure } from './figure.ts'
import type { QuantityKind } from './measure.ts'
import { isPlausible, orList, spelled, typable, valueIn } from './spoken.ts'
import { kindsWithUnit, plainUnitName, unitNamed, UNITS, unitOf } from './units.ts'
import type { Unit } from './units.ts'

export interface UnitRead {
  readonly unit: Unit
  readonly notes: readonly string[]
}

const LONGEST_NAME = 40

interface Doubtful {
  readonly kind: QuantityKind
  readonly said: readonly string[]
  /** Unit ids that it could mean. */
  readonly means: readonly string[]
  readonly code: 'tenths' | 'unit-ambiguous'
  readonly why: string
}

const KILO = 'kg is a unit of mass; as a force it is taken for kilogram-force, but only when that is written'
const KG = ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms']

const DOUBTFUL: readonly Doubtful[] = [
  {
    kind: 'length',
    said: ['tenth', 'tenths'],
    means: ['tenth-thou', 'tenth-mm'],
    code: 'tenths',
    why: 'a tenth is a ten-thousandth of an inch in one shop and a tenth of a millimetre in another',
  },
  {
    kind: 'length',
    said: ['hundredth', 'hundredths'],
    means: ['hundredth-mm', 'hundredth-in'],
    code: 'unit-ambiguous',
    why: 'hundredths can be of a millimetre or of an inch',
  },
  {
    kind: 'length',
    said: ['mil', 'mils', 'mill', 'mills'],
    means: ['thou', 'mm'],
    code: 'unit-ambiguous',
    why: 'a mil is a thousandth of an inch to some and a millimetre to others',
  },
  { kind: 'force', said: KG, means: ['kgf'], code: 'unit-ambiguous', why: KILO },
  { kind: 'stiffness', said: KG.map((k) => `${k}/mm`), means: ['kgf/mm'], code: 'unit-ambiguous', why: KILO },
  { kind: 'torque', said: ['kgm', 'mkg'], means: ['kgf m'], code: 'unit-ambiguous', why: KILO },
  { kind: 'pressure', said: ['kg/cm2', 'kg/cm²'], means: ['kgf/cm2'], code: 'unit-ambiguous', why: KILO },
  {
    kind: 'temperature',
    said: ['deg', 'degs', 'degree', 'degrees', '°'],
    means: ['degC', 'degF'],
    code: 'unit-ambiguous',
    why: 'degrees can be Celsius or Fahrenheit',
  },
]

const doubtfulNamed = (name: string, kind: QuantityKind): Doubtful | undefined =>
  DOUBTFUL.find((d) => d.kind === kind && d.said.some((said) => plainUnitName(said) === plainUnitName(name)))

/** A question with the readings on offer: the plausible ones, or all where none is. */
export function question(code: string, figure: Figure, units: readonly Unit[], context: ReadContext, says: string): Fault {
  const likely = units.filter((unit) => isPlausible(valueIn(figure, unit), context))
  const offered = likely.length > 0 ? likely : units
  const verdict = likely.length > 0 ? `For ${context.label} it could be` : `None of these is plausible for ${context.label}:`
  const choices = offered.map((unit) => typable(figure, unit))
  const mend = `Write it with its unit: ${orList(choices)}.`
  return { ...fault(code, '', `${says} ${verdict} ${orList(offered.map((unit) => spelled(figure, unit)))}.`, mend), choices }
}

/** The unit that the shop's habit gives a doubtful name; undefined when it has to be asked. */
function byHabit(doubtful: Doubtful, context: ReadContext, field: Unit | undefined): Unit | undefined {
  const inchShop = field?.system === 'inch' || (field === undefined && context.tenths === 'ten-thousandths of an inch')
  if (doubtful.code === 'tenths') {
    if (context.tenths === undefined) return undefined
    return unitOf(context.tenths === 'ten-thousandths of an inch' ? 'tenth-thou' : 'tenth-mm')
  }
  if (doubtful.means.includes('thou')) return inchShop ? unitOf('thou') : undefined
  return field !== undefined && doubtful.means.includes(field.id) ? field : undefined
}

/** The unit of the form's field; undefined where there is none, a fault where it can't be understood. */
export function fieldUnit(context: ReadContext): Unit | Fault | undefined {
  const name = context.unit?.trim() ?? ''
  if (name === '') return undefined
  if (name.length > LONGEST_NAME)
    return fault('unit-unknown', '', 'The unit of the field is too long to be one.', 'Write it as a shop does: in, mm, thou, lb.', name)
  const unit = unitNamed(name, context.kind)
  if (unit !== undefined) return unit
  const doubtful = doubtfulNamed(name, context.kind)
  return (doubtful === undefined ? undefined : byHabit(doubtful, context, undefined)) ?? unknownUnit(name, context)
}

function unknownUnit(name: string, context: ReadContext): Fault {
  const known = UNITS.filter((unit) => unit.kind === context.kind && unit.symbol !== '' && unit.rare !== true).map((unit) => unit.symbol)
  const read = known.length === 0 ? 'Write the number alone.' : `Read for ${context.label}: ${known.join(', ')}.`
  const doubtful = doubtfulNamed(name, context.kind)
  if (doubtful !== undefined) {
    const choices = doubtful.means.map((id) => unitOf(id).symbol)
    return { ...fault('unit-ambiguous', '', `"${name}" is not clear: ${doubtful.why}.`, `Write ${orList(choices)}.`), choices }
  }
  const kinds = kindsWithUnit(name)
  if (kinds.length > 0)
    return fault('wrong-kind', '', `"${name}" is a unit of ${orList(kinds)}, and ${context.label} is a ${context.kind}.`, read)
  if (/[0-9]/.test(name))
    return fault('not-one-figure', '', `After the number there is more than a unit: "${name}".`, 'Write one figure with its unit.')
  return fault('unit-unknown', '', `"${name}" is no unit that is read for ${context.label}.`, read)
}

/** "ten-thousandths" with a hyphen: ten thou, or a tenth of one? */
function tenThousandths(figure: Figure): Fault {
  const choices = ['10 thou', '0.0001 in']
  return {
    ...fault(
      'unit-ambiguous',
      '',
      'It could be ten thousandths of an inch (0.010 in) or one ten-thousandth (0.0001 in).',
      `Write ${orList(choices)}.`,
      figure.text,
    ),
    choices,
  }
}

const withoutFiller = (name: string): string => name.replace(/^(?:of +)?(?:an? +|the +)?/i, '')

/** The unit that a written name means for this figure, or the question to ask. The name is not empty. */
export function unitWritten(figure: Figure, name: string, context: ReadContext, field: Unit | undefined): UnitRead | Fault {
  const bare = withoutFiller(name)
  if (figure.hyphened === true && plainUnitName(bare).startsWith('thou')) return tenThousandths(figure)
  const doubtful = doubtfulNamed(bare, context.kind)
  if (doubtful !== undefined) {
    const unit = byHabit(doubtful, context, field)
    if (unit === undefined)
      return question(doubtful.code, figure, doubtful.means.map(unitOf), context, `"${name}" is not clear: ${doubtful.why}.`)
    return { unit, notes: [`"${name}" was read as ${unit.symbol}, as this shop writes it`] }
  }
  const unit = unitNamed(bare, context.kind)
  if (unit === undefined) return unknownUnit(bare, context)
  return { unit, notes: unit.note === undefined ? [] : [unit.note] }
}

/** Faults where a field's unit and the written one can't both hold; a note where they are two units of one system. */
export function againstField(written: Unit, field: Unit | undefined, label: string): Fault | readonly string[] {
  if (field === undefined || field.id === written.id) return []
  if (field.system === written.system)
    return [`the field says ${field.symbol || 'no unit'}; ${written.symbol} was written, and that was read`]
  return fault(
    'unit-conflict',
    '',
    `${label} was written in ${written.symbol}, but the field says ${field.symbol}.`,
    'Make the two agree: change the field, or leave the unit out of the figure.',
  )
}
