import type { CompiledBook } from '../verdict/compiled.ts'
import { LOOKED_OVER } from '../verdict/enter.ts'

/** The vocabulary as programs need it: what can be observed on which part, in which units, and how it is asked for. */
export function vocabularyOf(book: CompiledBook): unknown {
  return {
    lookedOver: LOOKED_OVER,
    parts: [...book.book.parts.values()].map((cls) => ({
      part: cls.id,
      place: cls.place,
      one: cls.file.one,
      many: cls.file.many,
      said: cls.file.said,
      properties: cls.file.properties,
      derived: cls.file.derived,
      procedures: cls.file.procedures,
    })),
    instruments: Object.fromEntries(book.book.instruments),
    engines: [...book.book.engines.values()].map(({ id, says, invented, layout, parts, castings, cards }) => ({
      id,
      says,
      invented,
      layout,
      parts,
      castings: Object.keys(castings),
      cards: Object.fromEntries(Object.entries(cards).map(([kind, of]) => [kind, Object.keys(of)])),
    })),
  }
}

/** The rulebook at a glance: every rule by part, with its words and outcome. */
export function rulebookOf(book: CompiledBook, edition: string): unknown {
  return {
    edition,
    rules: [...book.rules.values()].map(({ rule, kind }) => ({
      id: rule.id,
      about: rule.about ?? rule.id.slice(0, rule.id.indexOf('.')),
      kind,
      words: rule.words,
      dormant: rule.dormant ?? false,
    })),
    sources: [...book.book.sources.values()],
  }
}

/** One rule whole, with its limits, sources and cautions spelled out. */
export function ruleOf(book: CompiledBook, id: string): unknown {
  const compiled = book.rules.get(id)
  if (compiled === undefined) return undefined
  const { rule } = compiled
  return {
    ...rule,
    kind: compiled.kind,
    limits: Object.fromEntries(
      [...JSON.stringify([rule.when, rule.appliesWhen ?? null, rule.then, rule.says]).matchAll(/(?:([a-z-]+):)?limit\.([a-z0-9-]+)/g)].map(
        (m) => [m[0], book.book.parts.get(m[1] ?? compiled.part)?.limits.get(m[2] ?? '')],
      ),
    ),
    sources: rule.sources.map((s) => book.book.sources.get(s)),
    cautions: rule.cautions.map((c) => ({ id: c, ...book.book.cautions[c] })),
  }
}
