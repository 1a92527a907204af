import type { Fault } from '../../src/quantity/fault.ts'
import type { ReadQuantity } from '../../src/quantity/measure.ts'
import { readQuantity } from '../../src/quantity/read.ts'
import type { ReadContext } from '../../src/quantity/read.ts'

/** Contexts of the tests: plausible ranges of the trade's entry check, in kept units. */
export const LENGTH: ReadContext = { kind: 'length', label: 'a length' }
export const MARGIN: ReadContext = { kind: 'length', label: 'valve margin', plausible: { lo: 0.254, hi: 2.54 } }
export const RUNOUT: ReadContext = { kind: 'length', label: 'face runout', plausible: { lo: 0, hi: 0.508 } }
export const STEM: ReadContext = { kind: 'length', label: 'stem diameter', plausible: { lo: 5, hi: 12.7 } }
export const FREE_LENGTH: ReadContext = { kind: 'length', label: 'free length', plausible: { lo: 25, hi: 90 } }
export const DECK: ReadContext = { kind: 'length', label: 'deck height', plausible: { lo: -1, hi: 1 } }
export const LOAD: ReadContext = { kind: 'force', label: 'seat load', plausible: { lo: 130, hi: 1560 } }
export const ANGLE: ReadContext = { kind: 'angle', label: 'seat angle', plausible: { lo: 20, hi: 60 } }

/** What was read; throws with the fault when it was not. */
export function mustRead(typed: string, context: ReadContext = LENGTH): ReadQuantity {
  const reading = readQuantity(typed, context)
  if (!reading.ok) throw new Error(`${typed}: ${reading.faults[0]?.says ?? ''}`)
  return reading.quantity
}

/** The one fault; throws when it was read. */
export function mustAsk(typed: string, context: ReadContext = LENGTH): Fault {
  const reading = readQuantity(typed, context)
  if (reading.ok) throw new Error(`${typed} was read as ${reading.quantity.value}`)
  const [fault, ...more] = reading.faults
  if (fault === undefined || more.length > 0) throw new Error(`${typed}: ${reading.faults.length} faults`)
  return fault
}
