/** The standard uncertainty of a reading: from the instrument, or from the step that the typed figure shows. */
import type { ReadContext } from './context.ts'
import { fault } from './fault.ts'
import type { Fault } from './fault.ts'
import type { UncertaintyFrom } from './measure.ts'

export interface Doubt {
  readonly u: number
  readonly uFrom: UncertaintyFrom
  readonly notes: readonly string[]
}

/** Standard uncertainty of a figure written in steps of d: anywhere within half a step either way (rectangular), d/(2√3). */
export function halfStepU(d: number): number {
  return d / (2 * Math.sqrt(3))
}

/**
 * u of a value in kept units; `step` is the typed step in words. An instrument gives U/k; without one the typed step
 * tells. An instrument can't be surer than the figure written down: the larger of the two holds.
 */
export function doubtOf(value: number, resolution: number, step: string, context: ReadContext): Doubt | Fault {
  if (context.kind === 'count') return { u: 0, uFrom: 'exact', notes: [] }
  const fromStep = halfStepU(resolution)
  const { instrument } = context
  if (instrument === undefined)
    return {
      u: fromStep,
      uFrom: 'typed resolution',
      notes: [`no instrument named: the doubt is that of a figure written in steps of ${step}`],
    }
  const expanded = instrument.relative === undefined ? instrument.expanded : instrument.relative * Math.abs(value)
  if (expanded === undefined || !Number.isFinite(expanded) || expanded < 0 || !Number.isFinite(instrument.k) || instrument.k <= 0) {
    return fault(
      'instrument-unusable',
      '',
      `The ${instrument.label} has no usable uncertainty.`,
      'Give it an expanded uncertainty and a coverage factor above zero.',
    )
  }
  const fromInstrument = expanded / instrument.k
  if (fromInstrument >= fromStep) return { u: fromInstrument, uFrom: 'instrument', notes: [] }
  return {
    u: fromStep,
    uFrom: 'typed resolution',
    notes: [`the ${instrument.label} reads finer than the figure was written: the doubt is that of steps of ${step}`],
  }
}
