import { fileURLToPath } from 'node:url'
import { demoAccess } from '../demo-access.ts'
import { DEFAULT_DATABASE_URL, openService } from '../node-service.ts'
import { Refused } from '../quantity/fault.ts'
import { shops, type Shop } from '../store/shops.ts'
import { guarded } from '../store/trouble.ts'
import { hasNoShop } from '../usecases/demo-shop.ts'
import type { Service } from '../usecases/service.ts'
import { Ended, EXIT } from './exit.ts'

/** More shops than these are not listed in a message. */
const LISTED = 12

/** The command uses the checkout's own database from whatever folder it is called, where DATABASE_URL names no other. */
const OWN_DATABASE = `file:${fileURLToPath(new URL(`../../${DEFAULT_DATABASE_URL.slice('file:'.length)}`, import.meta.url))}`

export interface OpenShop {
  readonly service: Service
  readonly shop: Shop
}

/**
 * Opens the database, loads the demo shop where there is none yet, and finds the shop to speak for: the one named, or the only one.
 * `service.db.close()` ends it.
 * @throws Ended when the shop is not there or must be named; Refused and StoreTrouble as the database does
 */
export async function openShop(env: NodeJS.ProcessEnv, named: string | undefined): Promise<OpenShop> {
  const { service, url } = await opened(env)
  try {
    if (await hasNoShop(service)) await demoAccess(service, url)
    return { service, shop: await shopFor(service, named) }
  } catch (error) {
    service.db.close()
    throw error
  }
}

async function opened(env: NodeJS.ProcessEnv): ReturnType<typeof openService> {
  try {
    return await openService({ ...env, DATABASE_URL: env['DATABASE_URL'] || OWN_DATABASE })
  } catch (error) {
    // A URL that can't be used is trouble with the database, not with the sheet.
    if (error instanceof Refused) throw new Ended(EXIT.database, error.faults.map((f) => `${f.says} ${f.mend}`).join(' '))
    throw error
  }
}

async function shopFor(service: Service, named: string | undefined): Promise<Shop> {
  const all = await guarded('listing the shops', () =>
    service.db
      .select()
      .from(shops)
      .orderBy(shops.id)
      .limit(LISTED + 1)
      .all(),
  )
  const found = named === undefined ? all : all.filter((shop) => shop.id === named)
  const [shop] = found
  if (shop !== undefined && found.length === 1) return shop
  const known = `${all
    .slice(0, LISTED)
    .map((s) => s.id)
    .join(', ')}${all.length > LISTED ? ' …' : ''}`
  throw new Ended(
    EXIT.usage,
    named === undefined
      ? `This database holds several shops. Say which with --shop: ${known}.`
      : `No shop is called "${named}". Known are: ${known}.`,
  )
}
