/** A number as written, before its unit is known; and fractions, which figures and words both lead to. */
import { exact, quotient } from './exact.ts'
import type { Exact } from './exact.ts'
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'

/** A number as written, in whatever unit follows. */
export interface Figure {
  readonly value: Exact
  /** Smallest step that the writing shows: 1 for "12", 0.001 for "1.700", 1/64 for "5/64". */
  readonly step: Exact
  readonly form: 'integer' | 'decimal' | 'leading dot' | 'fraction'
  /** Decimals written. */
  readonly decimals: number
  /** Of a fraction. */
  readonly denominator?: number
  /** The number in figures: "0.012", "1-1/16". */
  readonly text: string
  /** Where the number ends in the text. */
  readonly end: number
  readonly notes: readonly string[]
  /** "1,200" read with the comma between thousands, where the first reading takes it for a decimal comma. */
  readonly thousands?: Figure
  /** Written with a decimal comma, as no inch shop does. */
  readonly comma?: true
  /** "half", "two and a half": said so of thou, of inches and of millimetres alike. */
  readonly halves?: true
  /** "ten-thousandths": ten of them, or tenths of them? */
  readonly hyphened?: true
}

export const isFault = (x: object): x is Fault => 'mend' in x

/** What people cut an inch, a turn or a degree into. */
const DENOMINATORS: ReadonlySet<number> = new Set([2, 3, 4, 5, 6, 8, 10, 16, 32, 64, 100, 128, 1000, 10000])

export const notANumber = (says: string, mend = 'Write it in plain figures with its unit: 0.012 in, 5/64 in, 0.30 mm.'): Fault =>
  fault('not-a-number', '', says, mend)

/** whole + n/d, as a figure; used for digits and for words. */
export function fractionOf(whole: string, n: string, d: string, end: number): Figure | Fault {
  if (n.length > 6 || d.length > 6 || whole.length > 6) return notANumber('A fraction with so many digits is no shop fraction.')
  const denominator = Number(d)
  if (denominator === 0) return notANumber('Nothing can be divided by zero.')
  if (!DENOMINATORS.has(denominator)) {
    return fault(
      'odd-fraction',
      '',
      `${n}/${d} is no fraction that a rule or drill is marked in.`,
      'Halves, quarters, eighths, sixteenths, thirty-seconds and sixty-fourths are read; for two figures, write each with its unit.',
    )
  }
  if (whole !== '0' && Number(n) >= denominator) return notANumber(`${n}/${d} is not less than one.`, 'Write a mixed number like 1-1/16.')
  const value = exact(whole).plus(quotient(n, d))
  const text = whole === '0' ? `${Number(n)}/${denominator}` : `${Number(whole)}-${Number(n)}/${denominator}`
  return { value, step: quotient('1', d), form: 'fraction', decimals: 0, denominator, text, end, notes: [] }
}
