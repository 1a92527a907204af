import { Refused, type Fault } from '../quantity/fault.ts'
import { readEngine as readSheet } from '../rulebook/read-engine.ts'
import type { Engine } from '../rulebook/schema/engine.ts'
import { engineOf, enginesOf, type ShopEngine } from '../store/engines.ts'
import type { Shop } from '../store/shops.ts'
import type { Answerable } from './limits.ts'
import { namesBehind } from './people.ts'
import type { Service } from './service.ts'

/** An engine's sheet as it stands for a shop. */
export interface EngineEntry {
  readonly id: string
  /** True for a sheet that the shop has put itself. */
  readonly own: boolean
  /** Of the shop's own: who put it, and when. */
  readonly put?: Answerable
  /** True where the rulebook has a sheet of that engine too, which this one stands over. */
  readonly standsOver?: boolean
  readonly sheet: Engine
  /** Why a sheet of the shop's can't be judged by any more: the rulebook has changed since it was put. */
  readonly faults?: readonly Fault[]
}

/** Every engine that a shop can judge by, its own sheets over the rulebook's, by id. Without a shop: the rulebook's. @throws StoreTrouble */
export async function listEngines(service: Service, shop: Shop | undefined): Promise<readonly EngineEntry[]> {
  const { engines } = service.book.book
  const own = shop === undefined ? [] : await ownEntries(service, shop, await enginesOf(service.db, shop.id))
  const others = [...engines.values()].filter((engine) => !own.some((entry) => entry.id === engine.id)).map(ofRulebook)
  return [...own, ...others].sort((a, b) => (a.id < b.id ? -1 : 1))
}

/** One engine as it stands for a shop; undefined where neither it nor the rulebook has a sheet of it. @throws StoreTrouble */
export async function readEngine(service: Service, shop: Shop | undefined, id: string): Promise<EngineEntry | undefined> {
  const row = shop === undefined ? undefined : await engineOf(service.db, shop.id, id)
  if (row !== undefined && shop !== undefined) return (await ownEntries(service, shop, [row]))[0]
  const engine = service.book.book.engines.get(id)
  return engine === undefined ? undefined : ofRulebook(engine)
}

const ofRulebook = (sheet: Engine): EngineEntry => ({ id: sheet.id, own: false, sheet })

async function ownEntries(service: Service, shop: Shop, rows: readonly ShopEngine[]): Promise<readonly EngineEntry[]> {
  const names = await namesBehind(
    service,
    shop.id,
    rows.map((row) => row.by),
  )
  return rows.map(({ id, content, by, on }) => {
    // Written by putEngine in the shape of an engine sheet; whether the rulebook still knows its names is another matter.
    const sheet = JSON.parse(content) as Engine
    const faults = faultsIn(service, sheet)
    return {
      id,
      own: true,
      put: { by: names.get(by) ?? null, on },
      standsOver: service.book.book.engines.has(id),
      sheet,
      ...(faults.length === 0 ? {} : { faults }),
    }
  })
}

function faultsIn(service: Service, sheet: unknown): readonly Fault[] {
  try {
    readSheet(service.book.book, sheet)
    return []
  } catch (error) {
    if (error instanceof Refused) return error.faults
    throw error
  }
}
