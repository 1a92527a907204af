import { describe, expect, it } from 'vitest'
import file from '../../rules/instruments.json' with { type: 'json' }
import { Refused } from '../../src/quantity/fault.ts'
import { instrumentsFile, instrumentUse, reachableU, readInstruments } from '../../src/quantity/instrument.ts'
import type { Instrument } from '../../src/quantity/instrument.ts'
import { mustRead } from './reading.ts'

const instruments = readInstruments(instrumentsFile.parse(file))
const instrument = (id: string): Instrument => {
  const found = instruments.get(id)
  if (found === undefined) throw new Error(id)
  return found
}
const ENTRY = {
  label: 'micrometer',
  said: ['mic'],
  kind: 'length',
  expanded: '0.0002 in',
  k: 2,
  provenance: 'from memory',
  source: 'memory',
  use: 'Light feel.',
}
const fileOf = (entry: object): unknown => ({ instruments: { micrometer: entry } })

describe('rules/instruments.json', () => {
  it('holds every instrument that the trade table names', () => {
    expect([...instruments.keys()]).toEqual(
      expect.arrayContaining([
        'micrometer',
        'caliper',
        'small-hole-gauge',
        'dial-bore-gauge',
        'dial-indicator',
        'tenth-indicator',
        'depth-micrometer',
        'height-micrometer',
        'telescoping-gauge',
        'straightedge-feeler',
        'length-micrometer',
        'spring-tester',
        'calibrated-spring-tester',
        'engraved-scale',
        'square-and-feeler',
      ]),
    )
  })

  it('gives U in kept units: a stem micrometer 0.0002 in, a spring tester 3 %', () => {
    expect(instrumentUse(instrument('micrometer'))).toEqual({ id: 'micrometer', label: 'micrometer', expanded: 0.00508, k: 2 })
    expect(instrumentUse(instrument('spring-tester'))).toEqual({ id: 'spring-tester', label: 'spring tester', relative: 0.03, k: 2 })
    expect(instrument('vacuum-gauge').expandedKept).toBe(3.386389)
  })

  it('claims nothing better than memory, which is what the table rests on', () => {
    for (const one of instruments.values()) expect([one.provenance, one.source]).toEqual(['from memory', 'memory'])
  })

  it('tells instruments of one name apart: a micrometer is surer than a caliper, a caliper surer on a margin than on a seat', () => {
    const u = (id: string): number => reachableU(instrument(id), 1)
    expect(u('micrometer')).toBeLessThan(u('caliper'))
    expect(u('tenth-indicator')).toBeLessThan(u('dial-indicator'))
    expect(u('caliper')).toBeLessThan(u('caliper-seat-width'))
    expect(u('calibrated-spring-tester')).toBeLessThan(u('spring-tester'))
  })
})

describe('reachable doubt', () => {
  it('is what a reading written to the scale of the instrument carries', () => {
    const depth = instrument('depth-micrometer')
    expect(reachableU(depth, 0.0762)).toBe(mustRead('0.003 in', { kind: 'length', label: 'groove', instrument: instrumentUse(depth) }).u)
    const mic = instrument('micrometer')
    expect(reachableU(mic, 8.66648)).toBe(mustRead('0.3412 in', { kind: 'length', label: 'stem', instrument: instrumentUse(mic) }).u)
  })
})

describe('a table that does not hold', () => {
  it.each([
    ['neither U', { ...ENTRY, expanded: undefined }],
    ['both U', { ...ENTRY, relative: 0.03 }],
    ['an unknown key', { ...ENTRY, make: 'any' }],
    ['no source', { ...ENTRY, source: undefined }],
    ['a coverage factor of nothing', { ...ENTRY, k: 0 }],
    ['an unknown provenance', { ...ENTRY, provenance: 'hearsay' }],
  ])('%s is refused by its shape', (_what, entry) => {
    expect(instrumentsFile.safeParse(JSON.parse(JSON.stringify(fileOf(entry)))).success).toBe(false)
  })

  it.each(['0.0002', '2 lb', '-0.0002 in', '0 in', 'small'])('U of %j is refused when it is read, naming the place', (expanded) => {
    const parsed = instrumentsFile.parse(fileOf({ ...ENTRY, expanded }))
    expect(() => readInstruments(parsed)).toThrow(Refused)
    expect(() => readInstruments(parsed)).toThrow('/instruments/micrometer/expanded')
  })
})
