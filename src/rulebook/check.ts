import { FORMULAS } from '../compute/registry.ts'
import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from './book.ts'
import { factKindOf } from './fact-kind.ts'
import { literalMeasure } from './literal.ts'
import type { Condition, Leaf, Rule } from './schema/rule.ts'

/** At most six required checks a part class, so that reuse can be had in a working day. */
const MOST_CHECKS = 6
/** Names listed in a mend before the list would drown the sentence. */
const MOST_LISTED = 40
const ORDERING = new Set(['at-most', 'above', 'at-least', 'below'])

/** Everything that one file can't say of itself: that what it names exists, and means the same kind of thing there. */
export function checkBook(book: Rulebook): readonly Fault[] {
  return [...book.parts.values()]
    .flatMap((cls) => [...checkPart(book, cls), ...cls.rules.flatMap((rule) => checkRule(book, cls, rule))])
    .concat(checkJob(book), checkEngines(book))
}

function checkPart(book: Rulebook, cls: PartClass): readonly Fault[] {
  const path = `${cls.id}/properties.json`
  const faults: Fault[] = []
  for (const [name, { property }] of cls.properties) {
    const instruments = 'instruments' in property ? property.instruments : []
    for (const id of instruments)
      if (!book.instruments.has(id))
        faults.push(unknown(pointer(path, 'properties', name, 'instruments'), 'instrument', id, book.instruments.keys()))
  }
  for (const [name, derived] of cls.derived) {
    const where = pointer(path, 'derived', name)
    const formula = FORMULAS.get(derived.formula)
    if (formula === undefined)
      faults.push(
        fault(
          'formula-unknown',
          where,
          `No formula ${derived.formula}.`,
          'Formulas live in src/compute; see its registry.',
          derived.formula,
        ),
      )
    else {
      const [needed, given] = [Object.keys(formula.inputs).sort().join(', '), Object.keys(derived.inputs).sort().join(', ')]
      if (needed !== given)
        faults.push(fault('inputs-differ', where, `The formula takes ${needed}; given are ${given}.`, 'Name each input once.'))
      for (const [input, source] of Object.entries(derived.inputs)) {
        const kind = source.includes('limit.') ? limitKind(book, cls.id, source) : factKindOf(book.parts, cls.id, source)
        const wants = formula.inputs[input]?.kind
        if (kind === undefined)
          faults.push(
            fault(
              'fact-unknown',
              pointer(path, 'derived', name, 'inputs', input),
              `Nothing is called ${source}.`,
              'Name a property, a derived figure or a limit.',
              source,
            ),
          )
        else if (kind.form !== 'quantity' || (wants !== undefined && kind.kind !== wants))
          faults.push(
            fault(
              'kind-differs',
              pointer(path, 'derived', name, 'inputs', input),
              `${source} is no ${wants ?? 'quantity'}.`,
              'Give the formula a quantity of its kind.',
              source,
            ),
          )
      }
    }
  }
  for (const [id, procedure] of Object.entries(cls.file.procedures)) {
    for (const [name, answer] of Object.entries(procedure.answers)) {
      const entry = cls.properties.get(name)
      const where = pointer(path, 'procedures', id, 'answers', name)
      if (entry === undefined) faults.push(unknown(where, 'property', name, cls.properties.keys()))
      else if (!entry.property.visual)
        faults.push(
          fault(
            'not-visual',
            where,
            `${name} is not found by looking.`,
            'A procedure answers visual properties only; mark it visual or take it out.',
          ),
        )
      else if (!isChoice(entry.property, answer))
        faults.push(fault('choice-unknown', where, `${name} has no choice ${JSON.stringify(answer)}.`, 'Use one of its choices.', answer))
    }
  }
  for (const op of cls.file.routine)
    if (book.operations[op] === undefined) faults.push(unknown(pointer(path, 'routine'), 'operation', op, Object.keys(book.operations)))
  for (const [id, limit] of cls.limits)
    for (const d of limit.defaults)
      if (!book.sources.has(d.source))
        faults.push(unknown(pointer(`${cls.id}/limits.json`, 'limits', id), 'source', d.source, book.sources.keys()))
  const checks = new Map<string, number>()
  for (const r of cls.rules)
    if ('check' in r.then && r.dormant !== true) checks.set(r.about ?? cls.id, (checks.get(r.about ?? cls.id) ?? 0) + 1)
  for (const [about, n] of checks)
    if (n > MOST_CHECKS)
      faults.push(
        fault(
          'checks-too-many',
          pointer(cls.id),
          `${about} has ${n} required checks.`,
          `Keep to ${MOST_CHECKS}, or let some sleep until opened.`,
        ),
      )
  return faults
}

function isChoice(
  property: { readonly kind: string; readonly choices?: Readonly<Record<string, unknown>> },
  answer: string | boolean,
): boolean {
  return property.kind === 'yes-no' ? typeof answer === 'boolean' : typeof answer === 'string' && property.choices?.[answer] !== undefined
}

function checkRule(book: Rulebook, cls: PartClass, rule: Rule): readonly Fault[] {
  const path = `${rule.id.replace('.', '/')}.json`
  const faults: Fault[] = []
  for (const [which, condition] of [
    ['appliesWhen', rule.appliesWhen],
    ['wakes', rule.wakes],
    ['when', rule.when],
  ] as const) {
    if (condition !== undefined) faults.push(...checkCondition(book, cls, condition, pointer(path, which)))
  }
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

function limitKind(
  book: Rulebook,
  from: string,
  name: string,
): { readonly form: 'quantity'; readonly kind: NonNullable<ReturnType<PartClass['limits']['get']>>['kind'] } | undefined {
  const colon = name.indexOf(':')
  const [part, own] = colon < 0 ? [from, name] : [name.slice(0, colon), name.slice(colon + 1)]
  const limit = book.parts.get(part)?.limits.get(own.replace(/^limit\./, ''))
  return limit === undefined ? undefined : { form: 'quantity', kind: limit.kind }
}

function checkJob(book: Rulebook): readonly Fault[] {
  const stages = new Set(book.order.stages.map((s) => s.id))
  return Object.entries(book.operations).flatMap(([id, op]) => [
    ...(stages.has(op.stage) ? [] : [unknown(pointer('job/operations.json', 'operations', id, 'stage'), 'stage', op.stage, stages)]),
    ...op.insteadOf
      .filter((o) => book.operations[o] === undefined)
      .map((o) => unknown(pointer('job/operations.json', 'operations', id, 'insteadOf'), 'operation', o, Object.keys(book.operations))),
    ...op.cautions
      .filter((c) => book.cautions[c] === undefined)
      .map((c) => unknown(pointer('job/operations.json', 'operations', id, 'cautions'), 'caution', c, Object.keys(book.cautions))),
  ])
}

function checkEngines(book: Rulebook): readonly Fault[] {
  const faults: Fault[] = []
  for (const engine of book.engines.values()) {
    const path = `engines/${engine.id}.json`
    for (const part of engine.parts)
      if (!book.parts.has(part)) faults.push(unknown(pointer(path, 'parts'), 'part', part, book.parts.keys()))
    const layers = [
      [path, engine] as const,
      ...Object.entries(engine.castings).map(([id, c]) => [`${path}#castings/${id}`, c] as const),
      ...Object.entries(engine.cards).flatMap(([kind, cards]) =>
        Object.entries(cards).map(([id, c]) => [`${path}#cards/${kind}/${id}`, c] as const),
      ),
    ]
    for (const [where, layer] of layers) {
      for (const [part, facts] of Object.entries(layer.facts))
        for (const name of Object.keys(facts))
          if (!book.parts.get(part)?.properties.has(name))
            faults.push(unknown(pointer(where, 'facts', part), 'property', name, book.parts.get(part)?.properties.keys() ?? []))
      for (const [part, limits] of Object.entries(layer.limits)) {
        for (const [id, value] of Object.entries(limits)) {
          const limit = book.parts.get(part)?.limits.get(id)
          if (limit === undefined)
            faults.push(unknown(pointer(where, 'limits', part), 'limit', id, book.parts.get(part)?.limits.keys() ?? []))
          else
            for (const text of typeof value === 'string' ? [value] : [value.intake, value.exhaust]) {
              try {
                literalMeasure(text, limit.kind)
              } catch {
                faults.push(
                  fault(
                    'figure-unreadable',
                    pointer(where, 'limits', part, id),
                    `"${text}" does not read as a ${limit.kind}.`,
                    'Write it like "0.060 in".',
                    text,
                  ),
                )
              }
            }
        }
      }
    }
  }
  return faults
}

function unknown(where: string, what: string, id: string, known: Iterable<string>): Fault {
  return fault(`${what}-unknown`, where, `No ${what} is called ${id}.`, `Known are ${[...known].slice(0, MOST_LISTED).join(', ')}.`, id)
}
