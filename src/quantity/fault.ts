/**
 * What is wrong with something that was handed in: what, where and how to mend it.
 * Every room reports through this one shape, so that the command line, the page and the HTTP problems
 * all read alike.
 */
export interface Fault {
  /** Stable, kebab-case: scripts rely on it. */
  readonly code: string
  /** JSON Pointer (RFC 6901) into what was handed in; '' is the whole of it. */
  readonly pointer: string
  /** What is wrong, as a sentence. */
  readonly says: string
  /** How to mend it, as a sentence. */
  readonly mend: string
  /** What stood there, shortened; never a person's name. */
  readonly value?: string
  /** Where the fault is a question: the answers on offer, each readable as it stands ("12 thou", "12 mm"). */
  readonly choices?: readonly string[]
}

const SHOWN = 80

/** Builds a fault; `value` is turned into short text so that a hostile input can't flood an answer. */
export function fault(code: string, pointer: string, says: string, mend: string, value?: unknown): Fault {
  const base = { code, pointer, says, mend }
  if (value === undefined) return base
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value))
  return { ...base, value: text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text }
}

/** Joins path segments into a JSON Pointer, escaping as RFC 6901 section 3 asks. */
export function pointer(...segments: readonly (string | number)[]): string {
  return segments.map((s) => `/${String(s).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}

/** Thrown when what was handed in can't be used; carries every fault that was found, not just the first. */
export class Refused extends Error {
  readonly faults: readonly Fault[]
  constructor(faults: readonly Fault[]) {
    super(faults.map((f) => `${f.pointer || '(whole)'}: ${f.says} ${f.mend}`).join('\n'))
    this.name = 'Refused'
    this.faults = faults
  }
}
