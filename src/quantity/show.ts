/** Figures in words, as a shop writes them: in the unit typed first, then in the other system. No Intl: the text is part of the record. */
import { exact, exactOf, toDouble } from './exact.ts'
import type { Exact } from './exact.ts'
import { isFault } from './figure.ts'
import type { Measure, QuantityKind } from './measure.ts'
import { partsOf } from './parts.ts'
import type { Part } from './parts.ts'
import { plainText } from './text.ts'
import { figureOf, keptOf, keptUnit, otherSystem, unitNamed, unitOf, UNITS } from './units.ts'
import type { Unit } from './units.ts'

export interface ShowOptions {
  /** What was typed; gives unit and decimals where nothing else does, and keeps a fraction a fraction. */
  readonly typed?: string
  /** Unit to show first: an id, a symbol or a name. */
  readonly unit?: string
  /** Decimals of the first figure. */
  readonly digits?: number
  /** Smallest step that is worth showing, kept unit. */
  readonly resolution?: number
}

const MOST_DECIMALS = 12
const HAIR = '1.000000001'

/** Decimals that don't lose a step of this size. */
function decimalsFor(step: Exact): number {
  let decimals = 0
  for (let one = exact('1'); one.gt(step.times(HAIR)) && decimals < MOST_DECIMALS; one = one.div(10)) decimals += 1
  return decimals
}

/** A figure and its unit, without "-0": "0.010 in", "−5 °C", "44.50°". */
function written(figure: string, unit: Unit): string {
  const zero = !/[1-9]/.test(figure)
  const signed = figure.startsWith('-') ? (zero ? figure.slice(1) : `−${figure.slice(1)}`) : figure
  const tight = unit.symbol === '' || unit.symbol === '°' || unit.symbol === '%'
  return `${signed}${tight ? '' : ' '}${unit.symbol}`
}

/** A kept value in one unit with so many decimals, real minus sign. */
export function inUnit(value: number, unitId: string, decimals: number): string {
  if (!Number.isFinite(value)) return 'no number'
  const unit = unitOf(unitId)
  return written(figureOf(value, unit).toFixed(decimals), unit)
}

function typedPart(typed: string | undefined): Part | undefined {
  const plain = typed === undefined ? '' : plainText(typed)
  const parts = typeof plain === 'string' && plain !== '' ? partsOf(plain) : undefined
  return parts === undefined || isFault(parts) ? undefined : parts.first
}

const printed = (unit: Unit): Unit => (unit.printedAs === undefined ? unit : unitOf(unit.printedAs))

/** The unit named; else the one in which the typed figure has this value (".012" read as inches); else the kept one. */
function unitFor(value: number, kind: QuantityKind, name: string, part: Part | undefined): Unit {
  const named = name === '' ? undefined : unitNamed(name, kind)
  if (named !== undefined || part === undefined) return named ?? keptUnit(kind)
  return UNITS.find((u) => u.kind === kind && toDouble(keptOf(part.figure.value, u)) === value) ?? keptUnit(kind)
}

/** Decimals for two significant digits: a thou is 0.025 mm, not 0.03. */
function twoDigits(value: number, unit: Unit): number {
  return Math.min(MOST_DECIMALS, figureOf(value, unit).toSignificantDigits(2).decimalPlaces())
}

/** Enough decimals for the unit's habit and for two significant digits of the value. */
function usualDecimals(value: number, unit: Unit): number {
  return Math.max(unit.decimals, twoDigits(value, unit))
}

/**
 * A kept value as a shop writes it, then in the other system: "0.010 in (0.25 mm)", "260 lb (1157 N)", "45.0°".
 * Decimals come from `digits`, else from `resolution`, else from what was typed, else from the unit's habit. 'no number' where it isn't finite.
 */
export function show(value: number, kind: QuantityKind, options: ShowOptions = {}): string {
  if (!Number.isFinite(value)) return 'no number'
  const part = typedPart(options.typed)
  const unit = unitFor(value, kind, options.unit ?? part?.unit ?? '', part)
  const first = printed(unit)
  const typedStep = part === undefined ? undefined : part.figure.step.times(unit.factor)
  const given = options.resolution !== undefined && options.resolution > 0 ? exactOf(options.resolution) : typedStep
  const kept = options.digits === undefined ? given : exact(`1e-${options.digits}`).times(first.factor)
  const decimals = (u: Unit): number => (kept === undefined ? usualDecimals(value, u) : decimalsFor(kept.div(u.factor)))
  const fraction =
    part?.figure.form === 'fraction' &&
    options.digits === undefined &&
    unit === first &&
    toDouble(keptOf(part.figure.value, unit)) === value
  const own = fraction ? written(part.figure.text, unit) : inUnit(value, first.id, options.digits ?? decimals(first))
  const other = otherSystem(first.id)
  if (other === undefined) return own
  const there = unitOf(other)
  // Asked-for digits stand; else the other figure keeps two digits, however coarse the first one is.
  const thereDecimals = options.digits === undefined ? Math.max(decimals(there), twoDigits(value, there)) : decimals(there)
  return `${own} (${inUnit(value, other, thereDecimals)})`
}

/** A doubt with one significant digit, or two where the first is 1 or 2 and more follows: "0.0002", "0.015". */
function doubtText(doubt: number, unit: Unit): string {
  const size = exactOf(doubt).div(unit.factor)
  const two = size.toSignificantDigits(2)
  const digits = two.toFixed().replace(/[.0]/g, '')
  return (digits[0] === '1' || digits[0] === '2' ? two : size.toSignificantDigits(1)).toFixed()
}

function doubted(m: Measure, unit: Unit): string {
  const doubt = doubtText(2 * m.u, unit)
  const decimals = doubt.split('.')[1]?.length ?? 0
  const value = written(figureOf(m.value, unit).toFixed(decimals), { ...unit, symbol: '' })
  return `${value} ± ${written(doubt, unit)}`
}

/** A value with its expanded uncertainty at k = 2: "0.0040 ± 0.0002 in (0.1016 ± 0.0051 mm), k = 2"; an exact one as `show` writes it. */
export function showWithDoubt(m: Measure, kind: QuantityKind, options: ShowOptions = {}): string {
  if (!(m.u > 0) || !Number.isFinite(m.u) || !Number.isFinite(m.value)) return show(m.value, kind, options)
  const part = typedPart(options.typed)
  const first = printed(unitFor(m.value, kind, options.unit ?? part?.unit ?? '', part))
  const other = otherSystem(first.id)
  return `${doubted(m, first)}${other === undefined ? '' : ` (${doubted(m, unitOf(other))})`}, k = 2`
}
