import { canonicalBytes } from '../ledger/canonical.ts'
import { sha256Hex } from '../ledger/hash.ts'
import type { Database } from '../store/database.ts'
import type { CompiledBook } from '../verdict/compiled.ts'
import type { ShopLayer } from '../verdict/shop.ts'

/** What every use case stands on. The clock, ids and randomness come in, so that tests can fix them. */
export interface Service {
  readonly db: Database
  readonly book: CompiledBook
  readonly editions: EditionShelf
  /** RFC 3339 with an offset. */
  readonly now: () => string
  readonly newId: () => string
  /** Random bytes in lower-case hexadecimal. */
  readonly randomHex: (bytes: number) => string
}

export interface KeptEdition {
  readonly hash: string
  /** Canonical JSON whose SHA-256 is the hash. */
  readonly content: string
}

/** Few shops, few layers: the last ones are kept, since hashing a whole rulebook for each decision would cost more than judging. */
const KEPT = 64

/** Editions by shop layer: the whole rulebook together with what the shop decided, by the hash of its canonical bytes. */
export class EditionShelf {
  readonly #book: CompiledBook
  readonly #known = new Map<string, KeptEdition>()

  constructor(book: CompiledBook) {
    this.#book = book
  }

  /** Only what is finished is kept: on workerd one request must not wait for another's promise. */
  async of(layer: ShopLayer): Promise<KeptEdition> {
    const key = JSON.stringify(layer)
    const known = this.#known.get(key)
    if (known !== undefined) return known
    const made = await this.#make(layer)
    this.#known.set(key, made)
    const [oldest] = this.#known.keys()
    if (this.#known.size > KEPT && oldest !== undefined) this.#known.delete(oldest)
    return made
  }

  async #make(layer: ShopLayer): Promise<KeptEdition> {
    const bytes = canonicalBytes({ form: 'witnessmark/edition@1', rules: this.#book.book.files, shop: layer })
    return { hash: await sha256Hex(bytes), content: new TextDecoder().decode(bytes) }
  }
}
