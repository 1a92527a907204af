/** Opens a database on Node: an embedded libSQL file, or a remote server. */
import { mkdir } from 'node:fs/promises'
import { dirname } from 'node:path'
import { createClient } from '@libsql/client/node'
import { sql } from 'drizzle-orm'
import { drizzle } from 'drizzle-orm/libsql/node'
import { openRemote } from './client.web.ts'
import { closable } from './database.ts'
import type { Database } from './database.ts'
import { inTurn } from './in-turn.ts'
import { jittered, whenFree } from './patience.ts'
import { atUrl, urlRefused } from './remote.ts'
import { guarded } from './trouble.ts'

export interface OpenOptions {
  /** A server's access token, where it wants one; a file takes none. */
  readonly token?: string | undefined
  /** How long to wait for another process's write to a file, in milliseconds. Waiting stops this process too. */
  readonly busyTimeoutMs?: number | undefined
}

/** A write takes about a millisecond. Not much longer than that, since the wait stops the process; what may be tried again, is. */
const BUSY_TIMEOUT_MS = 250

/**
 * Opens `file:` (relative to the working folder, or absolute), or a server by its libsql:, https: or http: URL. A file and its
 * folder are made when they are not there, and the file is put into write-ahead mode, in which readers don't wait for a writer.
 * @throws Refused for another URL or an in-memory database; StoreTrouble when a file can't be opened.
 */
export async function openDatabase(url: string, options: OpenOptions = {}): Promise<Database> {
  const { token, busyTimeoutMs = BUSY_TIMEOUT_MS } = options
  if (!url.startsWith('file:')) return openRemote(url, { token })
  const path = atUrl(() => pathOf(url))
  await guarded('making the database’s folder', () => mkdir(dirname(path), { recursive: true }))
  const client = await guarded('opening the database file', async () => createClient({ url, timeout: busyTimeoutMs }))
  const db = closable(drizzle(inTurn(client)))
  try {
    await whenFree(jittered(), () => guarded('setting up the database file', () => db.run(sql`pragma journal_mode = wal`)))
    return db
  } catch (error) {
    db.close()
    throw error
  }
}

/** The file behind a `file:` URL, which may be relative as libSQL allows: "file:.data/shop.db". */
function pathOf(url: string): string {
  const path = /^file:(?:\/\/(?:localhost)?(?=\/))?((?!\/\/)[^?#]+)$/.exec(url)?.[1]
  if (path === undefined || path.includes(':memory:')) throw urlRefused()
  return decodeURIComponent(path)
}
