/** What the clients share: a bound on waiting, and a refusal of a URL that does not repeat the URL. */
import { fault, Refused } from '../quantity/fault.ts'

/** How long a server may take to answer, in milliseconds; then it counts as unreachable. */
export const REMOTE_PATIENCE_MS = 15_000

type Fetch = (request: Request) => Promise<Response>

/** A fetch that gives up after so many milliseconds, so that a server that hangs is not waited for. */
export function fetchWithin(ms: number): Fetch {
  return (request) => fetch(request, { signal: AbortSignal.timeout(ms) })
}

/** What is said about a URL that can't be used. The URL is not shown: it may hold a token. */
export function urlRefused(): Refused {
  return new Refused([
    fault(
      'database-url',
      '/DATABASE_URL',
      'The database’s URL is neither a file nor a libSQL server.',
      'Give file:<path> (on Node), libsql://<host> or https://<host>; a ledger is not kept in memory.',
    ),
  ])
}

/** Makes a client; when it does not take the URL, refuses without repeating it. */
export function atUrl<T>(make: () => T): T {
  try {
    return make()
  } catch {
    throw urlRefused()
  }
}
