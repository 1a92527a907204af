/** Secrets of signed messages, as Standard Webhooks writes them: "whsec_" and random bytes in base64. */
import { fault, Refused } from '../quantity/fault.ts'

const PREFIX = 'whsec_'

/** The specification's bounds, in bytes. */
const [LEAST, MOST] = [24, 64]

/**
 * The key bytes of a secret. The secret itself is never repeated in what is thrown.
 * @throws Refused `hook-secret`, saying what is wrong with it
 */
export function keyOfSecret(secret: string): Uint8Array<ArrayBuffer> {
  if (secret.startsWith('v1,')) throw unfit('It starts with "v1,", and that begins a signature.')
  if (!secret.startsWith(PREFIX)) throw unfit(`It does not start with "${PREFIX}".`)
  const base64 = secret.slice(PREFIX.length)
  if (base64 !== base64.trim()) throw unfit('There is white space round it.')
  if (!/^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/.test(base64))
    throw unfit(`What follows "${PREFIX}" is no base64, or was cut short.`)
  const key = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))
  if (key.length < LEAST || key.length > MOST) throw unfit(`It holds ${key.length} bytes, and ${LEAST} to ${MOST} are asked for.`)
  return key
}

/** A secret from random bytes. @param hex 24 to 64 bytes in hexadecimal @throws Refused `hook-secret` */
export function secretFrom(hex: string): string {
  const bytes = Array.from(hex.match(/../g) ?? [], (pair) => String.fromCharCode(Number.parseInt(pair, 16)))
  const secret = PREFIX + btoa(bytes.join(''))
  keyOfSecret(secret)
  return secret
}

const unfit = (says: string): Refused =>
  new Refused([fault('hook-secret', '/secret', says, `Copy the whole secret: "${PREFIX}" and ${LEAST} to ${MOST} random bytes in base64.`)])
