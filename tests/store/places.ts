/** Where the store's tests run: an embedded file, and the same through the web client and a Hrana server. Always on disk. */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openDatabase } from '../../src/store/client.node.ts'
import { openRemote } from '../../src/store/client.web.ts'
import type { Database } from '../../src/store/database.ts'
import { startHranaBridge } from '../runtime/hrana-bridge.ts'

export interface Place {
  /** The database file, for tests that look behind the store's back. */
  readonly file: string
  /** A further client of the same database. */
  readonly open: () => Promise<Database>
  /** Closes every client and takes the files away. */
  readonly leave: () => Promise<void>
}

async function place(opener: (file: string) => Promise<{ open: () => Promise<Database>; end: () => Promise<void> }>): Promise<Place> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-store-'))
  const file = join(folder, 'shop.db')
  const { open, end } = await opener(file)
  const opened: Database[] = []
  return {
    file,
    open: async () => {
      const db = await open()
      opened.push(db)
      return db
    },
    leave: async () => {
      for (const db of opened) db.close()
      await end()
      await rm(folder, { recursive: true, force: true })
    },
  }
}

export const filePlace = (): Promise<Place> =>
  place(async (file) => ({ open: () => openDatabase(`file:${file}`), end: async () => undefined }))

export const serverPlace = (): Promise<Place> =>
  place(async (file) => {
    const bridge = await startHranaBridge({ file })
    return { open: async () => openRemote(bridge.url), end: bridge.close }
  })

export const PLACES = [
  ['an embedded file', filePlace],
  ['the web client and a Hrana server', serverPlace],
] as const
