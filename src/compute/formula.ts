import { KEPT_UNIT } from '../quantity/measure.ts'
import type { Measure, QuantityKind } from '../quantity/measure.ts'
import { combinedUncertainty } from './uncertainty.ts'

/** What a formula takes in under one name: its kind, what it is in words, and the valid range in the kept unit. */
export interface FormulaInput {
  readonly kind: QuantityKind
  readonly says: string
  readonly least?: number
  readonly most?: number
  /** A count of things: whole, and without doubt. Its sensitivity is 0 by convention. */
  readonly whole?: true
}

/**
 * How much a result may carry where it may not decide alone. `never-clears`: it may condemn or explain, and never clears a part.
 * `explains`: it is shown beside a verdict and moves none. Absent: it may decide like a measured figure.
 */
export type Weighs = 'never-clears' | 'explains'

/** The result of one evaluation; `partials` are the sensitivities ∂f/∂input at that point. */
export interface Evaluated<Name extends string = string> {
  readonly value: number
  readonly partials: Readonly<Record<Name, number>>
}

/** Plain values in kept units, by input name. */
export type Values<Name extends string = string> = Readonly<Record<Name, number>>

/** What both kinds of formula say of themselves. */
export interface Described<Name extends string = string> {
  readonly id: string
  readonly version: number
  /** One line in words, with the equation in plain text. */
  readonly says: string
  /** Where the equation comes from. */
  readonly source: string
  readonly inputs: Readonly<Record<Name, FormulaInput>>
  readonly output: { readonly kind: QuantityKind; readonly says: string }
  readonly weighs?: Weighs
}

/**
 * One formula of the trade as the record names it: `id@version`. Versions are append-only: a new meaning is a new
 * version, and the old one stays, because old decisions replay with it.
 */
export interface Formula extends Described {
  /** Value from values in kept units. Checks presence only; ranges and joint conditions are `apply`'s business. */
  readonly evaluate: (x: Values) => Evaluated
  /** What no single range can say: why these values together make no sense, or undefined where they do. */
  readonly refuses?: (x: Values) => string | undefined
}

/** Lists of plain values in kept units, by input name: all of one length, the same place in each belonging together. */
export type Lists<Name extends string = string> = Readonly<Record<Name, readonly number[]>>

/** The result over lists; `partials` holds ∂f/∂entry for every entry, list by list. */
export interface EvaluatedGroup<Name extends string = string> {
  readonly value: number
  readonly partials: Readonly<Record<Name, readonly number[]>>
}

/**
 * A formula over readings that belong together: a grid over a face, the springs of a head. Its inputs are named lists of one
 * length; kind and range of an input hold for each of its entries. Keys, versions and errors are as for `Formula`.
 */
export interface GroupFormula extends Described {
  /** How many entries each list must have, from and to. */
  readonly fewest: number
  readonly most: number
  readonly evaluate: (x: Lists) => EvaluatedGroup
  readonly refuses?: (x: Lists) => string | undefined
}

/** A formula applied to measures: the value with its standard uncertainty, or why there is none. */
export type Applied = { readonly ok: true; readonly value: number; readonly u: number } | { readonly ok: false; readonly why: string }

interface Definition<Name extends string> extends Described<Name> {
  readonly evaluate: (x: Values<Name>) => Evaluated<Name>
  readonly refuses?: (x: Values<NoInfer<Name>>) => string | undefined
}

interface GroupDefinition<Name extends string> extends Described<Name> {
  readonly fewest: number
  readonly most: number
  readonly evaluate: (x: Lists<Name>) => EvaluatedGroup<Name>
  readonly refuses?: (x: Lists<NoInfer<Name>>) => string | undefined
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

function holdsAllLists<Name extends string>(x: Lists, names: readonly Name[]): x is Lists<Name> {
  return names.every((name) => Array.isArray(x[name]))
}

/** Makes a group formula from its definition, as `formula` does. Throws a plain Error when `evaluate` is later called without one of its lists. */
export function groupFormula<const Name extends string>(definition: GroupDefinition<Name>): GroupFormula {
  const { evaluate, refuses, ...described } = definition
  const names = Object.keys(definition.inputs) as Name[]
  const demanded = (x: Lists): Lists<Name> => {
    if (!holdsAllLists(x, names)) throw new Error(`${formulaKey(definition)} needs a list for each of: ${names.join(', ')}.`)
    return x
  }
  const made: GroupFormula = { ...described, evaluate: (x) => evaluate(demanded(x)) }
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
  const stranger = unknownName(chosen, Object.keys(inputs))
  if (stranger !== undefined) return refused(stranger)
  const values: Record<string, number> = {}
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

/**
 * Applies a group formula to lists of measures, by the same rules as `apply`. Entries are taken as uncorrelated; a doubt that all
 * of them share (the datum of one set-up) cancels in differences and is not to be put into their u. First order: where the result
 * hangs on a few touching readings only, their doubts alone come through.
 */
export function applyGroup(chosen: GroupFormula, inputs: Readonly<Record<string, readonly Measure[]>>): Applied {
  const key = formulaKey(chosen)
  const stranger = unknownName(chosen, Object.keys(inputs))
  if (stranger !== undefined) return refused(stranger)
  const values: Record<string, readonly number[]> = {}
  const doubts: Record<string, Measure> = {}
  let length: number | undefined
  for (const [name, declared] of Object.entries(chosen.inputs)) {
    const given = Object.hasOwn(inputs, name) ? inputs[name] : undefined
    if (given === undefined) return refused(`${key} needs “${name}” (${declared.says}).`)
    length = length ?? given.length
    if (given.length !== length)
      return refused(`${key}: “${name}” has ${String(given.length)} entries and the list before it ${String(length)}.`)
    for (const [at, one] of given.entries()) {
      const why = unusable(key, entry(name, at), declared, one)
      if (why !== undefined) return refused(why)
      doubts[entry(name, at)] = one
    }
    values[name] = given.map((one) => one.value)
  }
  if (length === undefined || length < chosen.fewest)
    return refused(`${key} needs at least ${String(chosen.fewest)} entries; there are ${String(length ?? 0)}.`)
  if (length > chosen.most) return refused(`${key} takes at most ${String(chosen.most)} entries; there are ${String(length)}.`)
  const senseless = chosen.refuses?.(values)
  if (senseless !== undefined) return refused(`${key}: ${senseless}`)
  const { value, partials } = chosen.evaluate(values)
  const each = Object.entries(partials).flatMap(([name, list]) => list.map((partial, at) => [entry(name, at), partial] as const))
  const u = combinedUncertainty(Object.fromEntries(each), doubts)
  if (!Number.isFinite(value) || !Number.isFinite(u)) return refused(`${key} gives no finite number for these inputs.`)
  return { ok: true, value: value + 0, u }
}

/** One entry of a list in words: "z 3", counted from one. */
const entry = (name: string, at: number): string => `${name} ${String(at + 1)}`

function unknownName(chosen: Described, given: readonly string[]): string | undefined {
  const stranger = given.find((name) => !Object.hasOwn(chosen.inputs, name))
  if (stranger === undefined) return undefined
  return `${formulaKey(chosen)} has no input “${stranger}”; it takes ${Object.keys(chosen.inputs).join(', ')}.`
}

function refused(why: string): Applied {
  return { ok: false, why }
}

function unusable(key: string, name: string, declared: FormulaInput, given: Measure): string | undefined {
  const unit = KEPT_UNIT[declared.kind]
  const shown = (n: number): string => (unit === '' ? String(n) : `${String(n)} ${unit}`)
  if (!Number.isFinite(given.value)) return `${key}: “${name}” is not a finite number.`
  if (!Number.isFinite(given.u) || given.u < 0) return `${key}: the uncertainty of “${name}” is not a finite number of at least 0.`
  if (declared.whole === true) {
    if (Math.floor(given.value) !== given.value) return `${key}: “${name}” is ${String(given.value)}, and a count is a whole number.`
    if (given.u > 0) return `${key}: “${name}” is a count and has no doubt; count again.`
  }
  if (declared.least !== undefined && given.value < declared.least) {
    return `${key}: “${name}” is ${shown(given.value)}; the formula holds from ${shown(declared.least)}.`
  }
  if (declared.most !== undefined && given.value > declared.most) {
    return `${key}: “${name}” is ${shown(given.value)}; the formula holds up to ${shown(declared.most)}.`
  }
  return undefined
}
