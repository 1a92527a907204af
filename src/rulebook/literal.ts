import { fault, Refused } from '../quantity/fault.ts'
import type { QuantityKind } from '../quantity/measure.ts'
import { readQuantity } from '../quantity/read.ts'

/** Figures kept as read; shops' sheets bring more of them, so the store is emptied before it grows without end. */
const MOST_KEPT = 20_000
const read = new Map<string, number>()

/**
 * A figure of the rulebook ("0.005 in", "45 deg", "0.9") in kept units, exact: a rulebook's figure carries no doubt of its own.
 * @throws Refused `figure-unreadable` when it does not read as one quantity of that kind
 */
export function literalMeasure(text: string, kind: QuantityKind): number {
  const key = `${kind} ${text}`
  const known = read.get(key)
  if (known !== undefined) return known
  const reading = readQuantity(text, { kind, label: 'a figure of the rulebook' })
  if (!reading.ok) {
    throw new Refused(
      reading.faults.map((f) => fault('figure-unreadable', '', `"${text}" does not read as a ${kind}: ${f.says}`, f.mend, text)),
    )
  }
  if (read.size >= MOST_KEPT) read.clear()
  read.set(key, reading.quantity.value)
  return reading.quantity.value
}
