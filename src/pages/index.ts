/** The page without script: a question and an answer over the counter, and the work order to print. It decides nothing itself. */
import { Hono, type Context, type MiddlewareHandler } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { csrf } from 'hono/csrf'
import { HTTPException } from 'hono/http-exception'
import { StoreTrouble } from '../store/trouble.ts'
import type { Service } from '../usecases/service.ts'
import { answer, question } from './answering.ts'
import { counter, trouble } from './layout.ts'
import { ICON } from './mark.ts'
import { workOrder } from './order.ts'
import { shown } from './reply.ts'
import { dropKey, shopOfBrowser, takeKey } from './shop-key.ts'
import { SHEET_CSS } from './style/sheet.ts'
import { SUBJECTS } from './subjects.ts'

const MOST_BYTES = 64 * 1024
const ASSET_SECONDS = 3600
/** No script from anywhere, no style but our own file, no form that posts elsewhere, no frame round us. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

/** Every page of the counter. It answers GET / and a few addresses of its own, and touches no other. */
export function pages(service: Service): Hono {
  const app = new Hono()
  app.onError(failed)
  app.get('/assets/sheet.css', (c) => asset(c, 'text/css; charset=utf-8', SHEET_CSS))
  app.get('/assets/mark.svg', (c) => asset(c, 'image/svg+xml', ICON))
  app.get('/', ...SAFE, async (c) =>
    shown(c, 200, { title: 'Counter', content: counter(undefined), shop: await shopOfBrowser(service, c), here: '/' }),
  )
  for (const subject of SUBJECTS) {
    app.get(`/${subject.path}`, ...SAFE, (c) => question(service, c, subject))
    app.post(`/${subject.path}`, ...SAFE, (c) => answer(service, c, subject))
  }
  app.post('/key', ...SAFE, (c) => takeKey(service, c))
  app.post('/key/forget', ...SAFE, (c) => dropKey(c))
  app.get('/decisions/:id', ...SAFE, (c) => workOrder(service, c))
  return app
}

const headers: MiddlewareHandler = async (c, next) => {
  await next()
  c.header('content-security-policy', POLICY)
  c.header('x-content-type-options', 'nosniff')
  c.header('referrer-policy', 'same-origin')
  // What a shop's key showed is not to be found by the next one at this browser.
  c.header('cache-control', 'no-store')
}

/** A browser that names its origin must name ours. The host is compared, since a proxy in front may speak TLS for us. */
const fromHere = csrf({
  origin: (origin, c) => (URL.canParse(origin) ? new URL(origin).host : undefined) === (c.req.header('host') ?? new URL(c.req.url).host),
})

const limit = bodyLimit({
  maxSize: MOST_BYTES,
  onError: (c) =>
    shown(c, 413, {
      title: 'Too long',
      here: '/',
      content: trouble(
        'That is more than a form holds',
        'Nothing was judged.',
        'Shorten the entries, or send a whole finding sheet by HTTP or the command line.',
      ),
    }),
})

const SAFE = [headers, fromHere, limit] as const

const asset = (c: Context, type: string, text: string): Response =>
  c.body(text, 200, { 'content-type': type, 'cache-control': `public, max-age=${ASSET_SECONDS}`, 'x-content-type-options': 'nosniff' })

function failed(error: Error, c: Context): Promise<Response> {
  if (error instanceof StoreTrouble && error.code !== 'unexpected') {
    return shown(c, 503, {
      title: 'Ledger',
      here: '/',
      content: trouble('The ledger does not answer', error.message, 'Go back: what you typed is still in the form.'),
    })
  }
  if (error instanceof HTTPException && error.status === 403) {
    return shown(c, 403, {
      title: 'Refused',
      here: '/',
      content: trouble('This form came from another site', 'Nothing was judged.', 'Open the counter here and fill it in again.'),
    })
  }
  throw error
}
