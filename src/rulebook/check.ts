import { FORMULAS, GROUP_FORMULAS } from '../compute/registry.ts'
import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from './book.ts'
import { checkEngines } from './check-engine.ts'
import { checkRule } from './check-rule.ts'
import { factKindOf } from './fact-kind.ts'
import { limitKind, unknown } from './named.ts'

/** At most six required checks a part class, so that reuse can be had in a working day. */
const MOST_CHECKS = 6

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
    if (derived.grid !== undefined) {
      faults.push(...checkGrid(cls, derived.formula, derived.grid, where))
      continue
    }
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
  for (const [name, { part, that }] of cls.counts) {
    if (!book.parts.has(part)) faults.push(unknown(pointer(path, 'counts', name, 'part'), 'part', part, book.parts.keys()))
    if (typeof that === 'object' && !book.rules.has(that.rule))
      faults.push(unknown(pointer(path, 'counts', name, 'that'), 'rule', that.rule, book.rules.keys()))
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
  for (const op of [...cls.file.routine, ...cls.file.fitting])
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

function checkGrid(cls: PartClass, formula: string, grid: string, where: string): readonly Fault[] {
  const property = cls.properties.get(grid)?.property
  if (!GROUP_FORMULAS.has(formula))
    return [fault('formula-unknown', where, `No formula over a grid is called ${formula}.`, 'See the registry of src/compute.', formula)]
  if (property === undefined || !('readings' in property) || property.readings === undefined)
    return [unknown(where, 'grid', grid, cls.properties.keys())]
  return []
}

function isChoice(
  property: { readonly kind: string; readonly choices?: Readonly<Record<string, unknown>> },
  answer: string | boolean,
): boolean {
  return property.kind === 'yes-no' ? typeof answer === 'boolean' : typeof answer === 'string' && property.choices?.[answer] !== undefined
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
