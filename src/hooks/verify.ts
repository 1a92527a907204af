/**
 * Is a message signed by whom it should be, and is it fresh? Standard Webhooks, by its library: HMAC-SHA256 over
 * "<id>.<timestamp>.<body>" with the body as it came, within five minutes of the library's clock either way.
 */
import { Webhook, WebhookVerificationError } from 'standardwebhooks'
import { fault, type Fault } from '../quantity/fault.ts'

/** The three headers of a message, as they came. */
export interface MessageHeaders {
  readonly id: string | undefined
  readonly timestamp: string | undefined
  readonly signature: string | undefined
}

/** Visible ASCII without the full stop, which divides the parts of what is signed; so long at most. */
const ID = /^[!-\-/-~]{1,200}$/
/** Whole seconds; the library would read past what follows the digits. */
const TIMESTAMP = /^[0-9]{1,12}$/

/**
 * A fault in the headers, which can be told before anything is looked up. Code `message-headers`.
 * @returns undefined when they have their shape; whether they are true is not known then.
 */
export function headerFault({ id, timestamp, signature }: MessageHeaders): Fault | undefined {
  const says = (what: string, value?: string): Fault =>
    fault(
      'message-headers',
      '',
      what,
      'Send webhook-id, webhook-timestamp and webhook-signature, as a Standard Webhooks library writes them.',
      value,
    )
  if (id === undefined || timestamp === undefined || signature === undefined) {
    const missing = Object.entries({ 'webhook-id': id, 'webhook-timestamp': timestamp, 'webhook-signature': signature }).filter(
      ([, v]) => v === undefined,
    )
    return says(`Missing: ${missing.map(([name]) => name).join(', ')}.`)
  }
  if (!ID.test(id)) return says('The webhook-id is not 1 to 200 visible characters without a full stop.', id)
  if (!TIMESTAMP.test(timestamp)) return says('The webhook-timestamp is no number of whole seconds since 1970.', timestamp)
  return undefined
}

/**
 * The fault of a message, or undefined when it is fresh and signed with the key: `message-headers`, `message-stale` or `message-unsigned`.
 * That a message is stale is told by its headers alone, whatever the key.
 * @param key the secret's bytes
 * @param raw the body as it came, decoded without any change
 */
export function messageFault(key: Uint8Array<ArrayBuffer>, headers: MessageHeaders, raw: string): Fault | undefined {
  const misshapen = headerFault(headers)
  if (misshapen !== undefined) return misshapen
  const { id = '', timestamp = '', signature = '' } = headers
  try {
    // The body is read later and elsewhere, with its digits as typed.
    new Webhook(key, { format: 'raw' }).verify(
      raw,
      { 'webhook-id': id, 'webhook-timestamp': timestamp, 'webhook-signature': signature },
      { jsonParse: false },
    )
    return undefined
  } catch (error) {
    if (!(error instanceof WebhookVerificationError)) throw error
    return error.message.startsWith('Message timestamp') ? stale(timestamp) : UNSIGNED
  }
}

const stale = (timestamp: string): Fault =>
  fault(
    'message-stale',
    '',
    'The webhook-timestamp is more than five minutes from this service’s clock.',
    'Sign the message anew with the current time, under the same webhook-id; or set the clock right.',
    timestamp,
  )

/** Also what is said of an endpoint that is not there, so that asking tells nobody which there are. */
export const UNSIGNED: Fault = fault(
  'message-unsigned',
  '',
  'The signature does not fit.',
  'Sign the raw body, byte for byte as it is sent, with the secret of this endpoint; and check the endpoint’s name.',
)
