import { execFile, spawn } from 'node:child_process'
import { copyFile, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DecisionRecord } from '../../src/usecases/record.ts'
import { pathOf, textOf } from './records.ts'

const launcher = new URL('../../src/cli/witnessmark.mjs', import.meta.url).pathname
const checkout = new URL('../../', import.meta.url).pathname
/** Makes Node call itself an older one, so that the launcher looks for another. */
const CALL_IT_20 = "data:text/javascript,Object.defineProperty(process,'versions',{value:{...process.versions,node:'20.1.0'}})"

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-cli-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

interface Run {
  readonly input?: string
  readonly env?: Record<string, string>
  readonly database?: string
  readonly node?: readonly string[]
  readonly script?: string
  readonly cwd?: string
}

function run(
  args: readonly string[],
  { input, env = {}, database = 'shop.db', node = [], script = launcher, cwd = folder }: Run = {},
): Promise<Ran> {
  const url = database.includes(':') ? database : `file:${join(folder, database)}`
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      [...node, script, ...args],
      { cwd, env: { PATH: process.env['PATH'] ?? '', DATABASE_URL: url, ...env }, maxBuffer: 64 << 20 },
      (_error, out, err) => resolve({ code: child.exitCode, out, err }),
    )
    child.stdin?.end(input ?? '')
  })
}

const sheet = (...findings: object[]): string => JSON.stringify({ job: 'QLE-7', engine: 'QL-6P', findings })
const GROOVED = { part: 'rocker-stud', at: '3E', property: 'shoulder.groove-felt', value: true }

describe('decide', () => {
  it('makes the database and the demo shop, enters the decision and reports it', async () => {
    const { code, out, err } = await run(['decide', pathOf('ql-6p-mixed-findings')], { database: 'fresh/shop.db' })
    expect([code, err]).toEqual([0, ''])
    expect(out).toMatch(/^Job QLE-2031-0402/)
    expect(out).toContain('Replace the rocker stud on 3 exhaust.')
    expect(out).toMatch(/entry +1, received/)
    // No terminal, no colour.
    expect(out).not.toContain('\u001b')
  })

  it('--json prints the record and nothing else, from standard input too, and numbers go on', async () => {
    const records: DecisionRecord[] = []
    for (const input of [sheet(GROOVED), await textOf('ql-8s-cam-and-pump')]) {
      const { code, out, err } = await run(['decide', '-', '--json'], { input, database: 'numbers.db' })
      expect([code, err]).toEqual([0, ''])
      records.push(JSON.parse(out) as DecisionRecord)
    }
    expect(records.map((r) => [r.recorded, r.ledger?.seq])).toEqual([
      [true, 1],
      [true, 2],
    ])
    expect(records.every((r) => /^[0-9a-f]{64}$/.test(r.ledger?.hash ?? '') && r.id !== undefined)).toBe(true)
    expect(Object.keys(records[0] ?? {})).toEqual(expect.arrayContaining(['id', 'job', 'edition', 'verdicts', 'plan', 'ledger']))
  })

  it('judge says that nothing was recorded, and it was not', async () => {
    const { code, out } = await run(['judge', '-', '--json'], { input: sheet(GROOVED), database: 'judged.db' })
    const record = JSON.parse(out) as DecisionRecord
    expect([code, record.recorded, record.ledger, record.says]).toEqual([0, false, undefined, expect.stringMatching(/^Not recorded/)])
    const after = await run(['decide', '-', '--json'], { input: sheet(GROOVED), database: 'judged.db' })
    expect((JSON.parse(after.out) as DecisionRecord).ledger?.seq).toBe(1)
  })
})

describe('what goes wrong', () => {
  it('a bad sheet: every fault with its place and its mend, exit 1, nothing on standard output and nothing stored', async () => {
    const input = sheet(
      { part: 'valve', at: '9E', property: 'margin', value: '0.06 in' },
      { part: 'valve', at: '3E', property: 'margin', value: '12 kg' },
    )
    const { code, out, err } = await run(['decide', '-'], { input, database: 'bad.db' })
    expect([code, out]).toEqual([1, ''])
    expect(err).toMatch(/^2 faults; nothing was judged and nothing stored\./)
    expect(err).toMatch(/^\/findings\/0\/at\n {2}"9E": .+\n(?: {2}.+\n)* {2}Positions run 1I to 6E/m)
    expect(err).toMatch(/^\/findings\/1\/value\n {2}"12 kg": /m)
    const after = await run(['decide', '-', '--json'], { input: sheet(GROOVED), database: 'bad.db' })
    expect((JSON.parse(after.out) as DecisionRecord).ledger?.seq).toBe(1)
  })

  it.each([
    ['no JSON', '{"job": NaN}', 'not JSON'],
    ['nothing', '', 'not JSON'],
    ['deep JSON', '['.repeat(10_000), 'nested more than'],
  ])('%s is refused before a database is made', async (_what, input, says) => {
    const { code, out, err } = await run(['judge', '-'], { input, database: 'file:/dev/null/never.db' })
    expect([code, out]).toEqual([1, ''])
    expect(err).toContain(says)
  })

  it('bytes that are no text are refused', async () => {
    const path = join(folder, 'latin.json')
    await writeFile(path, Buffer.from([0x7b, 0xe9, 0x7d]))
    const { code, err } = await run(['judge', path])
    expect([code, err]).toEqual([1, expect.stringContaining('UTF-8')])
  })

  it.each([
    ['no command', []],
    ['an unknown option', ['decide', '--nope', 'x.json']],
    ['a file that is not there', ['decide', 'not-there.json']],
    ['a folder', ['decide', '.']],
    ['a shop that nobody knows', ['judge', '-', '--shop', 'nobody']],
  ])('%s is a matter of usage: exit 2, said on standard error', async (_what, args) => {
    const { code, out, err } = await run(args, { input: sheet(GROOVED) })
    expect([code, out]).toEqual([2, ''])
    expect(err.length).toBeGreaterThan(10)
  })

  it.each([
    ['a place where no file can be', 'file:/dev/null/shop.db', /can’t be reached/],
    ['a URL of another kind', 'postgres://nowhere', /neither a file nor a libSQL server/],
  ])('a database at %s: exit 3', async (_what, database, says) => {
    const { code, out, err } = await run(['decide', '-'], { input: sheet(GROOVED), database })
    expect([code, out]).toEqual([3, ''])
    expect(err.replaceAll('\n', ' ')).toMatch(says)
  })

  it('a reader who stops reading is no fault', async () => {
    const child = spawn(process.execPath, [launcher, 'judge', pathOf('ql-6p-mixed-findings'), '--json'], {
      env: { PATH: process.env['PATH'] ?? '', DATABASE_URL: `file:${join(folder, 'pipe.db')}` },
    })
    child.stdout.destroy()
    let err = ''
    child.stderr.on('data', (chunk: Buffer) => (err += chunk.toString()))
    const code = await new Promise((resolve) => child.on('close', resolve))
    expect([code, err]).toEqual([0, ''])
  })
})

describe('the launcher', () => {
  it('on an older Node it runs the checkout’s own, and passes arguments, input and exit code on', async () => {
    const good = await run(['judge', '-', '--json'], { input: sheet(GROOVED), node: ['--import', CALL_IT_20] })
    expect([good.code, good.err]).toEqual([0, ''])
    expect((JSON.parse(good.out) as DecisionRecord).job).toBe('QLE-7')
    const bad = await run(['judge', '-'], { input: '{}', node: ['--import', CALL_IT_20] })
    expect([bad.code, bad.out]).toEqual([1, ''])
  })

  it('says what to do where there is no Node that would do', async () => {
    const elsewhere = join(folder, 'elsewhere', 'src', 'cli')
    await mkdir(elsewhere, { recursive: true })
    await copyFile(launcher, join(elsewhere, 'witnessmark.mjs'))
    const { code, out, err } = await run(['judge', '-'], { node: ['--import', CALL_IT_20], script: join(elsewhere, 'witnessmark.mjs') })
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(/needs Node 24/)
    expect(err).toContain('npm ci')
  })

  it('is the command that package.json names', async () => {
    const { default: manifest } = await import('../../package.json', { with: { type: 'json' } })
    expect(join(checkout, manifest.bin.witnessmark)).toBe(launcher)
  })
})
