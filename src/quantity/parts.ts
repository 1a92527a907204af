/** A plain text cut into its figure and unit, or into a pair of them: "0.012 in (0.305 mm)", ".012" / 0.30 mm", "0.3 mm = 0.012 in". */
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import { figureAt, spacesEnd } from './figure-at.ts'
import { isFault } from './figure.ts'
import type { Figure } from './figure.ts'

export interface Part {
  readonly figure: Figure
  /** The unit as written, '' where there is none. */
  readonly unit: string
}

export interface Parts {
  readonly first: Part
  /** The same quantity said again. */
  readonly second?: Part
}

const startsNumber = (c: string | undefined): boolean => c !== undefined && ((c >= '0' && c <= '9') || c === '.' || c === '+' || c === '-')

/** A slash parts two figures only where a number follows; in "lb/in" it belongs to the unit. */
function isDivider(s: string, i: number): boolean {
  const c = s[i] ?? ''
  return c === '/' ? startsNumber(s[spacesEnd(s, i + 1)]) : '([=;,'.includes(c)
}

function partAt(s: string, i: number): { part: Part; end: number } | Fault {
  const figure = figureAt(s, i)
  if (isFault(figure)) return figure
  let end = figure.end
  while (end < s.length && s[end] !== ')' && s[end] !== ']' && !isDivider(s, end)) end += 1
  return { part: { figure, unit: s.slice(figure.end, end).trim() }, end }
}

/** One figure or a pair, or what is wrong with the text; linear in its length. */
export function partsOf(s: string): Parts | Fault {
  const one = partAt(s, 0)
  if (isFault(one)) return one
  const first = one.part
  if (one.end === s.length) return { first }
  const divider = s[one.end] ?? ''
  const two = partAt(s, one.end + 1)
  if (isFault(two)) return two
  const closing = divider === '(' ? ')' : divider === '[' ? ']' : ''
  const closed = closing === '' ? two.end === s.length : s[two.end] === closing && two.end + 1 === s.length
  if (!closed)
    return fault(
      'not-one-figure',
      '',
      'There is more here than one figure, or one figure said twice.',
      'Write 0.012 in, or 0.012 in (0.305 mm).',
    )
  return { first, second: two.part }
}
