import { fault, type Fault } from '../quantity/fault.ts'
import type { PartClass, Rulebook } from './book.ts'

/** Names listed in a mend before the list would drown the sentence. */
const MOST_LISTED = 40

/** A fault for a name that nothing in the rulebook bears. */
export function unknown(where: string, what: string, id: string, known: Iterable<string>): Fault {
  return fault(`${what}-unknown`, where, `No ${what} is called ${id}.`, `Known are ${[...known].slice(0, MOST_LISTED).join(', ')}.`, id)
}

/** What a limit name of a rule measures, seen from a part class. */
export function limitKind(
  book: Rulebook,
  from: string,
  name: string,
): { readonly form: 'quantity'; readonly kind: NonNullable<ReturnType<PartClass['limits']['get']>>['kind'] } | undefined {
  const colon = name.indexOf(':')
  const [part, own] = colon < 0 ? [from, name] : [name.slice(0, colon), name.slice(colon + 1)]
  const limit = book.parts.get(part)?.limits.get(own.replace(/^limit\./, ''))
  return limit === undefined ? undefined : { form: 'quantity', kind: limit.kind }
}
