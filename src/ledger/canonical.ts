/**
 * One value, one text: RFC 8785 (JSON Canonicalization Scheme), so that the hash of a decision is the
 * same wherever it is computed. The `canonicalize` library writes the text; this room adds the refusals.
 * Like JSON.stringify, the library drops what JSON can't hold (undefined, functions) or rewrites it (dates,
 * boxed values); in a record that is a silent loss, so such a value is refused before it is written.
 */
import canonicalize from 'canonicalize'
import { fault, pointer, Refused } from '../quantity/fault.ts'
import type { Fault } from '../quantity/fault.ts'

/** Deeper than any record of ours; also what stops a value that contains itself. */
const DEEPEST = 200

/** Enough faults to mend a record by; the rest would only repeat them. */
const MOST_FAULTS = 20

/**
 * The canonical text of a JSON value (RFC 8785).
 * @throws Refused when the value is not JSON: undefined, NaN, an infinity, a bigint, a function, a symbol, a hole
 *   in an array, a class instance (Date, Map, …), a lone surrogate, or nesting deeper than 200 (so also a cycle).
 */
export function canonicalText(value: unknown): string {
  const faults: Fault[] = []
  look(value, [], faults)
  if (faults.length > 0) throw new Refused(faults)
  const text = canonicalize(value)
  if (text === undefined) throw new Refused([notJson([], 'something the canonical form has no text for')])
  return text
}

/** The canonical text of a JSON value as UTF-8 bytes: what is hashed. Refuses as `canonicalText` does. */
export function canonicalBytes(value: unknown): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(canonicalText(value))
}

function look(value: unknown, path: (string | number)[], faults: Fault[]): void {
  if (faults.length >= MOST_FAULTS) return
  switch (typeof value) {
    case 'boolean':
      return
    case 'number':
      if (!Number.isFinite(value)) faults.push(notJson(path, `${value}`))
      return
    case 'string':
      if (!value.isWellFormed()) faults.push(notJson(path, 'text with half a surrogate pair'))
      return
    case 'object':
      if (value !== null) lookInside(value, path, faults)
      return
    default:
      faults.push(notJson(path, typeof value))
  }
}

function lookInside(value: object, path: (string | number)[], faults: Fault[]): void {
  if (path.length >= DEEPEST) {
    faults.push(notJson(path.slice(0, 8), `a value nested deeper than ${DEEPEST}, or within itself,`))
    return
  }
  if (Array.isArray(value)) {
    // A plain index loop visits holes too, as undefined.
    for (let i = 0; i < value.length; i += 1) step(i, value[i])
    return
  }
  const kin: unknown = Object.getPrototypeOf(value)
  if (kin !== Object.prototype && kin !== null) {
    faults.push(notJson(path, `an instance of ${value.constructor?.name ?? 'a class'}`))
    return
  }
  if (Object.getOwnPropertySymbols(value).length > 0) faults.push(notJson(path, 'an object with a symbol for a key'))
  for (const [key, inner] of Object.entries(value)) {
    if (!key.isWellFormed()) faults.push(notJson(path, 'a key with half a surrogate pair'))
    step(key, inner)
  }

  function step(key: string | number, inner: unknown): void {
    path.push(key)
    look(inner, path, faults)
    path.pop()
  }
}

function notJson(path: readonly (string | number)[], what: string): Fault {
  return fault(
    'not-canonical',
    pointer(...path),
    `${what} stands here, which JSON can't hold.`,
    'Give null, true, false, a finite number, a text, a list or a plain object; leave out a key that has no value.',
  )
}
