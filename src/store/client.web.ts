/** Opens a remote libSQL database with nothing but fetch: for workerd, and wherever there are no files. */
import { createClient } from '@libsql/client/web'
import { drizzle } from 'drizzle-orm/libsql/web'
import { closable } from './database.ts'
import type { Database } from './database.ts'
import { atUrl, fetchWithin, REMOTE_PATIENCE_MS } from './remote.ts'

/**
 * The client's own queue would hand one request's call to whichever request finishes next, and workerd ends a request that
 * waits on another's work. So nothing queues here; the platform limits how much a request may have under way.
 */
const NO_QUEUE = 1_000_000

export interface RemoteOptions {
  /** The server's access token, where it wants one. */
  readonly token?: string | undefined
  /** How long the server may take to answer, in milliseconds. */
  readonly patienceMs?: number | undefined
}

/**
 * Opens a remote database by its libsql:, https: or http: URL. Nothing is sent before the first statement.
 * @throws Refused when the URL is none of these.
 */
export function openRemote(url: string, options: RemoteOptions = {}): Database {
  const { token, patienceMs = REMOTE_PATIENCE_MS } = options
  const authToken = token === undefined ? {} : { authToken: token }
  return closable(drizzle(atUrl(() => createClient({ url, fetch: fetchWithin(patienceMs), concurrency: NO_QUEUE, ...authToken }))))
}
