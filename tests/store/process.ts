/** One of several processes that open the same file at once: migrates it, then enters decisions. Run by processes.test.ts. */
import { appendDecision } from '../../src/store/append.ts'
import { openDatabase } from '../../src/store/client.node.ts'
import { migrate } from '../../src/store/migrate.ts'
import { appending, SHOP } from './sample.ts'

const [, , url = '', name = '', count = '0'] = process.argv
const db = await openDatabase(url)
const applied = await migrate(db)
const seqs: number[] = []
for (let n = 0; n < Number(count); n += 1) {
  const outcome = await appendDecision(db, SHOP, appending(`${name}-${n}`))
  if (outcome.kind === 'entered') seqs.push(outcome.seq)
}
db.close()
console.log(JSON.stringify({ applied, seqs }))
