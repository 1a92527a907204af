import type { DecisionRecord } from '../usecases/record.ts'
import { sheetFromText } from '../verdict/sheet.ts'
import { sheetText } from './input.ts'

/** `judge` computes and says "not recorded"; `decide` computes and enters the ledger. */
export type Verb = 'judge' | 'decide'

/** Reads a sheet and answers it for a shop. @throws Refused, Ended, StoreTrouble */
export async function answer(verb: Verb, file: string, shop: string | undefined, env: NodeJS.ProcessEnv): Promise<DecisionRecord> {
  // A sheet that can't be read is refused before any database is made.
  const sheet = sheetFromText(await sheetText(file))
  // Reading the rulebook takes longer than all the rest; who misspelt an option or a sheet need not wait for it.
  const [{ openShop }, { decideSheet }, { judgeSheet }] = await Promise.all([
    import('./open.ts'),
    import('../usecases/decide.ts'),
    import('../usecases/judge.ts'),
  ])
  const open = await openShop(env, shop)
  try {
    if (verb === 'judge') return await judgeSheet(open.service, open.shop, sheet)
    return (await decideSheet(open.service, open.shop, sheet, { door: 'cli' })).record
  } finally {
    open.service.db.close()
  }
}
