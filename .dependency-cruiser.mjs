// Who may import whom: quantity ← compute ← rulebook ← verdict ← usecases ← { http, pages, cli } ← app ← node/ ← { node.ts, cli }, app ← worker.ts;
// quantity ← ledger ← store ← usecases; quantity ← hooks. Arrows point to what is imported; nothing imports against them.
const MAY = {
  quantity: [],
  compute: ['quantity'],
  rulebook: ['quantity', 'compute'],
  verdict: ['quantity', 'compute', 'rulebook'],
  ledger: ['quantity'],
  store: ['quantity', 'ledger'],
  hooks: ['quantity', 'ledger'],
  usecases: ['quantity', 'rulebook', 'verdict', 'ledger', 'store', 'hooks'],
  http: ['quantity', 'rulebook', 'verdict', 'ledger', 'store', 'hooks', 'usecases'],
  pages: ['quantity', 'rulebook', 'verdict', 'store', 'usecases'],
  cli: ['quantity', 'rulebook', 'verdict', 'store', 'usecases', 'node'],
}
const arrows = Object.entries(MAY).map(([room, may]) => ({
  name: `${room}-imports-only-${may.join('-') || 'itself'}`,
  severity: 'error',
  from: { path: `^src/${room}/` },
  to: { path: '^src/', pathNot: [`^src/(${[room, ...may].join('|')})/`] },
}))

export default {
  forbidden: [
    ...arrows,
    { name: 'no-cycle', severity: 'error', from: { path: '^src/' }, to: { circular: true } },
    { name: 'no-tests-in-src', severity: 'error', from: { path: '^src/' }, to: { path: '^(tests|examples)/', pathNot: '^examples/quarry-lane\\.json$' } },
    { name: 'pure-rooms-know-no-node', severity: 'error', from: { path: '^src/(quantity|compute|rulebook|verdict|ledger|usecases|http|hooks|pages)/|^src/(app|worker)\\.ts$' }, to: { dependencyTypes: ['core'] } },
    { name: 'verdict-knows-no-http-or-database', severity: 'error', from: { path: '^src/(quantity|compute|rulebook|verdict|ledger)/' }, to: { path: 'node_modules/(hono|@hono|drizzle-orm|@libsql)/' } },
    { name: 'edge-client-only-in-worker', severity: 'error', from: { path: '^src/worker\\.ts$' }, to: { path: '^src/store/client\\.node\\.ts$' } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
}
