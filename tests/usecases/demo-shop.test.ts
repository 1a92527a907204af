import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import quarryLane from '../../examples/quarry-lane.json' with { type: 'json' }
import { createService } from '../../src/app.ts'
import { keyOfSecret } from '../../src/hooks/secret.ts'
import { Refused } from '../../src/quantity/fault.ts'
import { openDatabase } from '../../src/store/client.node.ts'
import { disclosuresFor } from '../../src/store/disclosures.ts'
import { adoptionsOf } from '../../src/store/limits.ts'
import { migrate } from '../../src/store/migrate.ts'
import { shopOfKey } from '../../src/usecases/api-key.ts'
import { anotherDemoKey, hasNoShop, loadDemoShop, readDemoShop } from '../../src/usecases/demo-shop.ts'
import type { Service } from '../../src/usecases/service.ts'

let folder: string
let service: Service
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'witnessmark-demo-'))
  const db = await openDatabase(`file:${join(folder, 'shop.db')}`)
  await migrate(db)
  service = createService({ db })
})
afterEach(async () => {
  service.db.close()
  await rm(folder, { recursive: true, force: true })
})

const demo = (): ReturnType<typeof readDemoShop> => readDemoShop(service, quarryLane)

describe('the demo shop', () => {
  it('is loaded once: with its key, its endpoint and its adoptions', async () => {
    expect(await hasNoShop(service)).toBe(true)
    const access = await loadDemoShop(service, demo())
    expect(await hasNoShop(service)).toBe(false)
    expect((await shopOfKey(service, access?.key ?? ''))?.id).toBe('quarry-lane')
    expect(keyOfSecret(access?.secret ?? '')).toHaveLength(32)
    const adopted = await adoptionsOf(service.db, 'quarry-lane')
    expect(adopted.map((a) => `${a.part} ${a.limit}`).sort()).toEqual(quarryLane.adopted.map((a) => `${a.part} ${a.limit}`).sort())
    expect(await loadDemoShop(service, demo())).toBeUndefined()
  })

  it('draws another key and secret each time', async () => {
    const access = await loadDemoShop(service, demo())
    const db = await openDatabase(`file:${join(folder, 'other.db')}`)
    await migrate(db)
    const other = await loadDemoShop(createService({ db }), demo())
    db.close()
    expect([other?.key, other?.secret]).not.toEqual([access?.key, access?.secret])
    expect(other?.key).toMatch(/^wm_[0-9a-f]{64}$/)
  })

  it('keeps the foreman’s name as a commitment that can be opened', async () => {
    await loadDemoShop(service, demo())
    const adopted = await adoptionsOf(service.db, 'quarry-lane')
    expect(adopted.every((a) => /^[0-9a-f]{64}$/.test(a.by))).toBe(true)
    const opened = await disclosuresFor(service.db, 'quarry-lane', [adopted[0]?.by ?? ''])
    expect(opened.map((d) => d.text)).toEqual(['the foreman (invented)'])
  })

  it('that was half loaded is not there at all', async () => {
    await service.db.$client.execute("insert into hook_endpoints values ('findings', 'somebody-else', 'x', 'y')")
    await expect(loadDemoShop(service, demo())).rejects.toThrow('hook_endpoints.id')
    expect(await hasNoShop(service)).toBe(true)
    expect(await adoptionsOf(service.db, 'quarry-lane')).toEqual([])
  })

  it('gets a further key where the first was lost, and both open it', async () => {
    expect(await anotherDemoKey(service, demo())).toBeUndefined()
    const first = await loadDemoShop(service, demo())
    const second = await anotherDemoKey(service, demo())
    expect(second?.secret).toBe(first?.secret)
    for (const access of [first, second]) expect((await shopOfKey(service, access?.key ?? ''))?.id).toBe('quarry-lane')
  })

  it('has adopted some of the remembered limits and left others', () => {
    const remembered = [...service.book.book.parts.values()].flatMap((part) =>
      [...part.limits.values()].filter((l) => l.defaults.some((d) => d.provenance === 'from memory')).map((l) => `${part.id} ${l.id}`),
    )
    const adopted = demo().adopted.map((a) => `${a.part} ${a.limit}`)
    expect(new Set(adopted).size).toBe(adopted.length)
    expect(remembered.filter((l) => !adopted.includes(l)).length).toBeGreaterThanOrEqual(2)
  })
})

describe('its file', () => {
  it.each([
    ['a limit that is not there', { part: 'valve', limit: 'shine-min' }, 'no such limit'],
    ['a limit that is no mere memory', { part: 'valve', limit: 'face-runout-max' }, 'nothing to adopt'],
  ])('%s is refused', (_name, limit, says) => {
    const file = { ...quarryLane, adopted: [{ ...limit, by: 'the foreman (invented)', on: '2031-03-24' }] }
    expect(() => readDemoShop(service, file)).toThrow(Refused)
    expect(() => readDemoShop(service, file)).toThrow(says)
  })

  it.each([
    ['an unknown field', { ...quarryLane, sign: 'a crown' }],
    ['a day that is none', { ...quarryLane, adopted: [{ part: 'rocker-stud', limit: 'groove-depth-max', by: 'x', on: '2031-02-30' }] }],
    ['no name', { ...quarryLane, name: undefined }],
  ])('%s is refused', (_name, file) => {
    expect(() => readDemoShop(service, file)).toThrow(Refused)
  })
})
