import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from './book.ts'
import { checkWeight } from './check-weight.ts'
import { factKindOf } from './fact-kind.ts'
import { literalMeasure } from './literal.ts'
import { limitKind, unknown } from './named.ts'
import type { Condition, Leaf, Rule } from './schema/rule.ts'

const ORDERING = new Set(['at-most', 'above', 'at-least', 'below'])

/** That everything a rule names exists and means the same kind of thing there. */
export function checkRule(book: Rulebook, cls: PartClass, rule: Rule): readonly Fault[] {
  const path = `${rule.id.replace('.', '/')}.json`
  const faults: Fault[] = []
  for (const [which, condition] of [
    ['appliesWhen', rule.appliesWhen],
    ['wakes', rule.wakes],
    ['when', rule.when],
  ] as const) {
    if (condition !== undefined) faults.push(...checkCondition(book, cls, condition, pointer(path, which)))
  }
  if (/\{[^{}|]+\|[^{}]*\{[^}]/.test(rule.says))
    faults.push(
      fault(
        'nested-braces',
        pointer(path, 'says'),
        'A figure stands inside an optional piece of the reason.',
        'Inside {fact|text {} text} only {} may stand; say the other figure outside.',
      ),
    )
  faults.push(...checkWeight(book, cls, rule))
  if (rule.wakes !== undefined && rule.dormant !== true)
    faults.push(fault('wakes-awake', pointer(path, 'wakes'), 'Only a dormant rule can wake.', 'Add "dormant": true or take "wakes" out.'))
  if (cls.id === 'job' ? rule.about === undefined || book.subjects[rule.about] === undefined : rule.about !== undefined) {
    faults.push(
      fault(
        'about',
        pointer(path, 'about'),
        cls.id === 'job' ? 'A job rule says what it is about.' : 'Only job rules are about a subject.',
        `Subjects are ${Object.keys(book.subjects).join(', ')}.`,
        rule.about,
      ),
    )
  }
  for (const s of rule.sources) if (!book.sources.has(s)) faults.push(unknown(pointer(path, 'sources'), 'source', s, book.sources.keys()))
  for (const c of rule.cautions)
    if (book.cautions[c] === undefined) faults.push(unknown(pointer(path, 'cautions'), 'caution', c, Object.keys(book.cautions)))
  for (const o of rule.then.opens)
    if (book.rules.get(o.replace(':', '.'))?.dormant !== true)
      faults.push(
        fault(
          'opens-unknown',
          pointer(path, 'then', 'opens'),
          `No dormant rule is called ${o.replace(':', '.')}.`,
          'Name a dormant rule as "part:rule".',
          o,
        ),
      )
  const operations = 'operations' in rule.then ? rule.then.operations : []
  for (const o of operations)
    if (book.operations[o] === undefined)
      faults.push(unknown(pointer(path, 'then', 'operations'), 'operation', o, Object.keys(book.operations)))
  for (const p of 'provided' in rule.then ? rule.then.provided : []) {
    if (p.fact !== undefined && factKindOf(book.parts, cls.id, p.fact) === undefined)
      faults.push(
        fault(
          'fact-unknown',
          pointer(path, 'then', 'provided'),
          `Nothing is called ${p.fact}.`,
          'Name a property or derived figure.',
          p.fact,
        ),
      )
    if (p.limit !== undefined && limitKind(book, cls.id, p.limit) === undefined)
      faults.push(
        fault('limit-unknown', pointer(path, 'then', 'provided'), `No limit ${p.limit}.`, 'Name a limit of limits.json.', p.limit),
      )
  }
  for (const [i, p] of ('provided' in rule.then ? rule.then.provided : []).entries()) {
    if (p.holds !== undefined) faults.push(...checkCondition(book, cls, p.holds, pointer(path, 'then', 'provided', i, 'holds')))
  }
  for (const [, name = ''] of rule.says.matchAll(/\{([^}|]+)(?:\|[^{}]*(?:\{\}[^{}]*)*)?\}/g)) {
    const known = name.includes('limit.') ? limitKind(book, cls.id, name) : factKindOf(book.parts, cls.id, name)
    if (known === undefined)
      faults.push(
        fault(
          'fact-unknown',
          pointer(path, 'says'),
          `The reason prints ${name}, which does not exist.`,
          'Name a property, a derived figure or a limit.',
          name,
        ),
      )
  }
  return faults
}

function checkCondition(book: Rulebook, cls: PartClass, condition: Condition, where: string): readonly Fault[] {
  if ('fact' in condition) return checkLeaf(book, cls, condition, where)
  const [key, members] = condition.all !== undefined ? (['all', condition.all] as const) : (['any', condition.any ?? []] as const)
  return members.flatMap((m, i) => checkCondition(book, cls, m, `${where}/${key}/${i}`))
}

function checkLeaf(book: Rulebook, cls: PartClass, leaf: Leaf, where: string): readonly Fault[] {
  const kind = factKindOf(book.parts, cls.id, leaf.fact)
  if (kind === undefined)
    return [
      fault(
        'fact-unknown',
        where,
        `Nothing is called ${leaf.fact}.`,
        'Name a property or derived figure; of another part as "part:name".',
        leaf.fact,
      ),
    ]
  const wrong = (says: string, mend: string): readonly Fault[] => [fault('leaf-kind', where, says, mend, leaf.fact)]
  const { operator, value } = leaf
  if (ORDERING.has(operator) !== (kind.form === 'quantity'))
    return wrong(
      `"${operator}" does not suit ${leaf.fact}.`,
      kind.form === 'quantity' ? 'Use at-most, above, at-least or below.' : 'Use is, is-not, among or not-among.',
    )
  if (kind.form === 'quantity') {
    if (typeof value === 'object' && 'fact' in value) {
      const limit = limitKind(book, cls.id, value.fact)
      if (limit === undefined) return [fault('limit-unknown', where, `No limit ${value.fact}.`, 'Name a limit of limits.json.', value.fact)]
      return limit.kind === kind.kind
        ? []
        : wrong(`${value.fact} is a ${limit.kind}, ${leaf.fact} a ${kind.kind}.`, 'Hold like against like.')
    }
    if (typeof value !== 'string')
      return wrong('A quantity is held against a limit or a typed figure.', 'Write it like "0.060 in" or {"fact": "limit.…"}.')
    try {
      literalMeasure(value, kind.kind)
      return []
    } catch {
      return wrong(`"${value}" does not read as a ${kind.kind}.`, 'Write it like "0.060 in".')
    }
  }
  if ((operator === 'among' || operator === 'not-among') !== Array.isArray(value))
    return wrong(`"${operator}" takes ${operator.includes('among') ? 'a list' : 'one choice'}.`, 'Use is for one, among for several.')
  if (kind.terms === undefined) return []
  const terms = new Set(kind.terms.map(String))
  const strange = (Array.isArray(value) ? value : [value]).filter((v) => !terms.has(String(v)))
  return strange.length === 0 ? [] : wrong(`${leaf.fact} has no choice ${strange.join(', ')}.`, `Its choices are ${[...terms].join(', ')}.`)
}
