import { KEPT_UNIT } from '../quantity/measure.ts'
import type { Measure, QuantityKind } from '../quantity/measure.ts'
import { combinedUncertainty } from './uncertainty.ts'

/** What a formula takes in under one name: its kind, what it is in words, and the valid range in the kept unit. */
export interface FormulaInput {
  readonly kind: QuantityKind
  readonly says: string
  readonly least?: number
  readonly most?: number
}

/** The result of one evaluation; `partials` are the sensitivities ∂f/∂input at that point. */
export interface Evaluated<Name extends string = string> {
  readonly value: number
  readonly partials: Readonly<Record<Name, number>>
}

/** Plain values in kept units, by input name. */
export type Values<Name extends string = string> = Readonly<Record<Name, number>>

/**
 * One formula of the trade as the record names it: `id@version`. Versions are append-only: a new meaning is a new
 * version, and the old one stays, because old decisions replay with it.
 */
export interface Formula {
  readonly id: string
  readonly version: number
  /** One line in words, with the equation in plain text. */
  readonly says: string
  /** Where the equation comes from. */
  readonly source: string
  readonly inputs: Readonly<Record<string, FormulaInput>>
  readonly output: { readonly kind: QuantityKind; readonly says: string }
  /** Value from values in kept units. Checks presence only; ranges and joint conditions are `apply`'s business. */
  readonly evaluate: (x: Values) => Evaluated
  /** What no single range can say: why these values together make no sense, or undefined where they do. */
  readonly refuses?: (x: Values) => string | undefined
}

/** A formula applied to measures: the value with its standard uncertainty, or why there is none. */
export type Applied =
  { readonly ok: true; readonly value: number; readonly u: number } | { readonly ok: false; readonly why: string }

interface Definition<Name extends string> {
  readonly id: string
  readonly version: number
  readonly says: string
  readonly source: string
  readonly inputs: Readonly<Record<Name, FormulaInput>>
  readonly output: { readonly kind: QuantityKind; readonly says: string }
  readonly evaluate: (x: Values<Name>) => Evaluated<Name>
  readonly refuses?: (x: Values<Name>) => string | undefined
}

function holdsAll<Name extends string>(x: Values, names: readonly Name[]): x is Values<Name> {
  return names.every((name) => typeof x[name] === 'number')
}

/**
 * Makes a formula from its definition. The compiler holds `evaluate` to the declared input names and asks for a partial
 * for each of them. Throws a plain Error when `evaluate` is later called without one of its inputs.
 */
export function formula<const Name extends string>(definition: Definition<Name>): Formula {
  const { evaluate, refuses, ...described } = definition
  const names = Object.keys(definition.inputs) as Name[]
  const demanded = (x: Values): Values<Name> => {
    if (!holdsAll(x, names)) throw new Error(`${formulaKey(definition)} needs a number for each of: ${names.join(', ')}.`)
    return x
  }
  const made: Formula = { ...described, evaluate: (x) => evaluate(demanded(x)) }
  return refuses === undefined ? made : { ...made, refuses: (x) => refuses(demanded(x)) }
}

/** The name under which records and rules speak of a formula: `tip-stock-left@1`. */
export function formulaKey(named: { readonly id: string; readonly version: number }): string {
  return `${named.id}@${String(named.version)}`
}

/**
 * Applies a formula to measures in kept units and propagates their standard uncertainties to first order, inputs taken
 * as uncorrelated (JCGM 100:2008, 5.1.2). Never throws on what it is handed: a missing or unknown name, a value outside
 * the valid range, values that make no sense together and a result that is not finite come back as `why`, naming the input.
 */
export function apply(chosen: Formula, inputs: Readonly<Record<string, Measure>>): Applied {
  const key = formulaKey(chosen)
  const values: Record<string, number> = {}
  for (const name of Object.keys(inputs)) {
    if (Object.hasOwn(chosen.inputs, name)) continue
    return refused(`${key} has no input “${name}”; it takes ${Object.keys(chosen.inputs).join(', ')}.`)
  }
  for (const [name, declared] of Object.entries(chosen.inputs)) {
    const given = Object.hasOwn(inputs, name) ? inputs[name] : undefined
    if (given === undefined) return refused(`${key} needs “${name}” (${declared.says}).`)
    const why = unusable(key, name, declared, given)
    if (why !== undefined) return refused(why)
    values[name] = given.value
  }
  const senseless = chosen.refuses?.(values)
  if (senseless !== undefined) return refused(`${key}: ${senseless}`)
  const { value, partials } = chosen.evaluate(values)
  const u = combinedUncertainty(partials, inputs)
  if (!Number.isFinite(value) || !Number.isFinite(u)) return refused(`${key} gives no finite number for these inputs.`)
  // Adding 0 turns −0 into 0, which would otherwise depend on how a difference was written.
  return { ok: true, value: value + 0, u }
}

function refused(why: string): Applied {
  return { ok: false, why }
}

function unusable(key: string, name: string, declared: FormulaInput, given: Measure): string | undefined {
  const unit = KEPT_UNIT[declared.kind]
  const shown = (n: number): string => (unit === '' ? String(n) : `${String(n)} ${unit}`)
  if (!Number.isFinite(given.value)) return `${key}: “${name}” is not a finite number.`
  if (!Number.isFinite(given.u) || given.u < 0) return `${key}: the uncertainty of “${name}” is not a finite number of at least 0.`
  if (declared.least !== undefined && given.value < declared.least) {
    return `${key}: “${name}” is ${shown(given.value)}; the formula holds from ${shown(declared.least)}.`
  }
  if (declared.most !== undefined && given.value > declared.most) {
    return `${key}: “${name}” is ${shown(given.value)}; the formula holds up to ${shown(declared.most)}.`
  }
  return undefined
}
