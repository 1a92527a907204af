import { styleText } from 'node:util'
import { UNITS } from '../quantity/units.ts'

/** How words are set off on a terminal; plain where there is none. */
export interface Ink {
  readonly heading: (text: string) => string
  readonly strong: (text: string) => string
  readonly hazard: (text: string) => string
  readonly faint: (text: string) => string
}

const same = (text: string): string => text
export const PLAIN: Ink = { heading: same, strong: same, hazard: same, faint: same }
const styled =
  (format: Parameters<typeof styleText>[0]) =>
  (text: string): string =>
    styleText(format, text, { validateStream: false })
export const TERMINAL: Ink = {
  heading: styled(['bold', 'blue']),
  strong: styled('bold'),
  hazard: styled(['bold', 'red']),
  faint: styled('dim'),
}

/** Colour only on a terminal, and never where NO_COLOR is set (no-color.org) or the terminal is dumb. */
export function inkFor(stream: { readonly isTTY?: boolean }, env: Readonly<Record<string, string | undefined>>): Ink {
  const plain = stream.isTTY !== true || (env['NO_COLOR'] ?? '') !== '' || env['TERM'] === 'dumb'
  return plain ? PLAIN : TERMINAL
}

/** Text from a sheet as it may safely stand on a terminal: no control or formatting characters. */
export const plainly = (text: string): string => text.replace(/[\p{Cc}\p{Cf}]+/gu, ' ').trim()

const SYMBOLS = [...new Set(UNITS.map((unit) => unit.symbol))]
  .filter((symbol) => symbol !== '')
  .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'))
/** A figure and its unit, which stay on one line. */
const FIGURE = new RegExp(`(?<=\\d) (?=(?:${SYMBOLS.join('|')})(?![\\p{L}\\d]))`, 'gu')
const TOGETHER = '\u00A0'

/** Breaks text into lines of at most `width` columns; a word that is longer stands on a line of its own. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  const words = plainly(text).replace(FIGURE, TOGETHER).split(/ +/)
  // Figures that follow one another may be more than a line holds; then each word breaks where it must.
  for (const word of words.flatMap((w) => (w.length > width ? w.split(TOGETHER) : [w.replaceAll(TOGETHER, ' ')]))) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return line === '' ? lines : [...lines, line]
}

/** Wrapped text behind a mark: the first line after `mark`, the rest under it. */
export function hanging(mark: string, text: string, columns: number, ink: (text: string) => string = same): readonly string[] {
  const under = ' '.repeat(mark.length)
  return wrap(text, columns - mark.length).map((line, i) => `${i === 0 ? mark : under}${ink(line)}`)
}

/** Items in a frame with a title, each behind a dash. */
export function boxed(title: string, items: readonly string[], columns: number, ink: (text: string) => string): readonly string[] {
  const inner = columns - 4
  const rows = items.flatMap((item) => wrap(item, inner - 2).map((line, i) => `${i === 0 ? '– ' : '  '}${line}`))
  return [
    ink(`┌─ ${title} ${'─'.repeat(Math.max(columns - title.length - 5, 0))}┐`),
    ...rows.map((row) => `${ink('│')} ${row.padEnd(inner)} ${ink('│')}`),
    ink(`└${'─'.repeat(columns - 2)}┘`),
  ]
}
