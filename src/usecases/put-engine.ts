import * as z from 'zod'
import { canonicalText } from '../ledger/canonical.ts'
import { fault, Refused, type Fault } from '../quantity/fault.ts'
import { readEngine as readSheet } from '../rulebook/read-engine.ts'
import { engineOf, saveEngine } from '../store/engines.ts'
import type { Shop } from '../store/shops.ts'
import { readEngine, type EngineEntry } from './engines.ts'
import { tryEntry } from './entry.ts'
import { personName, signedBy } from './people.ts'
import type { Service } from './service.ts'

const engineEntry = z.strictObject({ by: personName, sheet: z.record(z.string(), z.unknown()) })
const MEND = 'Send the whole sheet and the name of the person who answers for it: {"by": "…", "sheet": {…}}.'

export interface EnginePut {
  readonly kind: 'added' | 'changed' | 'unchanged'
  readonly engine: EngineEntry
}

/**
 * Keeps a shop's own sheet of an engine, castings and cards with it, in the place of one that it has put before. All or nothing: a sheet
 * with a fault in it changes nothing. Putting the same again under the same name changes nothing either.
 * @param id the engine that is meant; the sheet must call itself so
 * @param entry {by, sheet}, as it came
 * @throws Refused with every fault of the entry and its sheet; StoreTrouble
 */
export async function putEngine(service: Service, shop: Shop, id: string, entry: unknown): Promise<EnginePut> {
  const { name, content } = readEntry(service, id, entry)
  const standing = await engineOf(service.db, shop.id, id)
  let kind: EnginePut['kind'] = standing === undefined ? 'added' : 'changed'
  await signedBy(service, shop.id, name, async (by) => {
    if (standing?.content === content && standing.by === by.commitment) {
      kind = 'unchanged'
      return { kind: 'written' }
    }
    return saveEngine(service.db, { shop: shop.id, id, content, on: service.now() }, by)
  })
  const engine = await readEngine(service, shop, id)
  if (engine === undefined) throw new Error(`The sheet of ${id} was kept and is not there.`)
  return { kind, engine }
}

/** Both halves of an entry, so that the faults of both are told at once. */
function readEntry(service: Service, id: string, json: unknown): { readonly name: string; readonly content: string } {
  const read = tryEntry(engineEntry, json, MEND)
  const faults: Fault[] = read.ok ? [] : [...read.faults]
  const sheet = typeof json === 'object' && json !== null && 'sheet' in json ? json.sheet : undefined
  let content = ''
  if (typeof sheet === 'object' && sheet !== null && !Array.isArray(sheet)) {
    if ('id' in sheet && typeof sheet.id === 'string' && sheet.id !== id)
      faults.push(
        fault('id-not-address', '/sheet/id', `The sheet calls itself so, and was put as ${id}.`, 'Give both the same name.', sheet.id),
      )
    try {
      content = canonicalText(readSheet(service.book.book, sheet))
    } catch (error) {
      if (!(error instanceof Refused)) throw error
      faults.push(...error.faults.map((f) => ({ ...f, pointer: `/sheet${f.pointer}` })))
    }
  }
  if (!read.ok || faults.length > 0) throw new Refused(faults)
  return { name: read.entry.by, content }
}
