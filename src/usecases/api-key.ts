import { sha256Hex } from '../ledger/hash.ts'
import { shopByKeyHash, type Shop } from '../store/shops.ts'
import type { Service } from './service.ts'

/** 256 bits: nobody guesses it, so a plain hash of it is enough to keep. */
const KEY_BYTES = 32

/** Keys begin with this, so that one that has leaked is recognised. */
const PREFIX = 'wm_'

/** A new key and the hash that goes into the store; the key itself is shown once and kept nowhere. */
export async function newApiKey(service: Pick<Service, 'randomHex'>): Promise<{ readonly key: string; readonly hash: string }> {
  const key = PREFIX + service.randomHex(KEY_BYTES)
  return { key, hash: await hashOfKey(key) }
}

/**
 * The shop that a key speaks for; undefined for an unknown or revoked one. The key is looked up by its hash, so how long
 * the comparison takes tells nothing about a key that would fit.
 * @throws StoreTrouble
 */
export async function shopOfKey(service: Pick<Service, 'db'>, key: string): Promise<Shop | undefined> {
  return key.startsWith(PREFIX) ? shopByKeyHash(service.db, await hashOfKey(key)) : undefined
}

const hashOfKey = (key: string): Promise<string> => sha256Hex(new TextEncoder().encode(key))
