import { keyOfSecret } from '../hooks/secret.ts'
import { messageFault, UNSIGNED, type MessageHeaders } from '../hooks/verify.ts'
import { sha256Hex } from '../ledger/hash.ts'
import { Refused, type Fault } from '../quantity/fault.ts'
import { endpointById, receiptOf, type HookEndpoint } from '../store/endpoints.ts'
import { shopById, type Shop } from '../store/shops.ts'
import { sheetFromText } from '../verdict/sheet.ts'
import { decideSheet } from './decide.ts'
import { readDecision } from './read.ts'
import type { DecisionRecord } from './record.ts'
import type { Service } from './service.ts'

/** A finding sheet in a signed message, as it came. */
export interface SignedMessage {
  /** The endpoint that it was sent to. */
  readonly endpoint: string
  readonly headers: MessageHeaders
  readonly bytes: Uint8Array<ArrayBuffer>
  /** The bytes as text: what was signed. */
  readonly raw: string
  /** The text to read as JSON. */
  readonly text: string
}

export type Taken =
  | { readonly kind: 'entered'; readonly record: DecisionRecord }
  /** Answered before with the same body: the first answer, whatever the rulebook would say by now. */
  | { readonly kind: 'repeat'; readonly record: DecisionRecord }
  /** Answered before with another body: nothing was done. */
  | { readonly kind: 'altered' }
  /** Not taken: headers, age or signature. */
  | { readonly kind: 'turned away'; readonly fault: Fault }

/** Random bytes whose hexadecimal text is a key that nobody has, as long as a secret's own. */
const DECOY_BYTES = 16

/**
 * Takes a message in once: checks its signature and age, then decides the sheet it holds. Only a message that was answered leaves anything
 * behind. An unknown endpoint is checked against a key that nobody has, so that it is turned away as a wrong signature is.
 * @throws Refused with every fault of the sheet; StoreTrouble
 */
export async function takeMessage(service: Service, message: SignedMessage): Promise<Taken> {
  const endpoint = await endpointById(service.db, message.endpoint)
  const fault = messageFault(keyFor(service, endpoint), message.headers, message.raw)
  if (fault !== undefined) return { kind: 'turned away', fault }
  const messageId = message.headers.id
  if (endpoint === undefined || messageId === undefined) return { kind: 'turned away', fault: UNSIGNED }
  const shop = await shopById(service.db, endpoint.shop)
  if (shop === undefined) throw new Error(`The endpoint ${endpoint.id} belongs to a shop that is not there.`)

  const bodyHash = await sha256Hex(message.bytes)
  const receipt = await receiptOf(service.db, endpoint.id, messageId)
  if (receipt !== undefined) return repeated(service, shop, receipt.decisionId, receipt.bodyHash === bodyHash)
  const sheet = sheetFromText(message.text)
  const decided = await decideSheet(service, shop, sheet, { door: 'hook', receipt: { endpoint: endpoint.id, messageId, bodyHash } })
  if (decided.kind === 'entered') return decided
  // The same message came twice at once, and the other one was first.
  return decided.bodyHash === bodyHash ? { kind: 'repeat', record: decided.record } : { kind: 'altered' }
}

async function repeated(service: Service, shop: Shop, decisionId: string, same: boolean): Promise<Taken> {
  if (!same) return { kind: 'altered' }
  const record = await readDecision(service, shop, decisionId)
  if (record === undefined) throw new Error('The decision that a receipt names is not there.')
  return { kind: 'repeat', record }
}

function keyFor(service: Service, endpoint: HookEndpoint | undefined): Uint8Array<ArrayBuffer> {
  if (endpoint === undefined) return new TextEncoder().encode(service.randomHex(DECOY_BYTES))
  try {
    return keyOfSecret(endpoint.secret)
  } catch (error) {
    // A fault of the shop's settings and not of the message; its words must not reach the sender.
    if (error instanceof Refused) throw new Error(`The secret of the endpoint ${endpoint.id} is unfit.`)
    throw error
  }
}
