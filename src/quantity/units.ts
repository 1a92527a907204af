/** Units by name, and conversion to and from the kept units: exact decimals, rounded once. */
import { exact, exactOf, factorBetween, quotient, toDouble } from './exact.ts'
import type { Exact } from './exact.ts'
import { fault, Refused } from './fault.ts'
import { KEPT_UNIT } from './measure.ts'
import type { QuantityKind } from './measure.ts'
import { UNIT_TABLE } from './unit-table.ts'
import type { UnitEntry } from './unit-table.ts'

/** A unit with its exact size in the kept unit of its kind. */
export interface Unit extends UnitEntry {
  readonly factor: Exact
}

function sized(entry: UnitEntry): Unit {
  const [many, of] = entry.is
  const [n = '1', d = '1'] = many.split('/')
  const factor = quotient(n, d)
  return { ...entry, factor: of === '' ? factor : factor.times(factorBetween(of, KEPT_UNIT[entry.kind])) }
}

/** Every unit that the service reads or writes. Ids are unique across kinds ("lb" is the force, "lb-mass" the mass). */
export const UNITS: readonly Unit[] = UNIT_TABLE.map(sized)

const BY_ID: ReadonlyMap<string, Unit> = new Map(UNITS.map((unit) => [unit.id, unit]))

/** A unit's name without what doesn't tell: "lb·ft", "lb-ft", "LB FT" are one, and so are "lb/in" and "lbs per inch". */
export function plainUnitName(text: string): string {
  const lower = text.toLowerCase().replaceAll('µ', 'u').replaceAll(' per ', '/').replaceAll("''", '"')
  let plain = ''
  for (const c of lower) if (!' .·-*^()'.includes(c)) plain += c
  return plain
}

const BY_NAME: ReadonlyMap<string, Unit> = new Map(
  UNITS.flatMap((unit) =>
    [unit.id, unit.symbol, ...unit.said].map((said): [string, Unit] => [`${unit.kind}:${plainUnitName(said)}`, unit]),
  ).filter(([key]) => !key.endsWith(':')),
)

/** The unit of a kind that people mean by a name ("thous", "lb-ft", "°"), by symbol or by id; undefined when there is none. */
export function unitNamed(text: string, kind: QuantityKind): Unit | undefined {
  return BY_NAME.get(`${kind}:${plainUnitName(text)}`)
}

/** The kinds of quantity that have a unit of this name: what was written when it fits the asked kind badly. */
export function kindsWithUnit(text: string): readonly QuantityKind[] {
  return (Object.keys(KEPT_UNIT) as QuantityKind[]).filter((kind) => unitNamed(text, kind) !== undefined)
}

/** The unit of an id. @throws Refused `unit-unknown` */
export function unitOf(unitId: string): Unit {
  const unit = BY_ID.get(unitId)
  if (unit === undefined) {
    throw new Refused([fault('unit-unknown', '', `There is no unit with the id "${unitId}".`, 'Use an id from UNITS.', unitId)])
  }
  return unit
}

/** The unit in which values of a kind are kept. */
export function keptUnit(kind: QuantityKind): Unit {
  return unitOf(KEPT_UNIT[kind] || (kind === 'count' ? 'each' : '1'))
}

/** An exact figure in a unit as an exact figure in the kept unit. */
export function keptOf(x: Exact, unit: Unit): Exact {
  return (unit.zero === undefined ? x : x.minus(unit.zero)).times(unit.factor)
}

/** A kept value as an exact figure in a unit. */
export function figureOf(value: number, unit: Unit): Exact {
  const x = exactOf(value).div(unit.factor)
  return unit.zero === undefined ? x : x.plus(unit.zero)
}

const DECIMAL = /^[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?$/
const LONGEST = 60

/**
 * A plain decimal in a unit, in the kept unit of the unit's kind: toKept("0.012", "in") is 0.3048 (mm).
 * The product is exact to 40 digits and rounded to a double once, so equal quantities give identical doubles.
 * @throws Refused `not-a-number` when the text isn't a plain decimal or the value isn't finite; `unit-unknown`
 */
export function toKept(decimalText: string, unitId: string): number {
  const unit = unitOf(unitId)
  const plain = decimalText.length <= LONGEST && DECIMAL.test(decimalText)
  const value = plain ? toDouble(keptOf(exact(decimalText), unit)) : Number.NaN
  if (!Number.isFinite(value)) {
    throw new Refused([
      fault('not-a-number', '', 'This is not a plain decimal number.', 'Write it like 0.012, without a unit.', decimalText),
    ])
  }
  return value
}

/** A kept value in a unit: fromKept(0.3048, "in") is 0.012. @throws Refused `not-a-number` when it isn't finite; `unit-unknown` */
export function fromKept(value: number, unitId: string): number {
  const unit = unitOf(unitId)
  const figure = Number.isFinite(value) ? toDouble(figureOf(value, unit)) : Number.NaN
  if (!Number.isFinite(figure)) {
    throw new Refused([fault('not-a-number', '', 'This is not a finite number.', 'Hand in a finite value in the kept unit.', value)])
  }
  return figure
}

/** Id of the unit that shows a quantity to people who think in the other system; undefined where both use the same (degrees, counts). */
export function otherSystem(unitId: string): string | undefined {
  return unitOf(unitId).other
}
