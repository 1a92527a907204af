// `npm run report`: what the rulebook holds, by part class.
import { loadRulebook } from '../src/rulebook/load.ts'
import { reportOf } from '../src/rulebook/report.ts'
import { FILES } from '../src/rulebook/shelf.ts'

const rows = reportOf(loadRulebook(FILES))
console.table(Object.fromEntries(rows.map(({ part, defaults, ...rest }) => [part, { ...rest, ...defaults }])))
const all = rows.flatMap((r) => Object.entries(r.defaults))
const total = all.reduce((n, [, count]) => n + count, 0)
for (const kind of new Set(all.map(([k]) => k))) {
  const count = all.filter(([k]) => k === kind).reduce((n, [, c]) => n + c, 0)
  console.log(`${kind}: ${count} of ${total} default figures (${((100 * count) / total).toFixed(0)} %)`)
}
