/** The demo shop: what a newcomer finds in a fresh database. Its keys are drawn when it is loaded; none stands in the source. */
import * as z from 'zod'
import { secretFrom } from '../hooks/secret.ts'
import { commit } from '../ledger/commitment.ts'
import { fault, pointer, Refused, type Fault } from '../quantity/fault.ts'
import { together } from '../store/database.ts'
import { disclosing, type Disclosure } from '../store/disclosures.ts'
import { endpointById, hookEndpoints } from '../store/endpoints.ts'
import { adoptions } from '../store/limits.ts'
import { addApiKey, apiKeys, shops, type Shop } from '../store/shops.ts'
import { guarded, StoreTrouble } from '../store/trouble.ts'
import { newApiKey } from './api-key.ts'
import type { Service } from './service.ts'
import { shopSettings } from './shop-layer.ts'

const demoShopFile = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  name: z.string().min(1),
  settings: shopSettings,
  /** The webhook endpoint that the shop is given. */
  endpoint: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  /** Remembered limits that the shop has adopted, by whom and on which day. */
  adopted: z.array(z.strictObject({ part: z.string(), limit: z.string(), by: z.string().min(1), on: z.iso.date() })),
})
export type DemoShop = z.infer<typeof demoShopFile>

/** What a newcomer needs to speak for the shop. Shown to whoever starts the service, and kept by them. */
export interface DemoAccess {
  readonly shop: string
  readonly name: string
  readonly key: string
  readonly endpoint: string
  readonly secret: string
}

const SALT_BYTES = 32
const SECRET_BYTES = 32

/**
 * Reads the demo shop's data against the rulebook.
 * @throws Refused where a field is wrong, or an adopted limit is not there or is not one that the trade only remembers
 */
export function readDemoShop(service: Pick<Service, 'book'>, json: unknown): DemoShop {
  const parsed = demoShopFile.safeParse(json)
  if (!parsed.success)
    throw new Refused(
      parsed.error.issues.map((i) => fault('shape', pointer(...i.path.map(String)), `${i.message}.`, 'Mend the demo shop’s file.')),
    )
  const faults = parsed.data.adopted.flatMap(({ part, limit }, i): Fault[] => {
    const found = service.book.book.parts.get(part)?.limits.get(limit)
    const remembered = found?.defaults.some((d) => d.provenance === 'from memory') ?? false
    if (remembered) return []
    const says =
      found === undefined
        ? 'The rulebook has no such limit.'
        : 'The trade has more than a memory of this limit, so there is nothing to adopt.'
    return [fault('limit-unknown', pointer('adopted', i), says, 'Name a limit whose default is from memory.', `${part} ${limit}`)]
  })
  if (faults.length > 0) throw new Refused(faults)
  return parsed.data
}

/** True when nobody has set a shop up in this database. @throws StoreTrouble */
export async function hasNoShop(service: Pick<Service, 'db'>): Promise<boolean> {
  return (await guarded('looking for a shop', () => service.db.select({ id: shops.id }).from(shops).limit(1).get())) === undefined
}

/**
 * Enters the shop with its adoptions, a key and a webhook endpoint: all of it or nothing.
 * @returns undefined when another process was first. @throws StoreTrouble
 */
export async function loadDemoShop(service: Service, demo: DemoShop): Promise<DemoAccess | undefined> {
  const { db } = service
  const createdAt = service.now()
  const { key, hash } = await newApiKey(service)
  const secret = secretFrom(service.randomHex(SECRET_BYTES))
  const shop: Shop = { id: demo.id, name: demo.name, settings: JSON.stringify(demo.settings), createdAt }
  const people = await disclosuresOf(service, demo)
  const writes = [
    db.insert(shops).values(shop),
    ...[...people.values()].map((d) => disclosing(db, demo.id, d)),
    ...demo.adopted.map(({ part, limit, by, on }) =>
      db.insert(adoptions).values({ shop: demo.id, part, limit, on, by: people.get(by)?.commitment ?? '' }),
    ),
    db.insert(apiKeys).values({ hash, shop: demo.id, label: 'demo', createdAt }),
    db.insert(hookEndpoints).values({ id: demo.endpoint, shop: demo.id, secret, createdAt }),
  ]
  try {
    await together(db, 'loading the demo shop', writes)
  } catch (error) {
    if (error instanceof StoreTrouble && error.broken === 'shops.id') return undefined
    throw error
  }
  return { shop: demo.id, name: demo.name, key, endpoint: demo.endpoint, secret }
}

/**
 * A further key for a demo shop whose first one was lost; the endpoint keeps its secret.
 * @returns undefined when this database has no such shop. @throws StoreTrouble
 */
export async function anotherDemoKey(service: Service, demo: DemoShop): Promise<DemoAccess | undefined> {
  const endpoint = await endpointById(service.db, demo.endpoint)
  if (endpoint?.shop !== demo.id) return undefined
  const { key, hash } = await newApiKey(service)
  await addApiKey(service.db, { hash, shop: demo.id, label: 'demo', createdAt: service.now() })
  return { shop: demo.id, name: demo.name, key, endpoint: demo.endpoint, secret: endpoint.secret }
}

async function disclosuresOf(service: Service, demo: DemoShop): Promise<ReadonlyMap<string, Disclosure>> {
  const people = new Map<string, Disclosure>()
  for (const text of new Set(demo.adopted.map((a) => a.by))) {
    const salt = service.randomHex(SALT_BYTES)
    people.set(text, { commitment: await commit(salt, text), kind: 'name', salt, text })
  }
  return people
}
