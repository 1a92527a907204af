/**
 * What a shop has decided for itself, as far as verdicts need it. People stand here as commitments only.
 * Part of the edition: another adoption is another edition.
 */
export interface ShopLayer {
  /** Which confidence a limit must be met with: a key of rules/confidence.json. */
  readonly confidence: string
  /** How "two tenths" is read; undecided means it is asked. */
  readonly tenths?: 'ten-thousandths of an inch' | 'tenths of a millimetre'
  /** Remembered limits that a named person adopted. */
  readonly adoptions: readonly { readonly part: string; readonly limit: string; readonly by: string; readonly on: string }[]
  /** The shop's own figures; they stand over the trade's defaults and under the maker's. */
  readonly limits: readonly {
    readonly part: string
    readonly limit: string
    readonly value: string
    readonly by: string
    readonly on: string
  }[]
  /** Instruments the shop lacks, by id; all others count as there. */
  readonly lacks: readonly string[]
  /**
   * The shop's own engine sheets that the work leans on, by id, as they were put; each stands over the rulebook's sheet of that
   * engine. Read by `engineFor`, since the rulebook may have changed since. Absent where the rulebook's own sheet speaks.
   */
  readonly engines?: Readonly<Record<string, unknown>>
}

/** No shop of one's own: the trade's figures alone. */
export const NO_SHOP = (confidence: string): ShopLayer => ({ confidence, adoptions: [], limits: [], lacks: [] })
