/** Comparison with a limit under doubt, and Kleene's strong three-valued logic over the answers. Portable: + − × only. */
import type { Measure } from './measure.ts'

export type Answer = 'met' | 'not met' | 'unknown'

export type Ordering = 'at-most' | 'above' | 'at-least' | 'below'

/** A value with the interval that the shop's confidence spans, kept units. */
export interface Spanned extends Measure {
  readonly lo: number
  readonly hi: number
}

/** The interval value ± z·u; z is the stored quantile of the shop's confidence, at least 0. Kept units in and out. */
export function interval(m: Measure, z: number): { lo: number; hi: number } {
  return { lo: m.value - z * m.u, hi: m.value + z * m.u }
}

/** Met for not met and the other way round; unknown stays unknown. */
export function complement(answer: Answer): Answer {
  return answer === 'met' ? 'not met' : answer === 'not met' ? 'met' : 'unknown'
}

/**
 * Is x at most L (above L, at least L, below L)? 'unknown' is too close to call, or a number that isn't finite.
 * "At most" is met when the whole interval lies at or under L and not met when it lies at or over L; an exact value (u = 0) on the
 * limit meets it. "Above" and "below" are the exact complements of "at most" and "at least". Basis: JCGM 106, ISO 14253-1.
 */
export function compare(op: Ordering, x: Spanned, limit: number): Answer {
  if (!Number.isFinite(limit) || !Number.isFinite(x.value) || !Number.isFinite(x.u) || !Number.isFinite(x.lo) || !Number.isFinite(x.hi))
    return 'unknown'
  switch (op) {
    case 'at-most':
      return atMost(x, limit)
    case 'above':
      return complement(atMost(x, limit))
    case 'at-least':
      return atLeast(x, limit)
    case 'below':
      return complement(atLeast(x, limit))
  }
}

function atMost(x: Spanned, limit: number): Answer {
  if (x.u === 0) return x.value <= limit ? 'met' : 'not met'
  return x.hi <= limit ? 'met' : x.lo >= limit ? 'not met' : 'unknown'
}

function atLeast(x: Spanned, limit: number): Answer {
  if (x.u === 0) return x.value >= limit ? 'met' : 'not met'
  return x.lo >= limit ? 'met' : x.hi <= limit ? 'not met' : 'unknown'
}

/** Kleene's "and": not met if any is, else unknown if any is, else met (so met for none). */
export function kleeneAll(answers: readonly Answer[]): Answer {
  return answers.includes('not met') ? 'not met' : answers.includes('unknown') ? 'unknown' : 'met'
}

/** Kleene's "or": met if any is, else unknown if any is, else not met (so not met for none). */
export function kleeneAny(answers: readonly Answer[]): Answer {
  return answers.includes('met') ? 'met' : answers.includes('unknown') ? 'unknown' : 'not met'
}
