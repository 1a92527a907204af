import { html, raw } from 'hono/html'
import type { Disposition } from '../verdict/verdict.ts'
import type { Markup } from './markup.ts'

const SIDE = 40
const FRAME = `M2 2H${SIDE - 2}V${SIDE - 2}H2Z`

/** Hatching at 45 degrees, each line cut to the frame, so that it needs no pattern and no clip. */
const HATCH = [-27, -18, -9, 0, 9, 18, 27]
  .map((shift) => {
    const [low, high] = [Math.max(2, 2 + shift), Math.min(SIDE - 2, SIDE - 2 + shift)]
    return `M${low} ${SIDE - (low - shift)}L${high} ${SIDE - (high - shift)}`
  })
  .join('')

/** The line kinds of a drawing: plain outline, machined face drawn heavy, hatched section, dashed outline. */
const DRAWN: Readonly<Record<Disposition, string>> = {
  reuse: `<path class="line" d="${FRAME}"/>`,
  recondition: `<path class="line" d="${FRAME}"/><path class="heavy" d="M2 4H${SIDE - 2}"/>`,
  replace: `<path class="line" d="${FRAME}"/><path class="line" d="${HATCH}"/>`,
  undetermined: `<path class="line dashed" d="${FRAME}"/>`,
}

/** The mark beside a verdict. The word says it; the mark only helps to find it, in print too. */
export const mark = (disposition: Disposition): Markup =>
  html`<svg class="mark" viewBox="0 0 ${SIDE} ${SIDE}" aria-hidden="true" focusable="false">${raw(DRAWN[disposition])}</svg>`

/** The icon of the page: a contact ring, drawn as on an inspection sheet. */
export const ICON = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><circle cx="16" cy="16" r="14" fill="#f7f4ec" stroke="#1b1d22" stroke-width="2"/><circle cx="16" cy="16" r="8" fill="none" stroke="#1f3f9e" stroke-width="3"/></svg>`
