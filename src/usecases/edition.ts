import { editionByHash } from '../store/editions.ts'
import type { Service } from './service.ts'

/** The canonical JSON of an edition that has decided something: its SHA-256 is the hash asked for. @throws StoreTrouble */
export async function readEdition(service: Service, hash: string): Promise<string | undefined> {
  return (await editionByHash(service.db, hash))?.content
}
