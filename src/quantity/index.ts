/** The public names of this room; other rooms may as well import the files themselves. */
export { complement, compare, interval, kleeneAll, kleeneAny } from './compare.ts';
export type { Answer, Ordering, Spanned } from './compare.ts';
export { probabilityBetween, probabilityWithin } from './conformance.ts';
export { fault, pointer, Refused } from './fault.ts';
export type { Fault } from './fault.ts';
export { instrumentsFile, instrumentUse, reachableU, readInstruments } from './instrument.ts';
export type { Instrument, InstrumentEntry, InstrumentsFile } from './instrument.ts';
export { KEPT_UNIT } from './measure.ts';
export type { Measure, QuantityKind, ReadQuantity, UncertaintyFrom } from './measure.ts';
export { readQuantity } from './read.ts';
export type { InstrumentUse, ReadContext, Reading } from './read.ts';
export { inUnit, show, showWithDoubt } from './show.ts';
export type { ShowOptions } from './show.ts';
export { fromKept, keptUnit, otherSystem, toKept, unitNamed, UNITS } from './units.ts';
export type { Unit } from './units.ts';
