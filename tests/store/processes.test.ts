import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'
import { head } from '../../src/store/decisions.ts'
import { MIGRATIONS } from '../../src/store/migrations.ts'
import { filePlace } from './places.ts'
import { SHOP } from './sample.ts'

// The project's own Node: the one that runs the tests may be too old to take TypeScript.
const NODE = fileURLToPath(new URL('../../node_modules/.bin/node', import.meta.url))
const PROCESS = fileURLToPath(new URL('process.ts', import.meta.url))

test(
  'three processes start on a fresh file at once: each step is applied by one, and every decision is entered',
  { timeout: 60_000 },
  async () => {
    const place = await filePlace()
    try {
      const runs = ['a', 'b', 'c'].map((name) => promisify(execFile)(NODE, [PROCESS, `file:${place.file}`, name, '15']))
      const said = (await Promise.all(runs)).map(({ stdout }) => JSON.parse(stdout) as { applied: string[]; seqs: number[] })
      expect(said.flatMap(({ applied }) => applied).sort()).toEqual(MIGRATIONS.map(({ name }) => name))
      expect(said.flatMap(({ seqs }) => seqs).sort((a, b) => a - b)).toEqual(Array.from({ length: 45 }, (_, n) => n + 1))
      expect(await head(await place.open(), SHOP)).toBe(45)
    } finally {
      await place.leave()
    }
  },
)
