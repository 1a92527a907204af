import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { run } from './process.ts'

const ROOT = new URL('../../', import.meta.url).pathname

interface Meta {
  readonly inputs: Readonly<Record<string, { readonly imports: readonly { readonly path: string; readonly external?: boolean }[] }>>
  readonly outputs: Readonly<
    Record<
      string,
      {
        readonly entryPoint?: string
        readonly bytes: number
        readonly inputs: Readonly<Record<string, { readonly bytesInOutput: number }>>
        readonly imports: readonly unknown[]
      }
    >
  >
}

let folder: string
let code: string
let meta: Meta
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-bundle-'))
  const env = { CI: '1', WRANGLER_SEND_METRICS: 'false', WRANGLER_SEND_ERROR_REPORTS: 'false', WRANGLER_LOG_PATH: folder }
  const build = run('node_modules/wrangler/bin/wrangler.js', ['deploy', '--dry-run', '--metafile', '--outdir', folder], env)
  if ((await build.ended) !== 0) throw new Error(build.printed())
  code = await readFile(join(folder, 'worker.js'), 'utf8')
  meta = JSON.parse(await readFile(join(folder, 'bundle-meta.json'), 'utf8')) as Meta
})
afterAll(() => rm(folder, { recursive: true, force: true }))

/** Modules that made it into the bundle, as paths below the project's folder, wherever its packages really lie. */
const bundled = (): readonly string[] =>
  Object.values(meta.outputs)
    .flatMap((o) => Object.entries(o.inputs))
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([path]) => path.replace(/^.*?(?=node_modules\/)|^(?:\.\.\/)+/, ''))

describe('what goes to workerd', () => {
  it('is one file that imports nothing, and nothing of Node', () => {
    const [main] = Object.values(meta.outputs).filter((o) => o.entryPoint !== undefined)
    expect(main?.imports).toEqual([])
    expect(code).not.toMatch(/\bfrom\s*["']node:|\brequire\(["'](?:node:|fs|path|crypto|http|stream)/)
    // esbuild names its own helpers "<runtime>". A library's look for Node's crypto is thrown out with the code that made it.
    const kept = new Set(
      Object.values(meta.outputs).flatMap((o) =>
        Object.entries(o.inputs)
          .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
          .map(([path]) => path),
      ),
    )
    const externals = Object.entries(meta.inputs).flatMap(([path, { imports }]) =>
      kept.has(path) ? imports.filter((m) => m.external === true && m.path !== '<runtime>').map((m) => `${path}: ${m.path}`) : [],
    )
    expect(externals).toEqual([])
  })

  it('has the embedded client and the rooms of Node out of it, and the rules and migrations in it', () => {
    const paths = bundled()
    for (const out of ['src/node.ts', 'src/node/', 'src/store/client.node.ts', 'src/cli/'])
      expect(
        paths.filter((p) => p.includes(out)),
        out,
      ).toEqual([])
    expect(paths.filter((p) => /node_modules\/(?:libsql|@hono\/node-server|better-sqlite3|ws)\//.test(p))).toEqual([])
    expect(paths).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/rules\/rocker-stud\/groove-condemns\.json$/),
        expect.stringMatching(/src\/store\/migrations\.ts$/),
      ]),
    )
  })

  it('makes no code out of text, but for two libraries in branches that are never taken', async () => {
    const making: string[] = []
    for (const path of bundled()) {
      if (!/\.[cm]?[jt]sx?$/.test(path)) continue
      const text = await readFile(join(ROOT, path), 'utf8')
      if (/\bnew Function\(|(?<![\w.])eval\(/.test(text)) making.push(path)
    }
    // eventemitter2 looks so for the global object where there is no CommonJS; jsonpath-plus has it for its own script language,
    // and no condition of ours has a path. Both are json-rules-engine's, and tests/runtime/both.test.ts runs it in workerd.
    expect(making.map((p) => /node_modules\/([^/]+)\//.exec(p)?.[1] ?? p).sort()).toEqual(['eventemitter2', 'jsonpath-plus'])
  })

  it('is the library without its languages: zod is imported whole, not by name', () => {
    expect(bundled().filter((p) => /node_modules\/zod\/.*locales\/(?!en\.)[a-z-]+\.js/i.test(p))).toEqual([])
  })

  it('stays under 2.5 MB, and 700 kB compressed', () => {
    const sizes = { minified: Buffer.byteLength(code), gzip: gzipSync(code).length }
    expect(sizes.minified, JSON.stringify(sizes)).toBeLessThan(2_500_000)
    expect(sizes.gzip, JSON.stringify(sizes)).toBeLessThan(700_000)
    // A build that lost the rules would be small.
    expect(sizes.minified).toBeGreaterThan(500_000)
  })
})
