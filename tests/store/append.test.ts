import { eq } from 'drizzle-orm'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { appendDecision } from '../../src/store/append.ts'
import type { Database } from '../../src/store/database.ts'
import { decisionById, decisions, decisionsAfter, decisionsOfJob, head } from '../../src/store/decisions.ts'
import { disclosuresFor, eraseDisclosure, saltFor } from '../../src/store/disclosures.ts'
import { editionByHash } from '../../src/store/editions.ts'
import { receiptOf } from '../../src/store/endpoints.ts'
import { migrate } from '../../src/store/migrate.ts'
import { jittered } from '../../src/store/patience.ts'
import { StoreTrouble } from '../../src/store/trouble.ts'
import { PLACES } from './places.ts'
import type { Place } from './places.ts'
import { appending, disclosure, EDITION, made, rowCounts, SHOP } from './sample.ts'

const NOTHING = { decisions: 0, editions: 0, disclosures: 0, receipts: 0 }
const receipt = { endpoint: 'ep-1', messageId: 'msg-1', bodyHash: 'b'.repeat(64) }

describe.each(PLACES)('appending through %s', (_name, arrive) => {
  let place: Place
  let db: Database
  beforeEach(async () => {
    place = await arrive()
    db = await place.open()
    await migrate(db)
  })
  afterEach(() => place.leave())

  test('a first decision is number 1 and reads back as it was entered', async () => {
    const name = disclosure('c-1', 'bench 2', '0a'.repeat(16))
    const outcome = await appendDecision(db, SHOP, appending('d-1', { receipt, make: (seq) => made('d-1', seq, {}, [name]) }))
    expect(outcome).toEqual({ kind: 'entered', id: 'd-1', seq: 1 })
    const expected = { shop: SHOP, seq: 1, ...made('d-1', 1).row }
    expect(await decisionById(db, SHOP, 'd-1')).toEqual(expected)
    expect(await decisionsOfJob(db, SHOP, 'job-1')).toEqual([expected])
    expect(await editionByHash(db, EDITION.hash)).toEqual({ ...EDITION, firstUsedAt: expected.receivedAt })
    expect(await disclosuresFor(db, SHOP, ['c-1', 'c-2'])).toEqual([{ ...name, shop: SHOP, erasedAt: null }])
    expect(await receiptOf(db, 'ep-1', 'msg-1')).toEqual({ ...receipt, decisionId: 'd-1', receivedAt: expected.receivedAt })
  })

  test('twenty at once from four clients: all are entered, numbered 1 to 20 without a gap', async () => {
    const clients = [db, await place.open(), await place.open(), await place.open()]
    const outcomes = await Promise.all(
      Array.from({ length: 20 }, (_, n) => appendDecision(clients[n % 4] ?? db, SHOP, appending(`d-${n}`))),
    )
    const oneToTwenty = Array.from({ length: 20 }, (_, n) => n + 1)
    expect(outcomes.map((o) => (o.kind === 'entered' ? o.seq : o.kind)).sort((a, b) => Number(a) - Number(b))).toEqual(oneToTwenty)
    const rows = await decisionsAfter(db, SHOP, 0, 100)
    expect(rows.map((row) => row.seq)).toEqual(oneToTwenty)
    // Each envelope was made with the number under which it was entered at last.
    expect(rows.map((row) => row.envelope)).toEqual(rows.map((row) => JSON.stringify({ id: row.id, seq: row.seq })))
    expect(await head(db, SHOP)).toBe(20)
    expect(await rowCounts(db)).toEqual({ decisions: 20, editions: 1, disclosures: 0, receipts: 0 })
  })

  test('two shops are numbered each for itself, and neither sees the other’s', async () => {
    const other = await place.open()
    await Promise.all(
      Array.from({ length: 10 }, (_, n) =>
        n % 2 === 0 ? appendDecision(db, SHOP, appending(`d-${n}`)) : appendDecision(other, 'second-shop', appending(`d-${n}`)),
      ),
    )
    const seqs = async (shop: string) => (await decisionsOfJob(db, shop, 'job-1')).map((row) => row.seq)
    expect(await seqs(SHOP)).toEqual([1, 2, 3, 4, 5])
    expect(await seqs('second-shop')).toEqual([1, 2, 3, 4, 5])
    expect(await decisionById(db, 'second-shop', 'd-0')).toBeUndefined()
    expect(await decisionById(db, SHOP, 'd-0')).toMatchObject({ id: 'd-0' })
  })

  test('a message that was answered is answered by the same decision, and nothing is made or written again', async () => {
    await appendDecision(db, SHOP, appending('d-1', { receipt }))
    const before = await rowCounts(db)
    let asked = 0
    const again = appending('d-2', { receipt: { ...receipt, bodyHash: 'c'.repeat(64) }, make: (seq) => made(`d-2-${(asked += 1)}`, seq) })
    expect(await appendDecision(db, SHOP, again)).toEqual({ kind: 'repeat', decisionId: 'd-1', bodyHash: receipt.bodyHash })
    expect(asked).toBe(0)
    expect(await rowCounts(db)).toEqual(before)
  })

  test('of one message delivered ten times at once, one delivery decides and nine repeat it', async () => {
    const clients = [db, await place.open()]
    const outcomes = await Promise.all(
      Array.from({ length: 10 }, (_, n) => appendDecision(clients[n % 2] ?? db, SHOP, appending(`d-${n}`, { receipt }))),
    )
    const [entered, ...others] = outcomes.filter((o) => o.kind === 'entered')
    expect(others).toEqual([])
    const repeats = outcomes.filter((o) => o.kind === 'repeat')
    expect(repeats).toHaveLength(9)
    expect(new Set(repeats.map((o) => o.decisionId))).toEqual(new Set([entered?.id]))
    expect(await rowCounts(db)).toEqual({ decisions: 1, editions: 1, disclosures: 0, receipts: 1 })
  })

  test('a message that another decision took in at the last moment is answered by that one', async () => {
    const rival = await place.open()
    const entry = appending('late', {
      receipt,
      make: async (seq) => {
        // In another shop, so that the head here does not move and the receipt alone stands in the way.
        await appendDecision(rival, 'second-shop', appending('early', { receipt }))
        return made('late', seq)
      },
    })
    expect(await appendDecision(db, SHOP, entry)).toEqual({ kind: 'repeat', decisionId: 'early', bodyHash: receipt.bodyHash })
    expect(await rowCounts(db)).toEqual({ decisions: 1, editions: 1, disclosures: 0, receipts: 1 })
  })

  test.each([
    ['is not SQL', 'insert into'],
    ['breaks a constraint', 'insert into editions (hash, content, first_used_at) values (null, null, null)'],
  ])('when the last statement of the batch %s, none of it stays', async (_name, failing) => {
    const name = disclosure('c-1', 'bench 2', '0a'.repeat(16))
    const last = { toSQL: () => ({ sql: failing, params: [] }) }
    const entry = appending('d-1', { receipt, make: (seq) => ({ ...made('d-1', seq, {}, [name]), beside: [last] }) })
    await expect(appendDecision(db, SHOP, entry)).rejects.toThrow(StoreTrouble)
    expect(await rowCounts(db)).toEqual(NOTHING)
    expect(await appendDecision(db, SHOP, { ...entry, make: (seq) => made('d-1', seq, {}, [name]) })).toMatchObject({ seq: 1 })
    expect(await rowCounts(db)).toEqual({ decisions: 1, editions: 1, disclosures: 1, receipts: 1 })
  })

  test('an id that is taken is refused, in another shop too, and leaves nothing behind', async () => {
    await appendDecision(db, SHOP, appending('d-1'))
    const before = await rowCounts(db)
    const again = appending('d-1', { edition: { hash: 'f'.repeat(64), content: '{}' }, receipt })
    await expect(appendDecision(db, 'second-shop', again)).rejects.toMatchObject({ code: 'unexpected', broken: 'decisions.id' })
    expect(await rowCounts(db)).toEqual(before)
  })

  test('a head that keeps moving is given up as busy, with nothing written by the loser', async () => {
    const rival = await place.open()
    let rivals = 0
    const loser = appending('loser', {
      receipt,
      make: async (seq) => {
        await appendDecision(rival, SHOP, appending(`rival-${(rivals += 1)}`))
        return made('loser', seq)
      },
    })
    const pauses: number[] = []
    const patience = { attempts: 3, pause: async (tried: number) => void pauses.push(tried) }
    await expect(appendDecision(db, SHOP, loser, patience)).rejects.toMatchObject({ code: 'busy', detail: 'HEAD_MOVED' })
    expect(pauses).toEqual([1, 2])
    expect(await rowCounts(db)).toEqual({ decisions: 3, editions: 1, disclosures: 0, receipts: 0 })
  })

  test('what `make` throws comes out as it was, and nothing is written', async () => {
    const own = new Error('the sheet is unfit')
    const entry = appending('d-1', { make: () => Promise.reject(own) })
    await expect(appendDecision(db, SHOP, entry)).rejects.toBe(own)
    expect(await rowCounts(db)).toEqual(NOTHING)
  })

  test('a name keeps its salt: the same disclosure again is no trouble, another salt asks to commit again', async () => {
    const mine = disclosure('c-1', 'bench 2', '0a'.repeat(16))
    const enter = (id: string, d: typeof mine) => appendDecision(db, SHOP, appending(id, { make: (seq) => made(id, seq, {}, [d]) }))
    expect(await enter('d-1', mine)).toMatchObject({ kind: 'entered' })
    expect(await enter('d-2', mine)).toMatchObject({ kind: 'entered', seq: 2 })
    expect(await enter('d-3', disclosure('c-2', 'bench 2', '0b'.repeat(16)))).toEqual({ kind: 'resalt' })
    expect(await head(db, SHOP)).toBe(2)
    expect(await saltFor(db, SHOP, 'name', ['bench 2', 'bench 3'])).toEqual(new Map([['bench 2', '0a'.repeat(16)]]))
    expect(await saltFor(db, SHOP, 'note', ['bench 2'])).toEqual(new Map())
    expect(await saltFor(db, 'second-shop', 'name', ['bench 2'])).toEqual(new Map())
    expect(await saltFor(db, SHOP, 'name', [])).toEqual(new Map())
  })

  test('an erased name is gone with its salt, stays marked, and is not brought back by a decision that still held it', async () => {
    const mine = disclosure('c-1', 'bench 2', '0a'.repeat(16))
    const enter = (id: string, d: typeof mine) => appendDecision(db, SHOP, appending(id, { make: (seq) => made(id, seq, {}, [d]) }))
    await enter('d-1', mine)
    expect(await eraseDisclosure(db, 'second-shop', 'c-1', '2031-05-01')).toBe(false)
    expect(await eraseDisclosure(db, SHOP, 'c-1', '2031-05-01')).toBe(true)
    expect(await eraseDisclosure(db, SHOP, 'c-1', '2031-05-02')).toBe(false)
    const erased = { shop: SHOP, commitment: 'c-1', kind: 'name', salt: null, text: null, erasedAt: '2031-05-01' }
    expect(await disclosuresFor(db, SHOP, ['c-1'])).toEqual([erased])
    expect(await saltFor(db, SHOP, 'name', ['bench 2'])).toEqual(new Map())
    expect(await enter('d-2', mine)).toEqual({ kind: 'resalt' })
    expect(await enter('d-2', disclosure('c-2', 'bench 2', '0c'.repeat(16)))).toMatchObject({ kind: 'entered', seq: 2 })
  })

  test('a body that is large and full of quotes comes back as it was', async () => {
    const body = JSON.stringify({ notes: ['it’s “worn”', "O'Ring; drop table decisions; --", '\u0000€😀'], long: 'x'.repeat(300_000) })
    await appendDecision(db, SHOP, appending('d-1', { make: (seq) => made('d-1', seq, { body }) }))
    expect((await decisionById(db, SHOP, 'd-1'))?.body).toBe(body)
  })

  test('a hole made behind the store’s back is never filled with a wrong number', async () => {
    await appendDecision(db, SHOP, appending('d-1'))
    await db.$client.execute(`update decisions set seq = 7 where id = 'd-1'`)
    expect(await appendDecision(db, SHOP, appending('d-2'))).toMatchObject({ seq: 8 })
    expect(await db.select().from(decisions).where(eq(decisions.seq, 2)).all()).toEqual([])
  })
})

test('pauses grow with each lost try up to a quarter of a second, and are a random share of that', async () => {
  const slept: number[] = []
  const { pause, attempts } = jittered(
    () => 0.5,
    async (ms) => void slept.push(ms),
  )
  for (let tried = 1; tried <= 8; tried += 1) await pause(tried)
  expect(slept).toEqual([4, 8, 16, 32, 64, 125, 125, 125])
  expect(attempts).toBeGreaterThanOrEqual(20)
})
