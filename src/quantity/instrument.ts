/** What each measuring instrument can resolve: the shape of rules/instruments.json, and its figures in kept units. */
import * as z from 'zod'
import type { InstrumentUse } from './context.ts'
import { halfStepU } from './doubt.ts'
import { fault, pointer, Refused } from './fault.ts'
import type { Fault } from './fault.ts'
import { KEPT_UNIT } from './measure.ts'
import type { QuantityKind } from './measure.ts'
import { readQuantity } from './read.ts'

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use lower-case words joined by hyphens')

/** One entry: exactly one of `expanded` (a figure with its unit) and `relative` (a share of the reading). */
export const instrumentEntry = z
  .strictObject({
    label: z.string().min(3),
    /** What people call it. */
    said: z.array(z.string()),
    kind: z.enum(Object.keys(KEPT_UNIT) as [QuantityKind, ...QuantityKind[]]),
    /** Expanded uncertainty U as typed: "0.0002 in". */
    expanded: z.string().optional(),
    /** U as a share of the reading: 0.03 is 3 %. */
    relative: z.number().positive().max(1).optional(),
    /** Coverage factor: u = U/k. */
    k: z.number().positive(),
    /** Smallest step that it shows, as typed. */
    resolution: z.string().optional(),
    provenance: z.enum(['published', 'common practice', 'from memory']),
    source: id,
    /** How it is used, in a line or two. */
    use: z.string().min(3),
  })
  .refine((entry) => (entry.expanded === undefined) !== (entry.relative === undefined), 'give either "expanded" or "relative", not both')
export type InstrumentEntry = z.infer<typeof instrumentEntry>

/** rules/instruments.json */
export const instrumentsFile = z.strictObject({ $schema: z.string().optional(), instruments: z.record(id, instrumentEntry) })
export type InstrumentsFile = z.infer<typeof instrumentsFile>

/** An entry with its id and its figures in kept units. */
export interface Instrument extends InstrumentEntry {
  readonly id: string
  readonly expandedKept?: number
  readonly resolutionKept?: number
}

/** Reads the figures of every instrument. @throws Refused with a fault for each figure that does not read as a positive quantity of the entry's kind */
export function readInstruments(file: InstrumentsFile): ReadonlyMap<string, Instrument> {
  const faults: Fault[] = []
  const kept = (name: string, entry: InstrumentEntry, key: 'expanded' | 'resolution'): number | undefined => {
    const text = entry[key]
    if (text === undefined) return undefined
    const at = pointer('instruments', name, key)
    const reading = readQuantity(text, { kind: entry.kind, label: `${entry.label}: ${key}`, pointer: at })
    if (reading.ok && reading.quantity.value > 0) return reading.quantity.value
    faults.push(
      ...(reading.ok
        ? [fault('not-positive', at, 'A doubt or a step is more than nothing.', 'Write a figure above zero.', text)]
        : reading.faults),
    )
    return undefined
  }
  const read = Object.entries(file.instruments).map(([name, entry]): [string, Instrument] => {
    const expandedKept = kept(name, entry, 'expanded')
    const resolutionKept = kept(name, entry, 'resolution')
    return [
      name,
      {
        ...entry,
        id: name,
        ...(expandedKept === undefined ? {} : { expandedKept }),
        ...(resolutionKept === undefined ? {} : { resolutionKept }),
      },
    ]
  })
  if (faults.length > 0) throw new Refused(faults)
  return new Map(read)
}

/**
 * The smallest standard uncertainty (kept unit) that an instrument can give at a value: U/k, or the half-step of its own scale where that is
 * larger, since nobody writes down finer than the scale shows.
 */
export function reachableU(instrument: Instrument, value: number): number {
  const expanded =
    instrument.relative === undefined ? (instrument.expandedKept ?? Number.POSITIVE_INFINITY) : instrument.relative * Math.abs(value)
  return Math.max(expanded / instrument.k, halfStepU(instrument.resolutionKept ?? 0))
}

/** What `readQuantity` needs of an instrument. */
export function instrumentUse(instrument: Instrument): InstrumentUse {
  const { id: name, label, k, relative, expandedKept } = instrument
  return {
    id: name,
    label,
    k,
    ...(expandedKept === undefined ? {} : { expanded: expandedKept }),
    ...(relative === undefined ? {} : { relative }),
  }
}
