/** What is known of a quantity before it is read, and what comes of reading it. */
import type { Fault } from './fault.ts'
import type { QuantityKind, ReadQuantity } from './measure.ts'

/** An instrument's doubt, in kept units: one of `expanded` and `relative`. */
export interface InstrumentUse {
  readonly id: string
  readonly label: string
  /** Expanded uncertainty U, kept unit. */
  readonly expanded?: number
  /** U as a share of the reading: 0.03 for 3 %. */
  readonly relative?: number
  /** Coverage factor: u = U/k. */
  readonly k: number
}

/** What the text is to be read as. */
export interface ReadContext {
  readonly kind: QuantityKind
  /** In the trade's words, for questions: "valve margin". */
  readonly label: string
  /** The unit of the form's field, where it has one. */
  readonly unit?: string
  /** Kept unit. Outside it the figure is questioned. */
  readonly plausible?: { readonly lo: number; readonly hi: number }
  readonly instrument?: InstrumentUse
  /** What a tenth means in this shop; without it "two tenths" is asked back. */
  readonly tenths?: 'ten-thousandths of an inch' | 'tenths of a millimetre'
  /** JSON Pointer of the text, for faults. */
  readonly pointer?: string
}

/** A quantity, or what is to be asked or mended. */
export type Reading = { readonly ok: true; readonly quantity: ReadQuantity } | { readonly ok: false; readonly faults: readonly Fault[] }
