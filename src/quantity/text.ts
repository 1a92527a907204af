/**
 * Typed text brought to one plain alphabet before it is read. Anything outside the alphabet is refused by name: signs that
 * can't be seen (direction marks, zero-width characters) could make a figure look other than it is.
 */
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'

export const LONGEST_TEXT = 200

const SAME: Readonly<Record<string, string>> = {
  '\t': ' ',
  '\u00a0': ' ',
  '\u2002': ' ',
  '\u2003': ' ',
  '\u2009': ' ',
  '\u200a': ' ',
  '\u202f': ' ',
  '\u3000': ' ',
  '“': '"',
  '”': '"',
  '„': '"',
  '″': '"',
  '‘': "'",
  '’': "'",
  '′': "'",
  '−': '-',
  '‐': '-',
  '‑': '-',
  '–': '-',
  '—': '-',
  '⁄': '/',
  '∕': '/',
  μ: 'µ',
  º: '°',
  '˚': '°',
  '℃': '°C',
  '℉': '°F',
  '⋅': '·',
  '•': '·',
  '×': '·',
  '½': ' 1/2',
  '¼': ' 1/4',
  '¾': ' 3/4',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
}
const PLAIN = /^[A-Za-z0-9 .,:;=+\-*/()[\]'"°%#^&·²³µ]$/
const BOUND = /^[~≈<>≤≥±]$/
const HIDDEN = /^[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Co}]$/u

const codeOf = (c: string): string => `U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`

/** The text in the plain alphabet, or what is wrong with it. Too long a text is refused before it is looked at. */
export function plainText(typed: string): string | Fault {
  if (typeof typed !== 'string')
    return fault('not-a-number', '', 'A figure comes as text.', 'Send it in quotes, with its unit: "0.012 in".')
  if (typed.length > LONGEST_TEXT) {
    return fault(
      'too-long',
      '',
      `A figure of ${typed.length} characters is no figure.`,
      `Write one figure with its unit, in at most ${LONGEST_TEXT} characters.`,
    )
  }
  let plain = ''
  for (const c of typed.trim()) {
    const same = SAME[c] ?? c
    if (same !== c || PLAIN.test(c)) plain += same
    else if (BOUND.test(c)) {
      return fault(
        'not-one-figure',
        '',
        `"${c}" makes it a bound or a spread, not a reading.`,
        'Write the figure that was read, alone; the instrument tells how sure it is.',
        typed,
      )
    } else if (HIDDEN.test(c)) {
      return fault(
        'hidden-characters',
        '',
        `There is a character that can't be seen (${codeOf(c)}).`,
        'Type the figure afresh instead of pasting it.',
      )
    } else
      return fault(
        'not-a-number',
        '',
        `"${c}" (${codeOf(c)}) has no place in a figure.`,
        'Write it in plain figures with its unit: 0.012 in.',
      )
  }
  plain = plain.trim()
  return plain === ''
    ? fault('not-a-number', '', 'Nothing is written.', 'Write the figure with its unit, or leave the finding out.')
    : plain
}
