import type { Fault } from '../quantity/fault.ts'
import { hanging, type Ink } from './layout.ts'

/** Every fault of a sheet on lines of its own: where it is, what is wrong, how to mend it. */
export function faultsReport(faults: readonly Fault[], columns: number, ink: Ink): string {
  const head = ink.strong(
    faults.length === 1
      ? 'One fault; nothing was judged and nothing stored.'
      : `${faults.length} faults; nothing was judged and nothing stored.`,
  )
  const lines = faults.flatMap((f) => [
    '',
    ...hanging('', f.pointer === '' ? 'the sheet as a whole' : f.pointer, columns, ink.hazard),
    ...hanging('  ', `${f.value === undefined ? '' : `"${f.value}": `}${f.says}`, columns),
    ...hanging('  ', f.mend, columns),
  ])
  return `${[head, ...lines].join('\n')}\n`
}
