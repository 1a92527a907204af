/**
 * Sends a finding sheet in a signed message, as another program would (Standard Webhooks).
 *
 *   node_modules/.bin/node examples/hook-sender/send.ts [sheet.json]
 *
 * Start the service first (npm start). The endpoint and its secret are read from .data/demo-shop.json, which the first start writes;
 * HOOK_URL and HOOK_SECRET name others. WEBHOOK_ID sends under an id of your own: send twice under one id, and the second answer is the first.
 */
import { randomUUID } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { Webhook } from 'standardwebhooks'

const [sheet = 'examples/sheets/ql-6p-mixed-findings.json'] = process.argv.slice(2)
const demo = async (): Promise<{ secret: string; endpoint: string }> => JSON.parse(await readFile('.data/demo-shop.json', 'utf8'))
const { HOOK_SECRET, HOOK_URL, WEBHOOK_ID } = process.env
const secret = HOOK_SECRET ?? (await demo()).secret
const url = HOOK_URL ?? `http://127.0.0.1:8787/hooks/${(await demo()).endpoint}`

// The very text that goes out is signed: a body that is parsed and written anew has other bytes.
const body = await readFile(sheet, 'utf8')
const id = WEBHOOK_ID ?? `msg_${randomUUID()}`
const now = new Date()
const response = await fetch(url, {
  method: 'POST',
  headers: {
    'content-type': 'application/json',
    'webhook-id': id,
    'webhook-timestamp': String(Math.floor(now.getTime() / 1000)),
    'webhook-signature': new Webhook(secret).sign(id, now, body),
  },
  body,
})
const answer = await response.json()
if (response.ok) {
  const { id: decision, job, verdicts, ledger } = answer
  const repeat = response.headers.get('webhook-repeat') === null ? '' : ' (answered before: this is the first answer)'
  console.log(`Message ${id}: decision ${decision} for job ${job}, number ${ledger.seq} in the ledger${repeat}`)
  for (const { part, at, disposition } of verdicts) console.log(`  ${part} ${at}: ${disposition}`)
} else {
  // A 5xx or no answer at all is worth a retry, later and under the same id; anything else needs mending first.
  console.error(`${response.status} ${answer.title}: ${answer.detail}`)
  process.exitCode = 1
}
