import { head } from '../store/decisions.ts'
import type { Service } from './service.ts'

/** Asks the ledger something that costs it nothing. @throws StoreTrouble when it does not answer */
export async function ledgerAnswers(service: Pick<Service, 'db'>): Promise<void> {
  await head(service.db, '')
}
