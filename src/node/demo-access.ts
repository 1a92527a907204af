/** Loads the demo shop into a database that has no shop, and keeps what a newcomer needs to speak for it beside that database. Node only. */
import { chmod, mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import * as z from 'zod'
import quarryLane from '../../examples/quarry-lane.json' with { type: 'json' }
import { shopOfKey } from '../usecases/api-key.ts'
import { anotherDemoKey, hasNoShop, loadDemoShop, readDemoShop, type DemoAccess } from '../usecases/demo-shop.ts'
import type { Service } from '../usecases/service.ts'

/** Only its owner may read the file: it holds a key. */
const OWNER_ONLY = 0o600

const accessFile = z.strictObject({ shop: z.string(), name: z.string(), key: z.string(), endpoint: z.string(), secret: z.string() })

export interface DemoStart extends DemoAccess {
  /** True when the shop was loaded just now. */
  readonly loaded: boolean
  /** Where the key is kept. */
  readonly keptIn: string
}

/** Where the key of a database's demo shop is kept: beside a file, or in .data under the name of a remote database's host. */
export function accessPath(url: string): string {
  if (!url.startsWith('file:')) return join('.data', `demo-shop-${new URL(url).host.replaceAll(/[^\w.-]/g, '-')}.json`)
  const path = decodeURIComponent(url.replace(/^file:(?:\/\/(?:localhost)?(?=\/))?/, '').replace(/[?#].*$/, ''))
  return join(dirname(path), 'demo-shop.json')
}

/**
 * The demo shop's key, from the file where an earlier start kept it; loads the shop first when the database has none.
 * @returns undefined when the database holds other shops only. @throws StoreTrouble; the file system's error when the file can't be written
 */
export async function demoAccess(service: Service, url: string): Promise<DemoStart | undefined> {
  const keptIn = accessPath(url)
  const demo = readDemoShop(service, quarryLane)
  const fresh = await hasNoShop(service)
  const made = fresh ? await loadDemoShop(service, demo) : undefined
  if (made !== undefined) {
    await keep(keptIn, made)
    return { ...made, loaded: true, keptIn }
  }
  const kept = await keptAccess(keptIn)
  // A file left over from another database holds a key that this one does not know.
  if (kept !== undefined && (await shopOfKey(service, kept.key)) !== undefined) return { ...kept, loaded: false, keptIn }
  const another = await anotherDemoKey(service, demo)
  if (another === undefined) return undefined
  await keep(keptIn, another)
  return { ...another, loaded: false, keptIn }
}

async function keptAccess(path: string): Promise<DemoAccess | undefined> {
  try {
    return accessFile.safeParse(JSON.parse(await readFile(path, 'utf8'))).data
  } catch {
    return undefined // not there, or not ours: another key is made
  }
}

async function keep(path: string, access: DemoAccess): Promise<void> {
  await mkdir(dirname(path), { recursive: true })
  await writeFile(path, `${JSON.stringify(access, null, 2)}\n`, { mode: OWNER_ONLY })
  // The mode above counts only where the file is made anew.
  await chmod(path, OWNER_ONLY)
}
