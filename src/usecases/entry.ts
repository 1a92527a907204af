import type * as z from 'zod'
import { Refused, type Fault } from '../quantity/fault.ts'
import { shapeFaults } from '../rulebook/shape-faults.ts'

export type EntryRead<T> = { readonly ok: true; readonly entry: T } | { readonly ok: false; readonly faults: readonly Fault[] }

/** Reads what somebody enters, field by field: every fault with its place. A name that can't be used is not repeated. */
export function tryEntry<S extends z.ZodObject>(schema: S, json: unknown, mend: string): EntryRead<z.infer<S>> {
  const parsed = schema.safeParse(json)
  if (parsed.success) return { ok: true, entry: parsed.data }
  return { ok: false, faults: shapeFaults(schema, parsed.error, json, mend).map((f) => (f.pointer === '/by' ? unnamed(f) : f)) }
}

/** The same. @throws Refused */
export function entryFrom<S extends z.ZodObject>(schema: S, json: unknown, mend: string): z.infer<S> {
  const read = tryEntry(schema, json, mend)
  if (!read.ok) throw new Refused(read.faults)
  return read.entry
}

const unnamed = ({ code, pointer, says, mend }: Fault): Fault => ({ code, pointer, says, mend })
