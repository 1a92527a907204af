/** Numbers said in words: "twelve", "half a", "one and a half", "three sixteenths", "point three"; up to ninety-nine. */
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import { exact } from './exact.ts'
import { fractionOf, isFault } from './figure.ts'
import type { Figure } from './figure.ts'

const SMALL = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
]
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']
/** Singular; a plural s is allowed. Two words where the hyphen stands. */
const PARTS: Readonly<Record<string, number>> = {
  half: 2,
  halve: 2,
  quarter: 4,
  fourth: 4,
  eighth: 8,
  sixteenth: 16,
  'thirty-second': 32,
  'sixty-fourth': 64,
}

/** Up to quarters, the word alone does not tell the unit; sixteenths are of an inch. */
const HALVES = 4

interface Word {
  readonly text: string
  readonly end: number
  /** A hyphen, not a space, joins it to the next. */
  readonly hyphen: boolean
}

function wordsFrom(s: string, i: number): readonly Word[] {
  const found: Word[] = []
  for (const m of s.slice(i).matchAll(/([A-Za-z]+)([ -]*)/gy)) {
    found.push({ text: (m[1] ?? '').toLowerCase(), end: i + m.index + (m[1] ?? '').length, hyphen: (m[2] ?? '').startsWith('-') })
  }
  return found
}

interface Counted {
  readonly n: number
  /** Index of the next word. */
  readonly next: number
}

function cardinal(words: readonly Word[], at: number): Counted | undefined {
  const first = words[at]?.text ?? ''
  const small = SMALL.indexOf(first)
  if (small >= 0) return { n: small, next: at + 1 }
  const tens = TENS.indexOf(first)
  if (tens < 0) return undefined
  const ones = SMALL.indexOf(words[at + 1]?.text ?? '')
  return ones >= 1 && ones <= 9 ? { n: (tens + 2) * 10 + ones, next: at + 2 } : { n: (tens + 2) * 10, next: at + 1 }
}

/** "sixteenths", "thirty-second": the denominator, and the index of the next word. */
function part(words: readonly Word[], at: number): Counted | undefined {
  const [one, two] = [words[at]?.text ?? '', words[at + 1]?.text ?? '']
  for (const [text, next] of [
    [`${one}-${two}`, at + 2],
    [one, at + 1],
  ] as const) {
    const n = PARTS[text] ?? (text.endsWith('s') ? PARTS[text.slice(0, -1)] : undefined)
    if (n !== undefined) return { n, next }
  }
  return undefined
}

const isArticle = (word: Word | undefined): boolean => word?.text === 'a' || word?.text === 'an'

/** "a half", "quarter", "three sixteenths" from a word on. */
function share(words: readonly Word[], at: number): { n: number; d: number; next: number } | undefined {
  const bare = part(words, isArticle(words[at]) ? at + 1 : at)
  if (bare !== undefined) return { n: 1, d: bare.n, next: bare.next }
  const n = cardinal(words, at)
  const d = n === undefined ? undefined : part(words, n.next)
  return n === undefined || d === undefined || n.n >= d.n ? undefined : { n: n.n, d: d.n, next: d.next }
}

function spokenFraction(whole: string, n: string, d: number, end: number): Figure | Fault {
  const figure = fractionOf(whole, n, String(d), end)
  return d > HALVES || isFault(figure) ? figure : { ...figure, halves: true }
}

const endOf = (words: readonly Word[], next: number): number => words[next - 1]?.end ?? 0

function counted(words: readonly Word[], n: number, next: number): Figure {
  const last = words[next - 1]
  const hyphened = last?.text === 'ten' && last.hyphen ? { hyphened: true as const } : {}
  return {
    value: exact(String(n)),
    step: exact('1'),
    form: 'integer',
    decimals: 0,
    text: String(n),
    end: endOf(words, next),
    notes: [],
    ...hyphened,
  }
}

/** The number that words at position i say; undefined when they say none. */
export function wordsFigure(s: string, i: number): Figure | Fault | undefined {
  const words = wordsFrom(s, i)
  const whole = share(words, 0)
  if (whole !== undefined) return spokenFraction('0', String(whole.n), whole.d, endOf(words, whole.next))
  const count = cardinal(words, 0) ?? (isArticle(words[0]) && words.length > 1 ? { n: 1, next: 1 } : undefined)
  const after = words[count?.next ?? 0]?.text
  if (after === 'point') return pointFigure(words, count?.n ?? 0, (count?.next ?? 0) + 1)
  if (count === undefined) return undefined
  if (after === 'hundred' || after === 'thousand') {
    return fault('not-a-number', '', 'Number words are read up to ninety-nine.', 'Write this one in figures.')
  }
  return andShare(words, String(count.n), count.next) ?? counted(words, count.n, count.next)
}

function pointFigure(words: readonly Word[], whole: number, from: number): Figure | undefined {
  let next = from
  let digits = ''
  for (;;) {
    const text = words[next]?.text ?? ''
    const digit = text === 'oh' || text === 'nought' ? 0 : SMALL.indexOf(text)
    if (digit < 0 || digit > 9) break
    digits += String(digit)
    next += 1
  }
  if (digits === '') return undefined
  const text = `${whole}.${digits}`
  return {
    value: exact(text),
    step: exact(`1e-${digits.length}`),
    form: 'decimal',
    decimals: digits.length,
    text,
    end: endOf(words, next),
    notes: [],
  }
}

function andShare(words: readonly Word[], whole: string, at: number): Figure | Fault | undefined {
  if (words[at]?.text !== 'and') return undefined
  const more = share(words, at + 1)
  return more === undefined ? undefined : spokenFraction(whole, String(more.n), more.d, endOf(words, more.next))
}

/** Digits followed by words: "3 sixteenths", "2 and a half". */
export function wordsFraction(s: string, digits: string, end: number): Figure | Fault | undefined {
  const gap = s[end] === ' ' || s[end] === '-' ? 1 : 0
  const words = gap === 0 ? [] : wordsFrom(s, end + gap)
  const d = part(words, 0)
  if (d !== undefined && digits.length <= 2 && Number(digits) < d.n) return spokenFraction('0', digits, d.n, endOf(words, d.next))
  return andShare(words, digits, 0)
}
