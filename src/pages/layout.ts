import { html } from 'hono/html'
import type { Shop } from '../store/shops.ts'
import { figure } from './figures.ts'
import type { Markup } from './markup.ts'
import { SUBJECTS, type CounterSubject } from './subjects.ts'

export interface PageOptions {
  readonly title: string
  readonly content: Markup
  /** The subject whose tab is open. */
  readonly subject?: CounterSubject
  readonly engine?: string
  readonly shop?: Shop | undefined
  /** Where to come back to after a key was entered. */
  readonly here: string
}

/** A whole page: heading, the four questions, the content, and the shop's key at the foot. No script, nothing from elsewhere. */
export function page({ title, content, subject, engine, shop, here }: PageOptions): Markup {
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>${title} · witnessmark</title>
        <link rel="stylesheet" href="/assets/sheet.css" />
        <link rel="icon" href="/assets/mark.svg" type="image/svg+xml" />
      </head>
      <body>
        <header class="head">
          <a class="name" href="/">witnessmark</a>
          <nav aria-label="Questions">${SUBJECTS.map((s) => tab(s, s === subject, engine))}</nav>
        </header>
        <main>${content}</main>
        <footer class="foot">${keyForm(shop, here)}</footer>
      </body>
    </html>`
}

function tab(subject: CounterSubject, open: boolean, engine: string | undefined): Markup {
  const href = addressOf(subject, engine)
  return open ? html`<a href="${href}" aria-current="page">${subject.title}</a>` : html`<a href="${href}">${subject.title}</a>`
}

/** The address of a question about an engine. */
export const addressOf = (subject: CounterSubject, engine: string | undefined): string =>
  `/${subject.path}${engine === undefined ? '' : `?engine=${encodeURIComponent(engine)}`}`

function keyForm(shop: Shop | undefined, here: string): Markup {
  const back = html`<input type="hidden" name="back" value="${here}" />`
  if (shop !== undefined) {
    return html`<form method="post" action="/key/forget" class="key">
      ${back}
      <p>Asking for <strong>${shop.name}</strong>: its own limits apply.</p>
      <button>Forget the key</button>
    </form>`
  }
  return html`<form method="post" action="/key" class="key">
    ${back}
    <label for="key">Shop key</label>
    <input id="key" name="key" type="password" autocomplete="off" spellcheck="false" aria-describedby="key-why" required />
    <button>Use it</button>
    <p id="key-why">Without a key, the trade’s own figures decide and nothing can be entered in a ledger.</p>
  </form>`
}

/** A page that says what is wrong and where to go. */
export const trouble = (title: string, says: string, mend: string): Markup =>
  html`<h1>${title}</h1>
    <p class="lead">${says}</p>
    <p>${mend}</p>
    <p><a href="/">Back to the counter</a></p>`

/** The front of the counter: what this is, and the four questions. */
export function counter(engine: string | undefined): Markup {
  return html`<h1>What is on the bench?</h1>
    <p class="lead">
      Say what was found on a part. The answer is a verdict with its reason, its limits and where each limit comes from. What nobody
      measured stays open.
    </p>
    <ul class="questions">
      ${SUBJECTS.map(
        (s) =>
          html`<li>
            <a href="${addressOf(s, engine)}">${figure(s.path)}<strong>${s.title}</strong><span>${s.asks}</span></a>
          </li>`,
      )}
    </ul>`
}
