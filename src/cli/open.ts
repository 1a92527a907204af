import { fileURLToPath } from 'node:url'
import quarryLane from '../../examples/quarry-lane.json' with { type: 'json' }
import { DEFAULT_DATABASE_URL, openService } from '../node/service.ts'
import { Refused } from '../quantity/fault.ts'
import { shops, type Shop } from '../store/shops.ts'
import { guarded } from '../store/trouble.ts'
import { hasNoShop, loadDemoShop, readDemoShop } from '../usecases/demo-shop.ts'
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
  const { service } = await opened(env)
  try {
    // Its key stays unknown: the command speaks for a shop without one, and `npm start` draws another to show.
    if (await hasNoShop(service)) await loadDemoShop(service, readDemoShop(service, quarryLane))
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
    if (error instanceof Refused) throw new Ended(...notOpened(error))
    throw error
  }
}

/** What can't be opened is no fault of the sheet: it is the database's URL, or the rulebook of this checkout. */
function notOpened({ faults }: Refused): readonly [code: number, message: string] {
  const [first] = faults
  const said = first === undefined ? '' : `${first.says} ${first.mend}`
  if (first?.pointer === '/DATABASE_URL') return [EXIT.database, said]
  const more = faults.length > 1 ? ` (and ${faults.length - 1} more faults)` : ''
  return [EXIT.fault, `The rulebook of this checkout does not load: ${first?.pointer ?? ''}: ${said}${more}`]
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
