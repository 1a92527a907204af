import { FORMULAS, GROUP_FORMULAS } from '../compute/registry.ts'
import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from './book.ts'
import type { Condition, Rule } from './schema/rule.ts'

/**
 * An estimate may explain, and some may condemn, but none may clear: a figure whose formula only explains stands in no
 * condition, and one that never clears stands only where a rule condemns or advises.
 */
export function checkWeight(book: Rulebook, cls: PartClass, rule: Rule): readonly Fault[] {
  const path = `${rule.id.replace('.', '/')}.json`
  const mayCondemn = 'condemns' in rule.then || 'advises' in rule.then
  return factsOf(rule.when).flatMap((name) => {
    const weight = weightOf(book, cls.id, name)
    if (weight === undefined || (weight === 'never-clears' && mayCondemn)) return []
    const says = weight === 'explains' ? `${name} explains and decides nothing.` : `${name} is an estimate that never clears a part.`
    return [fault('too-light', pointer(path, 'when'), says, 'Use it in the reason, and hold a measured fact against the limit.', name)]
  })
}

/** The least that any formula behind a figure may weigh. */
function weightOf(book: Rulebook, from: string, name: string): 'explains' | 'never-clears' | undefined {
  const colon = name.indexOf(':')
  const [part, own] = colon < 0 ? [from, name] : [name.slice(0, colon), name.slice(colon + 1)]
  const derived = book.parts.get(part)?.derived.get(own)
  if (derived === undefined) return undefined
  const weighs = (FORMULAS.get(derived.formula) ?? GROUP_FORMULAS.get(derived.formula))?.weighs
  const behind = Object.values(derived.inputs).flatMap((input) => weightOf(book, part, input) ?? [])
  return weighs === 'explains' || behind.includes('explains')
    ? 'explains'
    : weighs === 'never-clears' || behind.includes('never-clears')
      ? 'never-clears'
      : undefined
}

const factsOf = (condition: Condition): readonly string[] =>
  'fact' in condition ? [condition.fact] : (condition.all ?? condition.any ?? []).flatMap(factsOf)
