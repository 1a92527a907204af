import { html } from 'hono/html'
import type { Markup } from './markup.ts'

const WIDTH = 240
const EDGE = 14
const BASE = 30

/**
 * A limit as a line on a short strip, the reading above it with its spread (k = 2). Values in one unit; the strip shows
 * where they stand to each other and carries no scale of its own.
 * @param says what the strip shows, for those who do not see it
 */
export function strip(readings: readonly { readonly value: number; readonly u: number }[], limit: number, says: string): Markup {
  const lows = readings.map((r) => r.value - 2 * r.u)
  const highs = readings.map((r) => r.value + 2 * r.u)
  const [least, most] = [Math.min(limit, ...lows), Math.max(limit, ...highs)]
  const room = most > least ? most - least : 1
  const x = (value: number): string => (EDGE + ((value - least) / room) * (WIDTH - 2 * EDGE)).toFixed(1)
  return html`<svg class="strip" viewBox="0 0 ${WIDTH} 42" role="img" aria-label="${says}">
    <path class="thin" d="M2 ${BASE}H${WIDTH - 2}" />
    <path class="limit" d="M${x(limit)} 8V38" />
    ${readings.map((r, i) => html`<path class="spread" d="M${x(lows[i] ?? r.value)} 16v6m0-3H${x(highs[i] ?? r.value)}m0-3v6" /><circle class="reading" cx="${x(r.value)}" cy="19" r="3.5" />`)}
  </svg>`
}
