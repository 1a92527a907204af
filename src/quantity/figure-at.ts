/** The number at the start of a text: decimals, fractions, mixed numbers, decimal commas, numbers in words. No unit yet. */
import { exact } from './exact.ts'
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import { fractionOf, isFault, notANumber } from './figure.ts'
import type { Figure } from './figure.ts'
import { wordsFigure, wordsFraction } from './words.ts'

const MOST_DIGITS = 30
const MOST_EXPONENT = 30
const isDigit = (c: string | undefined): boolean => c !== undefined && c >= '0' && c <= '9'
const isLetter = (c: string | undefined): boolean => c !== undefined && ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'))

function digitsEnd(s: string, i: number): number {
  let end = i
  while (isDigit(s[end])) end += 1
  return end
}

export function spacesEnd(s: string, i: number): number {
  let end = i
  while (s[end] === ' ') end += 1
  return end
}

/** Reads the number at position i; a sign or the word "minus" may stand before it. */
export function figureAt(s: string, i: number): Figure | Fault {
  const start = spacesEnd(s, i)
  const word = /^(minus|plus) /i.exec(s.slice(start, start + 6))?.[1]?.toLowerCase()
  const sign = s[start] === '-' || word === 'minus' ? '-' : s[start] === '+' || word === 'plus' ? '+' : ''
  const figure = unsignedAt(s, spacesEnd(s, start + (word?.length ?? sign.length)))
  if (isFault(figure) || sign !== '-') return figure
  const negative = (f: Figure): Figure => ({ ...f, value: f.value.neg(), text: `-${f.text}` })
  return figure.thousands === undefined ? negative(figure) : { ...negative(figure), thousands: negative(figure.thousands) }
}

function unsignedAt(s: string, i: number): Figure | Fault {
  if (isLetter(s[i])) return wordsFigure(s, i) ?? notANumber('This does not begin with a number.')
  let end = i
  while (isDigit(s[end]) || ((s[end] === '.' || s[end] === ',') && isDigit(s[end + 1]))) end += 1
  if (end === i) return notANumber('This does not begin with a number.')
  const run = s.slice(i, end)
  const whole = !run.includes('.') && !run.includes(',')
  if (whole) {
    const fraction = fractionAt(s, i, end) ?? wordsFraction(s, run, end)
    if (fraction !== undefined) return fraction
  }
  return decimalOf(s, run, end)
}

/** "5/64", "1-1/16", "1 1/16", "1 and 1/16"; undefined where no fraction follows. */
function fractionAt(s: string, i: number, end: number): Figure | Fault | undefined {
  const direct = slashAndDigits(s, end)
  if (direct !== undefined) return fractionOf('0', s.slice(i, end), direct.digits, direct.end)
  const glue = /^(?: +and +| *& *|-| +)/i.exec(s.slice(end, end + 12))?.[0]
  if (glue === undefined) return undefined
  const from = spacesEnd(s, end + glue.length)
  const to = digitsEnd(s, from)
  if (to === from) return undefined
  const under = slashAndDigits(s, to)
  if (under !== undefined) return fractionOf(s.slice(i, end), s.slice(from, to), under.digits, under.end)
  return glue === '-'
    ? fault('not-one-figure', '', 'These are two figures with a dash between them.', 'Write the one figure that was read.')
    : undefined
}

function slashAndDigits(s: string, i: number): { digits: string; end: number } | undefined {
  const slash = spacesEnd(s, i)
  if (s[slash] !== '/') return undefined
  const from = spacesEnd(s, slash + 1)
  const end = digitsEnd(s, from)
  // "12/0.30 mm" is two figures, not a fraction.
  return end === from || ((s[end] === '.' || s[end] === ',') && isDigit(s[end + 1])) ? undefined : { digits: s.slice(from, end), end }
}

const inThrees = (groups: readonly string[]): boolean =>
  groups.length > 1 && /^[1-9][0-9]{0,2}$/.test(groups[0] ?? '') && groups.slice(1).every((g) => g.length === 3)

function decimalOf(s: string, run: string, runEnd: number): Figure | Fault {
  const exponent = exponentAt(s, runEnd)
  const { power, end } = exponent
  if (Math.abs(power) > MOST_EXPONENT || run.length > MOST_DIGITS)
    return notANumber('No figure of the trade is that large, that small or that long.')
  const make = (whole: string, part: string, notes: readonly string[] = []): Figure => {
    const digits = part === '' ? whole || '0' : `${whole || '0'}.${part}`
    // Only a leading point is the inch machinist's way; a leading comma tells nothing of the unit.
    const form = part === '' ? 'integer' : whole === '' && run[0] === '.' ? 'leading dot' : 'decimal'
    const text = power === 0 ? digits : `${digits}e${power}`
    return {
      value: exact(text),
      step: exact(`1e${power - part.length}`),
      form: power === 0 ? form : 'decimal',
      decimals: part.length,
      text,
      end,
      notes,
    }
  }
  const last = Math.max(run.lastIndexOf('.'), run.lastIndexOf(','))
  if (last < 0) return make(run, '')
  const mark = run[last]
  const [before, after] = [run.slice(0, last), run.slice(last + 1)]
  const groups = before.split(mark === ',' ? '.' : ',')
  const marks = run.split(mark ?? '.').length - 1
  if (marks === 1 && groups.length === 1) {
    if (mark === '.') return make(before, after)
    const comma = { ...make(before, after, ['the comma was read as a decimal point']), comma: true as const }
    return inThrees([before, after])
      ? { ...comma, thousands: make(before + after, '', ['the comma was read as a mark between thousands']) }
      : comma
  }
  if (marks === 1 && inThrees(groups)) return make(groups.join(''), after)
  if (mark === ',' && groups.length === 1 && inThrees(run.split(','))) return make(run.replaceAll(',', ''), '')
  return notANumber('The points and commas do not make one number.', 'Use one decimal point: 0.012.')
}

function exponentAt(s: string, i: number): { power: number; end: number } {
  const none = { power: 0, end: i }
  if (s[i] !== 'e' && s[i] !== 'E') return none
  const signed = s[i + 1] === '-' || s[i + 1] === '+'
  const from = i + 1 + (signed ? 1 : 0)
  const end = digitsEnd(s, from)
  return end === from ? none : { power: Number(s.slice(i + 1, end)), end }
}
