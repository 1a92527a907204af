import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { Rulebook } from './book.ts'
import { literalMeasure } from './literal.ts'
import { unknown } from './named.ts'

/** That every figure of the engines' sheets and cards belongs to a property or limit, and reads. */
export function checkEngines(book: Rulebook): readonly Fault[] {
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
