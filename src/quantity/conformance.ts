/**
 * The probability that a measured thing conforms, after JCGM 106:2012 (normal distribution, no prior knowledge).
 * Shown beside a verdict, rounded; it decides nothing. The normal distribution comes from one pinned pure-JavaScript library.
 */
import normalCdf from '@stdlib/stats-base-dists-normal-cdf'
import type { Measure } from './measure.ts'

/**
 * Probability, 0 to 1, that the true value lies at most at, or at least at, the limit (kept units).
 * An exact value (u = 0) gives 0 or 1. NaN where a number isn't finite or u is negative.
 */
export function probabilityWithin(x: Measure, limit: number, side: 'at-most' | 'at-least'): number {
  if (![x.value, x.u, limit].every(Number.isFinite) || x.u < 0) return Number.NaN
  const room = side === 'at-most' ? limit - x.value : x.value - limit
  return x.u === 0 ? (room >= 0 ? 1 : 0) : normalCdf(room / x.u, 0, 1)
}

/** Probability, 0 to 1, that the true value lies between two limits (kept units); NaN as above or where lo > hi. */
export function probabilityBetween(x: Measure, lo: number, hi: number): number {
  if (!(lo <= hi)) return Number.NaN
  if (x.u === 0) return probabilityWithin(x, lo, 'at-least') * probabilityWithin(x, hi, 'at-most')
  return Math.max(0, probabilityWithin(x, hi, 'at-most') - probabilityWithin(x, lo, 'at-most'))
}
