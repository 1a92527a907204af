import { html } from 'hono/html'
import type { Markup } from './markup.ts'

/** A ruled table under a heading. `body` is one or more <tbody>, or the rows of one. */
export const ruled = (title: string, heads: readonly string[], rows: readonly Markup[], kind = ''): Markup =>
  html`<section>
    <h2>${title}</h2>
    <table class="ruled ${kind}">
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      ${rows}
    </table>
  </section>`

/** A row of cells. */
export const row = (...cells: readonly (Markup | string | number)[]): Markup =>
  html`<tr>
    ${cells.map((cell) => html`<td>${cell}</td>`)}
  </tr>`

/** An empty cell wide enough to write in stands where a row has this. */
export const WRITE = html`<span class="write"></span>`
