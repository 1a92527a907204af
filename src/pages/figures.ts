import { html, raw } from 'hono/html'
import type { Markup } from './markup.ts'

const CENTRE = '<path class="centre" d="M60 4V100"/>'

/** The end of a valve stem with its keeper groove, the tip dimensioned; broken off below. */
const TIP = `${CENTRE}<path class="heavy" d="M46 90V52H50V40H46V22L50 18H70L74 22V40H70V52H74V90M46 22H74M46 40H74M46 52H74"/><path class="thin" d="M46 90q7-5 14 0t14 0M78 18H98M78 40H98M93 18V40M91 23l2-5 2 5M91 35l2 5 2-5"/>`

/** A screw-in rocker stud: thread (thin lines at the minor diameter), shank with the contact ring, hex, lower thread. */
const STUD = `${CENTRE}<path class="heavy" d="M50 12L52 10H68L70 12V42H50ZM50 42V68M70 42V68M42 68H78V78H42ZM52 68V78M68 68V78M47 78V94L49 96H71L73 94V78"/><path class="thin" d="M53 12V42M67 12V42M50 78V95M70 78V95"/><path class="dye" d="M50 54H70M50 58H70"/>`

/** A guide top in section with a positive seal on it and the stem through both. */
const SEAL = `${CENTRE}<path class="heavy" d="M54 10V96M66 10V96M46 42V96M74 42V96M46 42H54M66 42H74M38 64V38L46 28H54V42H46V64ZM82 64V38L74 28H66V42H74V64Z"/><path class="thin" d="M46 52L54 44M46 62L54 54M46 72L54 64M46 82L54 74M46 92L54 84M66 52L74 44M66 62L74 54M66 72L74 64M66 82L74 74M66 92L74 84"/>`

/** A compression spring in simplified representation between its retainer and its seat. */
const SPRING = `${CENTRE}<path class="heavy" d="M36 14H84V20H36ZM36 86H84V92H36ZM40 20L80 28 40 36 80 44 40 52 80 60 40 68 80 76 40 84M80 84V86M40 84V86"/><path class="thin" d="M88 20H104M88 86H104M99 20V86M97 25l2-5 2 5M97 81l2 5 2-5"/>`

const FIGURES: Readonly<Record<string, string>> = { tip: TIP, stud: STUD, seal: SEAL, springs: SPRING }

/** The part as a drawing office shows it: heavy outlines, thin hatching and dimension lines, chain-dotted centre line. Decoration only. */
export const figure = (subject: string): Markup =>
  html`<svg class="figure-of" viewBox="28 0 80 104" aria-hidden="true" focusable="false">${raw(FIGURES[subject] ?? '')}</svg>`
