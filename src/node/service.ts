/** The service on Node, over an embedded libSQL file or a remote database: for the server and for the command. */
import { createService } from '../app.ts'
import { openDatabase } from '../store/client.node.ts'
import { migrate } from '../store/migrate.ts'
import type { Service } from '../usecases/service.ts'

/** Where the ledger lies when DATABASE_URL names no other place; relative to the working folder. */
export const DEFAULT_DATABASE_URL = 'file:.data/witnessmark.db'

export interface DatabaseSettings {
  readonly DATABASE_URL?: string | undefined
  readonly DATABASE_TOKEN?: string | undefined
}

export interface OpenService {
  readonly service: Service
  readonly url: string
  /** Steps of the schema that had to be applied. */
  readonly migrated: readonly string[]
}

/**
 * Opens the database that the settings name, brings its schema up to date, and puts the service together. `service.db.close()` ends it.
 * @throws Refused for a URL that can't be used; StoreTrouble when the database can't be opened
 */
export async function openService(settings: DatabaseSettings): Promise<OpenService> {
  const url = settings.DATABASE_URL || DEFAULT_DATABASE_URL
  const db = await openDatabase(url, { token: settings.DATABASE_TOKEN || undefined })
  try {
    const migrated = await migrate(db)
    return { service: createService({ db }), url, migrated }
  } catch (error) {
    db.close()
    throw error
  }
}
