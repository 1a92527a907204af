/** What a sheet is held to: worked out from the rules and figures by hand, in the trade's own units. */
export interface Expected {
  /** Verdicts of parts by class and disposition: positions apart by spaces. */
  readonly parts: Readonly<Record<string, Readonly<Partial<Record<Disposition, string>>>>>
  /** Classes whose parts go with a set, and the subject that decides. */
  readonly governed: Readonly<Record<string, string>>
  /** Verdicts on the job as a whole. */
  readonly job: Readonly<Record<string, Disposition>>
  readonly comparisons: readonly Comparison[]
  /** Figures that the words of a verdict must show. */
  readonly says: Readonly<Record<string, readonly string[]>>
  /** What is asked first of a part that waits, and why. */
  readonly waits: Readonly<Record<string, Waiting>>
  /** Parts list: how many of each. */
  readonly list: Readonly<Record<string, number>>
  /** Lines of which at least so many must be there, by a word of their name; the trade may owe more. */
  readonly atLeast: Readonly<Record<string, number>>
  /** Operations in working order, with the positions of those that have any. */
  readonly order: readonly string[]
  /** Warnings that hang on what was found or chosen, beside those that every stripped head gets. */
  readonly warns: readonly string[]
}

export type Disposition = 'reuse' | 'recondition' | 'replace' | 'undetermined'

/** One comparison of a verdict: values and doubts in kept units, nearest to the trade's writing. */
export interface Comparison {
  readonly at: string
  readonly rule: string
  readonly fact: string
  readonly answer: 'met' | 'not met' | 'unknown'
  /** The reading nearest the limit, or the only one. */
  readonly value: number
  readonly u?: number
  readonly limit: number
  /** Whose figure the limit is. */
  readonly from: 'maker' | 'card' | 'trade'
  readonly safeSide?: true
  /** Set on limits that are only remembered and that the foreman adopted. */
  readonly adopted?: true
}

export interface Waiting {
  readonly fact: string
  readonly why: string
  readonly better?: readonly string[]
}

/** Kept units: millimetre, newton, newton metre. Exact by definition (NIST SP 811, appendix B.8). */
export const inch = 25.4
export const lbf = 4.4482216152605
export const lbfInch = (lbf * inch) / 1000

/** Standard doubt of a figure written in steps of d: anywhere within half a step either way, d ÷ 2√3 (JCGM 100, 4.3.7). */
export const stepDoubt = (d: number): number => d / (2 * Math.sqrt(3))

export const all = (cylinders: number): string => Array.from({ length: cylinders }, (_, i) => `${i + 1}I ${i + 1}E`).join(' ')
