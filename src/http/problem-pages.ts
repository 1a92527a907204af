import { Hono } from 'hono'
import { html } from 'hono/html'
import type { DoorEnv } from './env.ts'
import { CODES, codeMeaning } from './problem-codes.ts'
import { oneProblem, Stopped } from './problem.ts'

/** GET /problems/{code}: what a code means; a short page for a browser, JSON for programs. GET /problems lists them all. */
export const problemPages = (): Hono<DoorEnv> =>
  new Hono<DoorEnv>()
    .get('/', (c) => c.json({ codes: CODES.map((code) => codeMeaning(code)) }))
    .get('/:code', (c) => {
      const found = codeMeaning(c.req.param('code'))
      if (found === undefined) throw new Stopped(oneProblem(404, 'not-found', 'There is no such code.', 'GET /problems lists them.'))
      if (!(c.req.header('accept') ?? '').includes('text/html')) return c.json(found)
      return c.html(
        html`<!doctype html>
          <html lang="en">
            <head>
              <meta charset="utf-8" />
              <meta name="viewport" content="width=device-width" />
              <title>${found.title}</title>
            </head>
            <body>
              <main>
                <h1>${found.title}</h1>
                <p>${found.means}</p>
                <p>Code: <code>${found.code}</code></p>
              </main>
            </body>
          </html>`,
      )
    })
