import { createServer } from 'node:net'
import { chmod, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { EXAMPLE_SHEET } from '../../src/node/greeting.ts'
import { problemIn } from '../http/house.ts'
import { freePort, run, type Started } from './process.ts'

let folder: string
let running: Started[]
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-start-'))
  running = []
})
afterEach(async () => {
  for (const { child, ended } of running) {
    child.kill('SIGKILL')
    await ended
  }
  await rm(folder, { recursive: true, force: true })
})

async function start(env: Readonly<Record<string, string>> = {}): Promise<Started> {
  const started = run('src/node.ts', [], { DATABASE_URL: `file:${join(folder, 'shop.db')}`, PORT: String(await freePort()), ...env })
  running.push(started)
  return started
}

const KEY = /demo key\s+(wm_[0-9a-f]{64})/
const addressOf = async (started: Started): Promise<string> => (await started.prints(/witnessmark\s+(http:\S+)/))[1] ?? ''

describe('npm start', () => {
  it('prints where it is, a key, and a request that works as it is pasted', async () => {
    const started = await start()
    const address = await addressOf(started)
    const key = (await started.prints(KEY))[1] ?? ''
    expect(started.printed()).toContain('loaded just now')
    const pasted = started.printed().match(/curl (?:.*\\\n)*.*/)?.[0] ?? ''
    const [, url] = /curl -s (\S+)/.exec(pasted) ?? []
    expect(url).toBe(`${address}/v1/judgements`)
    const headers = Object.fromEntries([...pasted.matchAll(/-H '([^:]+): ([^']+)'/g)].map((m) => [m[1], m[2]]))
    const [, file = ''] = /--data-binary @(\S+)/.exec(pasted) ?? []
    expect(file).toBe(EXAMPLE_SHEET)
    expect(headers['Authorization']).toBe(`Bearer ${key}`)
    const response = await fetch(url ?? '', { method: 'POST', headers: headers as Record<string, string>, body: await readFile(file) })
    expect(response.status).toBe(200)
    expect(((await response.json()) as { verdicts: unknown[] }).verdicts.length).toBeGreaterThan(0)
  })

  it('a second start prints the same key, finds every decision, and stops when asked', async () => {
    const first = await start()
    const key = (await first.prints(KEY))[1] ?? ''
    const sheet = await readFile(EXAMPLE_SHEET)
    const made = await fetch(`${await addressOf(first)}/v1/decisions`, {
      method: 'POST',
      headers: { authorization: `Bearer ${key}`, 'content-type': 'application/json' },
      body: sheet,
    })
    const location = made.headers.get('location') ?? ''
    first.child.kill('SIGTERM')
    expect(await first.ended).toBe(0)

    const second = await start()
    expect((await second.prints(KEY))[1]).toBe(key)
    expect(second.printed()).not.toContain('just now')
    const found = await fetch(`${await addressOf(second)}${location}`, { headers: { authorization: `Bearer ${key}` } })
    expect(await found.json()).toEqual(await made.json())
    second.child.kill('SIGINT')
    expect(await second.ended).toBe(0)
  })

  it('keeps the key where only its owner may read it, and makes another when that file is gone or foreign', async () => {
    const path = join(folder, 'demo-shop.json')
    const first = await start()
    const key = (await first.prints(KEY))[1]
    expect((await stat(path)).mode & 0o777).toBe(0o600)
    first.child.kill('SIGTERM')
    await first.ended
    await chmod(path, 0o644)
    await writeFile(path, JSON.stringify({ shop: 'a', name: 'b', key: 'wm_of-another-database', endpoint: 'c', secret: 'd' }))
    const second = await start()
    expect((await second.prints(KEY))[1]).not.toBe(key)
    expect((await stat(path)).mode & 0o777).toBe(0o600)
  })

  it('a port that is taken is told with the way out, and a database that can’t be opened, and a port that is none', async () => {
    const taken = createServer()
    const port = await freePort()
    await new Promise<void>((resolve) => taken.listen(port, '127.0.0.1', resolve))
    const busy = await start({ PORT: String(port) })
    expect(await busy.ended).toBe(1)
    expect(busy.printed()).toContain(`Port ${port} is taken`)
    expect(busy.printed()).toContain(`PORT=${port + 1} npm start`)
    taken.close()

    await writeFile(join(folder, 'note.txt'), 'this is no database, however long one reads it; it is a note about one. '.repeat(20))
    const cases = [
      [{ DATABASE_URL: `file:${join(folder, 'note.txt')}` }, /database/],
      [{ DATABASE_URL: 'mysql://secret@host/x' }, /neither a file nor a libSQL server/],
      [{ PORT: 'eighty' }, /PORT is "eighty"/],
      [{ PORT: '70000' }, /PORT is "70000"/],
    ] as const
    for (const [env, says] of cases) {
      const failed = await start(env)
      expect(await failed.ended).toBe(1)
      expect(failed.printed()).toMatch(says)
      expect(failed.printed()).not.toMatch(/secret@|at .*\.ts:/)
    }
  })
})

it('without settings: port 8787 of 127.0.0.1, and a ledger in .data of the working folder', async () => {
  const started = run('src/node.ts', [], {}, folder)
  running.push(started)
  // Where somebody else has that port, it is told which one was wanted; the ledger is opened before.
  await started.prints(/http:\/\/127\.0\.0\.1:8787\b|Port 8787 is taken/)
  expect((await readdir(join(folder, '.data'))).sort()).toEqual(expect.arrayContaining(['demo-shop.json', 'witnessmark.db']))
})

describe('over a real connection', () => {
  it('a body over the limit is answered 413, told or untold, and the service goes on', async () => {
    const started = await start()
    const [address, key] = [await addressOf(started), (await started.prints(KEY))[1] ?? '']
    const { port } = new URL(address)
    for (const length of [{ 'content-length': '600000' }, { 'transfer-encoding': 'chunked' }]) {
      const status = await new Promise<number | undefined>((resolve, reject) => {
        const sent = request(
          {
            port,
            host: '127.0.0.1',
            method: 'POST',
            path: '/v1/decisions',
            headers: { authorization: `Bearer ${key}`, 'content-type': 'application/json', ...length },
          },
          (response) => {
            response.resume()
            resolve(response.statusCode)
          },
        )
        sent.on('error', reject)
        sent.end(' '.repeat(600_000))
      })
      expect(status).toBe(413)
    }
    expect((await fetch(`${address}/healthz`)).status).toBe(200)
    expect(await problemIn(await fetch(`${address}/v1/decisions`, { method: 'POST', body: '{}' }))).toMatchObject({ status: 401 })
  })

  it('the example sender: a decision, and the first answer again under the same id', async () => {
    const started = await start()
    const address = await addressOf(started)
    await started.prints(KEY)
    const { secret, endpoint } = JSON.parse(await readFile(join(folder, 'demo-shop.json'), 'utf8')) as { secret: string; endpoint: string }
    const env = { HOOK_URL: `${address}/hooks/${endpoint}`, HOOK_SECRET: secret, WEBHOOK_ID: 'msg_example' }
    const one = run('examples/hook-sender/send.ts', [], env)
    expect(await one.ended, one.printed()).toBe(0)
    expect(one.printed()).toMatch(/number 1 in the ledger\n/)
    const again = run('examples/hook-sender/send.ts', [], env)
    expect(await again.ended).toBe(0)
    expect(again.printed()).toMatch(/number 1 in the ledger \(answered before/)
    const bad = run('examples/hook-sender/send.ts', [], { ...env, HOOK_SECRET: `whsec_${Buffer.alloc(32).toString('base64')}` })
    expect(await bad.ended).toBe(1)
    expect(bad.printed()).toContain('401 The signature does not fit')
  })
})
