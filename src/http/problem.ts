/**
 * RFC 9457 problem documents: everything that goes wrong is answered in this one shape. `errors` holds the faults: what is wrong, where
 * (a JSON Pointer, RFC 6901, into what was sent; '' is the whole of it) and how to mend it.
 */
import { fault, Refused, type Fault } from '../quantity/fault.ts'
import { StoreTrouble, type TroubleCode } from '../store/trouble.ts'
import { meaningOf } from './problem-codes.ts'

export const PROBLEM_TYPE = 'application/problem+json'

export interface Problem {
  /** A relative reference; GET it for what the code means. */
  readonly type: `/problems/${string}`
  readonly title: string
  readonly status: number
  readonly detail: string
  readonly errors: readonly Fault[]
  /** Given where the service itself failed: quote it when reporting. */
  readonly requestId?: string
}

/** A sheet may hold thousands of faults; so many of them are enough to mend it by, and keep the answer small. */
export const MOST_ERRORS = 100

/** Seconds after which a busy or unreachable database is worth another try. */
const RETRY_AFTER_S = 2

/** Builds a problem from its code and the faults found, of which at least one. The title comes from the table of codes. */
export function problem(status: number, code: string, faults: readonly [Fault, ...Fault[]]): Problem {
  const [first] = faults
  const place = first.pointer === '' ? '' : `${first.pointer}: `
  const more =
    faults.length === 1
      ? ''
      : ` ${faults.length} faults in all${faults.length > MOST_ERRORS ? `; the first ${MOST_ERRORS} are listed` : ''}.`
  return {
    type: `/problems/${code}`,
    title: meaningOf(code).title,
    status,
    detail: `${place}${first.says} ${first.mend}${more}`,
    errors: faults.slice(0, MOST_ERRORS),
  }
}

/** A problem with a single fault, whose code is the problem's own. */
export function oneProblem(
  status: number,
  code: string,
  says: string,
  mend: string,
  at: { readonly pointer?: string; readonly value?: unknown } = {},
): Problem {
  return problem(status, code, [fault(code, at.pointer ?? '', says, mend, at.value)])
}

/** These say that the text could not be read at all; they are the request's fault, not the findings'. */
const UNREADABLE = ['not-json', 'too-deep']

/** What a refused sheet is answered with: 400 when it can't be read, 422 when what it says can't be used. */
export function refusal({ faults }: Refused): Problem {
  const [first, ...rest] = faults
  if (first === undefined) return oneProblem(422, 'sheet-refused', 'The sheet was refused.', 'Compare it with GET /v1/vocabulary.')
  if (UNREADABLE.includes(first.code)) return problem(400, first.code, [first, ...rest])
  // Work that the service never judges is told first and by its own name: mending the rest would not help.
  const declined = faults.find((f) => f.code === 'declined')
  if (declined !== undefined) return problem(422, 'declined', [declined, ...faults.filter((f) => f !== declined)])
  return problem(422, 'sheet-refused', [first, ...rest])
}

type Answered = readonly [status: number, code: string, says: string, mend: string]

const FAILED: Answered = [500, 'unexpected', 'The service failed.', 'Report it with the request id given here.']
const TROUBLE: Readonly<Record<TroubleCode, Answered>> = {
  busy: [503, 'store-busy', 'The ledger is busy and nothing was entered.', 'Send the same request again in a moment.'],
  full: [
    507,
    'store-full',
    'The ledger has no room left and nothing was entered.',
    'Tell whoever runs this service; what is already entered can still be read.',
  ],
  unreachable: [
    503,
    'store-unreachable',
    'The ledger can’t be reached, so there is no answer.',
    'Before sending findings again, look up the job’s decisions: they may have been entered.',
  ],
  unexpected: FAILED,
}

/** What an error is answered with. Of an error that is not one of ours nothing is told but that it happened. */
export function problemOf(error: unknown, requestId: string): Problem {
  if (error instanceof Refused) return refusal(error)
  const [status, code, says, mend] = error instanceof StoreTrouble ? TROUBLE[error.code] : FAILED
  return { ...oneProblem(status, code, says, mend), requestId }
}

/** The answer that carries a problem. */
export function problemResponse(shown: Problem, headers: Readonly<Record<string, string>> = {}): Response {
  const retry = shown.status === 503 ? { 'retry-after': String(RETRY_AFTER_S) } : {}
  return new Response(JSON.stringify(shown), {
    status: shown.status,
    headers: { 'content-type': PROBLEM_TYPE, 'cache-control': 'no-store', ...retry, ...headers },
  })
}

/** Thrown where a request can't go on; `app.onError` answers with the problem it holds. */
export class Stopped extends Error {
  readonly problem: Problem
  readonly headers: Readonly<Record<string, string>>
  constructor(shown: Problem, headers: Readonly<Record<string, string>> = {}) {
    super(shown.detail)
    this.name = 'Stopped'
    this.problem = shown
    this.headers = headers
  }
}
