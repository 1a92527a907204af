/** What stands round every route: request ids, security headers, and answers for what goes wrong. */
import type { ErrorHandler, Hono, MiddlewareHandler, NotFoundHandler } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { methodNotAllowed } from 'hono/method-not-allowed'
import { requestId } from 'hono/request-id'
import { secureHeaders } from 'hono/secure-headers'
import type { DoorEnv } from './env.ts'
import { oneProblem, problemOf, problemResponse, Stopped } from './problem.ts'

/** Told to whoever runs the service when it failed, and to nobody else: an error's own words may hold a piece of what was sent. */
export type Report = (line: string) => void

/** Puts the guards on an app. To be called before its routes are added. */
export function guard(app: Hono<DoorEnv>, report: Report): void {
  app.use(requestId())
  // The id that was set above does not reach a response that was built without the context, as problems are.
  app.use(async (c, next) => {
    await next()
    c.header('x-request-id', c.get('requestId'))
  })
  // An answer of this door needs nothing but itself. What pages need more, they say themselves, and that stands.
  app.use(
    secureHeaders({
      contentSecurityPolicy: { defaultSrc: ["'none'"], baseUri: ["'none'"], formAction: ["'none'"], frameAncestors: ["'none'"] },
      xFrameOptions: 'DENY',
      // Whoever puts this behind TLS answers for their other host names themselves.
      strictTransportSecurity: 'max-age=15552000',
      overwrite: false,
    }),
  )
  app.use(wrongMethod(app))
  app.notFound(nothingHere)
  app.onError(failed(report))
}

const wrongMethod = (app: Hono<DoorEnv>): MiddlewareHandler<DoorEnv> =>
  methodNotAllowed({
    app,
    onMethodNotAllowed: (c, methods) => {
      const allow = methods.join(', ')
      return problemResponse(oneProblem(405, 'method-not-allowed', `${c.req.method} does not work here.`, `Use ${allow}.`), { allow })
    },
  })

const nothingHere: NotFoundHandler<DoorEnv> = () =>
  problemResponse(
    oneProblem(
      404,
      'not-found',
      'There is nothing at this address.',
      'GET / is the form; README.md shows what can be asked, GET /v1/vocabulary what may stand on a sheet; GET /v1/vocabulary is a place to start.',
    ),
  )

const failed =
  (report: Report): ErrorHandler<DoorEnv> =>
  (error, c) => {
    if (error instanceof Stopped) return problemResponse(error.problem, error.headers)
    if (error instanceof HTTPException && error.res !== undefined) return error.getResponse()
    const shown = problemOf(error, c.get('requestId'))
    if (shown.status >= 500)
      report(
        `${c.get('requestId')} ${c.req.method} ${c.req.path}: ${error.name}: ${error.message}${shown.status === 500 ? `\n${framesOf(error)}` : ''}`,
      )
    return problemResponse(shown)
  }

/** The places of a stack without the message above them, which may repeat what was sent. */
const framesOf = (error: Error): string =>
  (error.stack ?? '')
    .split('\n')
    .filter((line) => /^\s+at /.test(line))
    .join('\n')
