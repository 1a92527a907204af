/**
 * The one error the store throws. The drivers' own errors hold SQL and bound parameters, and those are people's names
 * and findings; so their message, stack and cause never leave this room. What stays is a code to act on, the
 * driver's own code, and for a broken constraint the names of its columns.
 */

/** busy: try again. full: make room. unreachable: it may or may not have been written. unexpected: a fault of ours. */
export type TroubleCode = 'busy' | 'full' | 'unreachable' | 'unexpected'

const SAYS: Readonly<Record<TroubleCode, readonly [says: string, mend: string]>> = {
  busy: ['The database is busy', 'Nothing was written; try again in a moment.'],
  full: ['The database has no room left', 'Nothing was written; free disk space or raise the quota, then try again.'],
  unreachable: [
    'The database can’t be reached',
    'Check DATABASE_URL, its token and the network; look the entry up before entering it again.',
  ],
  unexpected: ['The database refused the statement', 'This is a fault of the program or its schema; report it with the detail given here.'],
}

export class StoreTrouble extends Error {
  readonly code: TroubleCode
  /** What the store was doing, in words; never what it did it with. */
  readonly during: string
  /** The driver's own code, as "SQLITE_BUSY" or "HTTP 401". */
  readonly detail: string
  /** Columns of the constraint that broke, as "receipts.endpoint, receipts.message_id". */
  readonly broken: string | undefined

  constructor(code: TroubleCode, during: string, detail: string, broken?: string) {
    const [says, mend] = SAYS[code]
    super(`${says} while ${during} (${broken === undefined ? detail : `${detail}: ${broken}`}). ${mend}`)
    this.name = 'StoreTrouble'
    this.code = code
    this.during = during
    this.detail = detail
    this.broken = broken
  }
}

/** Runs what asks the database, and lets nothing but StoreTrouble out. */
export async function guarded<T>(during: string, ask: () => Promise<T>): Promise<T> {
  try {
    return await ask()
  } catch (error) {
    throw error instanceof StoreTrouble ? error : troubleFrom(error, during)
  }
}

/** Reads a driver's error; of its words only the names of a broken constraint's columns are kept. */
export function troubleFrom(error: unknown, during: string): StoreTrouble {
  const chain = causes(error)
  const status = chain.map((c) => c.status).find((s) => s !== undefined)
  const codes = chain.map((c) => c.code).filter((c) => c !== undefined)
  const detail = status === undefined ? (codes[0] ?? 'NO_CODE') : `HTTP ${status}`
  const broken = chain.map((c) => CONSTRAINT.exec(c.message)?.[1]).find((b) => b !== undefined)

  if (codes.some((c) => BUSY.test(c)) || status === 429) return new StoreTrouble('busy', during, detail)
  if (codes.some((c) => FULL.test(c)) || status === 507) return new StoreTrouble('full', during, detail)
  if (status !== undefined || codes.some((c) => UNREACHABLE.test(c)) || chain.some(lostConnection)) {
    return new StoreTrouble('unreachable', during, detail)
  }
  return new StoreTrouble('unexpected', during, detail, broken)
}

// Result codes: https://www.sqlite.org/rescode.html; the rest are libSQL's server's and client's, and Node's for sockets.
const BUSY = /^(?:SQLITE_BUSY|SQLITE_LOCKED|TRANSACTION_TIMEOUT|TRANSACTION_BUSY)/
const FULL = /^(?:SQLITE_FULL|BLOCKED|ENOSPC|EDQUOT)/
const UNREACHABLE = /^(?:SQLITE_CANTOPEN|SQLITE_IOERR|SQLITE_NOTADB|SERVER_ERROR|HRANA_|CLIENT_CLOSED|PROXY_ERROR|UND_ERR_|E[A-Z]+$)/
const CONSTRAINT = /constraint failed: (\w+\.\w+(?:, \w+\.\w+)*)/

interface Cause {
  readonly name: string
  readonly message: string
  readonly code: string | undefined
  readonly status: number | undefined
}

function causes(error: unknown): readonly Cause[] {
  const chain: Cause[] = []
  for (let at: unknown = error; at instanceof Error && chain.length < 6; at = at.cause) {
    const code = 'code' in at && typeof at.code === 'string' && /^[A-Z][A-Z0-9_]*$/.test(at.code) ? at.code : undefined
    const status = 'status' in at && typeof at.status === 'number' ? at.status : undefined
    chain.push({ name: at.name, message: at.message, code, status })
  }
  return chain
}

/** These have no code: a fetch that failed (Node's words, workerd's words), a closed client, and libSQL when it can't open a file. */
function lostConnection(cause: Cause): boolean {
  const words = /^(?:fetch failed|Network connection lost|ConnectionFailed)/
  return ['TimeoutError', 'AbortError', 'ClosedError'].includes(cause.name) || words.test(cause.message)
}
