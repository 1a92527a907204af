import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { openDatabase } from '../../src/store/client.node.ts'
import { openRemote } from '../../src/store/client.web.ts'
import { migrate } from '../../src/store/migrate.ts'
import { addShop, shopById } from '../../src/store/shops.ts'
import { Refused } from '../../src/quantity/fault.ts'
import { StoreTrouble } from '../../src/store/trouble.ts'
import { startHranaBridge } from '../runtime/hrana-bridge.ts'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
const shop = { id: 's', name: 'n', settings: '{}', createdAt: '2031-01-01' }

describe('opening on Node', () => {
  let folder: string
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'witnessmark-open-'))
  })
  afterEach(() => rm(folder, { recursive: true, force: true }))

  test.each([
    ['file:', ''],
    ['file://', ''],
    ['file:', '/a name with spaces and 100%25'],
  ])('makes the folder and the file of %s%s, and puts it into write-ahead mode', async (scheme, tail) => {
    const db = await openDatabase(`${scheme}${folder}/new/folder${tail}/shop.db`)
    const { rows } = await db.$client.execute('pragma journal_mode')
    expect(rows[0]?.['journal_mode']).toBe('wal')
    db.close()
    expect(existsSync(`${folder}/new/folder${decodeURIComponent(tail)}/shop.db`)).toBe(true)
  })

  test('what was written is there when the file is opened again', async () => {
    const first = await openDatabase(`file:${folder}/shop.db`)
    await migrate(first)
    await addShop(first, shop)
    first.close()
    const second = await openDatabase(`file:${folder}/shop.db`)
    expect(await shopById(second, 's')).toEqual(shop)
    second.close()
  })

  test('opens a server by its URL', async () => {
    const bridge = await startHranaBridge({ file: `${folder}/shop.db` })
    const db = await openDatabase(bridge.url)
    await migrate(db)
    expect(await addShop(db, shop)).toBe(true)
    db.close()
    await bridge.close()
  })

  test('a file that is no database, or can not be made, is told as unreachable', async () => {
    await writeFile(`${folder}/notes.txt`, 'not a database, and long enough to be read as one: '.repeat(40))
    await expect(openDatabase(`file:${folder}/notes.txt`)).rejects.toMatchObject({ code: 'unreachable' })
    await expect(openDatabase(`file:${folder}/notes.txt/shop.db`)).rejects.toMatchObject({ code: 'unreachable' })
    await expect(openDatabase(`file:${folder}`)).rejects.toThrow(StoreTrouble)
  })

  test.each([
    'file::memory:',
    'file:',
    'file://elsewhere/shop.db',
    'file:shop.db?authToken=hush',
    'file:%zz.db',
    ':memory:',
    'postgres://u:hush@h/d',
    'https://h/?hush=1',
    'shop.db',
    '',
  ])('refuses %j and does not repeat it', async (url) => {
    const error: unknown = await openDatabase(url).catch((thrown: unknown) => thrown)
    expect(error).toBeInstanceOf(Refused)
    expect((error as Refused).faults[0]).toMatchObject({ code: 'database-url', pointer: '/DATABASE_URL' })
    expect(String(error)).not.toContain('hush')
  })
})

describe('the web client', () => {
  test('refuses a file', () => {
    expect(() => openRemote('file:shop.db')).toThrow(Refused)
  })

  test('bundles for workerd without anything of Node’s and without generated code', () => {
    const store = ['append', 'client.web', 'migrate', 'shops', 'limits', 'endpoints'].map(
      (name) => `export * from './src/store/${name}.ts';`,
    )
    const bundle = execFileSync(
      `${ROOT}node_modules/.bin/esbuild`,
      ['--bundle', '--format=esm', '--platform=browser', '--conditions=workerd,worker,browser', '--minify', '--loader=ts'],
      { input: store.join('\n'), cwd: ROOT, encoding: 'utf8', stdio: ['pipe', 'pipe', 'pipe'] },
    )
    expect(bundle).toContain('witnessmark_migrations')
    expect(bundle).not.toMatch(/["']node:/)
    expect(bundle).not.toMatch(/\bnew Function\b|\beval\(/)
    expect(bundle).not.toMatch(/\brequire\(["']/)
  })
})
