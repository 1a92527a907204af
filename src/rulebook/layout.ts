import { fault, pointer, type Fault } from '../quantity/fault.ts'
import type { Engine } from './schema/engine.ts'

/** More than any engine has; what is said of all cylinders is entered for each of them. */
const MOST_CYLINDERS = 64

/** Words that a position is written with; a bank called so could not be told from them. */
const POSITION_WORDS =
  /^(\d.*|engine|job|heads?|all|every|each|rest|others?|remaining|e|ex|exh|exhausts?|i|in|int|inl|inlets?|intakes?|cyl|cylinders?|no|number|valves?|the|bank|both|side)$/

/** That every bank, cylinder and valve of a layout can be told from the others, and from the words that positions are written with. */
export function layoutFaults({ banks, ports }: Engine['layout']): readonly Fault[] {
  const unusable = (where: string, says: string, mend: string, value?: unknown): Fault =>
    fault('layout-unusable', pointer('layout') + where, says, mend, value)
  const twice = (where: string, value: string | number): Fault => unusable(where, 'This is given twice.', 'Give each once.', value)
  const ids = banks.map((bank) => bank.id)
  const cylinders = banks.flatMap((bank, b) => bank.cylinders.map((number, c) => ({ number, where: pointer('banks', b, 'cylinders', c) })))
  const numbers = cylinders.map((c) => c.number)
  if (numbers.length > MOST_CYLINDERS)
    return [unusable('/banks', 'No engine has so many cylinders.', `Give at most ${MOST_CYLINDERS}.`, numbers.length)]
  return [
    ...ids.flatMap((id, b) => {
      const where = pointer('banks', b, 'id')
      if (ids.indexOf(id) < b) return [twice(where, id)]
      return POSITION_WORDS.test(id)
        ? [unusable(where, 'A bank of that name could not be told from a position.', 'Call it by its side, like "left" or "front".', id)]
        : []
    }),
    ...cylinders.flatMap(({ number, where }, i) => (numbers.indexOf(number) < i ? [twice(where, number)] : [])),
    ...ports.flatMap((port, i) => (ports.indexOf(port) < i ? [twice(pointer('ports', i), port)] : [])),
  ]
}
