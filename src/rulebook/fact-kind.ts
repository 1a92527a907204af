import { FORMULAS, GROUP_FORMULAS } from '../compute/registry.ts'
import type { FactKind, PartClass } from './book.ts'

/**
 * What a fact name of a rule holds, seen from a part class: a quantity of some kind, or terms.
 * Undefined when the vocabulary has no such property or figure.
 */
export function factKindOf(parts: ReadonlyMap<string, PartClass>, from: string, name: string): FactKind | undefined {
  const colon = name.indexOf(':')
  const [part, own] = colon < 0 ? [from, name] : [name.slice(0, colon), name.slice(colon + 1)]
  if (own === 'port') return { form: 'term', terms: ['intake', 'exhaust'] }
  if (part === 'job' && own === 'stage') return { form: 'term', terms: ['received', 'returned'] }
  const cls = parts.get(part)
  const property = cls?.properties.get(own)?.property
  if (property !== undefined) {
    switch (property.kind) {
      case 'yes-no':
        return { form: 'term', terms: [true, false] }
      case 'choice':
        return { form: 'term', terms: Object.keys(property.choices) }
      case 'card':
        return { form: 'term' }
      default:
        return { form: 'quantity', kind: property.kind }
    }
  }
  const count = cls?.counts.get(own)
  if (count !== undefined) return { form: 'quantity', kind: count.as === 'share' ? 'ratio' : 'count' }
  const derived = cls?.derived.get(own)
  const formula = derived === undefined ? undefined : (FORMULAS.get(derived.formula) ?? GROUP_FORMULAS.get(derived.formula))
  return formula === undefined ? undefined : { form: 'quantity', kind: formula.output.kind }
}
