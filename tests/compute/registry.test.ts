import { describe, expect, it } from 'vitest'
import type { Described, Weighs } from '../../src/compute/formula.ts'
import { FORMULAS, formulaNamed, GROUP_FORMULAS, groupFormulaNamed, keyed } from '../../src/compute/registry.ts'
import { Refused } from '../../src/quantity/fault.ts'
import { KEPT_UNIT } from '../../src/quantity/measure.ts'

const faultsOf = (act: () => unknown) => {
  try {
    act()
  } catch (caught) {
    if (caught instanceof Refused) return caught.faults
    throw caught
  }
  throw new Error('nothing was refused')
}

/** What records and rules rely on: written out here, never taken from the source. Only ever add to it. */
const PINNED = [
  'alternating-stress@1',
  'bare-face-inner@1',
  'bare-face-outer@1',
  'bellmouth@1',
  'cam-peak-acceleration@1',
  'chamber-after-milling@1',
  'chamber-after-sink@1',
  'chance-fails-next@1',
  'chance-rest-sound@1',
  'clearance-volume@1',
  'coil-bind-margin@1',
  'compression-ratio@1',
  'contact-centre@1',
  'drain-flow@1',
  'endurance-limit-of-bar@1',
  'endurance-limit@1',
  'equivalent-mass@1',
  'free-length-loss@1',
  'goodman-safety@1',
  'groove-net-diameter@1',
  'groove-stress-concentration-peterson-bending@1',
  'groove-stress-concentration-peterson@1',
  'groove-stress-concentration-roark-bending@1',
  'groove-stress-concentration-roark@1',
  'gross-lift@1',
  'guide-length-left@1',
  'harmonic-nose-acceleration@1',
  'height-with-shim@1',
  'installed-height-after-sink@1',
  'intake-face-correction@1',
  'interference-angle@1',
  'interference-gap@1',
  'life-at-share@1',
  'load-lost@1',
  'manifold-drop@1',
  'margin-after-facing@1',
  'margin-after-facing@2',
  'mean-stress@1',
  'net-lift@1',
  'net-tension-stress@1',
  'notch-factor-heywood@1',
  'notch-factor-neuber@1',
  'out-of-round@1',
  'piston-to-valve-after-cut-flat-crown@1',
  'piston-to-valve-after-cut@1',
  'pool-level-double-flow@1',
  'pool-level-half-flow@1',
  'pool-level@1',
  'press-fit-pressure@1',
  'press-hoop-stress@1',
  'press-pull-out@1',
  'required-spring-force@1',
  'retainer-to-guide-top@1',
  'retainer-to-seal-after-cut@1',
  'retainer-to-seal-clearance@1',
  'seal-to-spring-clearance@1',
  'seat-feed-sink@1',
  'seat-inside-diameter-after-feeds@1',
  'seat-inside-diameter@1',
  'seat-outside-diameter-after-feeds@1',
  'seat-outside-diameter@1',
  'seat-width-after-seat-feed@1',
  'seat-width@1',
  'shim-needed@1',
  'side-play-to-clearance@1',
  'sink-from-normal-stock@1',
  'sink-volume@1',
  'size-factor@1',
  'spring-force-in-hand@1',
  'spring-in-pocket@1',
  'spring-load-at-height@1',
  'spring-load-share@1',
  'spring-mean-diameter@1',
  'spring-natural-frequency@1',
  'spring-open-load@1',
  'spring-rate-from-loads@1',
  'spring-rate-from-wire@1',
  'spring-solid-height-squared-ground@1',
  'squareness-angle@1',
  'stem-clearance@1',
  'stem-wear@1',
  'stud-bending@1',
  'stud-side-force@1',
  'stud-tension@1',
  'surface-factor@1',
  'surge-order@1',
  'thickness-left@1',
  'thread-minor-diameter-external@1',
  'thread-minor-diameter-internal@1',
  'thread-pitch-diameter@1',
  'thread-proof-load@1',
  'thread-stress-area-unified@1',
  'thread-stress-area@1',
  'throat-feed-to-inside-diameter@1',
  'tip-height-left@1',
  'tip-stock-left@1',
  'tool-doubled-clearance@1',
  'top-feed-to-outside-diameter@1',
  'torque-tension-by-friction@1',
  'torque-tension@1',
  'total-sink@1',
  'valve-float-speed@1',
  'viscosity-at-temperature@1',
]

/** The same for formulas over lists. */
const PINNED_GROUPS = [
  'flatness-minimum-zone@1',
  'set-farthest-force@1',
  'set-farthest-pressure@1',
  'set-farthest-volume@1',
  'set-farthest@1',
  'set-median-force@1',
  'set-median-pressure@1',
  'set-median-volume@1',
  'set-median@1',
  'set-spread-force@1',
  'set-spread-pressure@1',
  'set-spread-volume@1',
  'set-spread@1',
  'straightness-minimum-zone@1',
]

/** What may condemn and never clears, and what only explains: a formula may be added here, and none taken out without a new version. */
const NEVER_CLEARS = [
  'alternating-stress@1',
  'cam-peak-acceleration@1',
  'endurance-limit-of-bar@1',
  'endurance-limit@1',
  'equivalent-mass@1',
  'goodman-safety@1',
  'groove-stress-concentration-peterson-bending@1',
  'groove-stress-concentration-peterson@1',
  'groove-stress-concentration-roark-bending@1',
  'groove-stress-concentration-roark@1',
  'harmonic-nose-acceleration@1',
  'mean-stress@1',
  'net-tension-stress@1',
  'notch-factor-heywood@1',
  'notch-factor-neuber@1',
  'press-fit-pressure@1',
  'press-hoop-stress@1',
  'press-pull-out@1',
  'required-spring-force@1',
  'size-factor@1',
  'spring-force-in-hand@1',
  'stud-bending@1',
  'stud-side-force@1',
  'surface-factor@1',
  'torque-tension-by-friction@1',
  'torque-tension@1',
  'valve-float-speed@1',
]
const EXPLAINS = [
  'chance-fails-next@1',
  'chance-rest-sound@1',
  'drain-flow@1',
  'interference-gap@1',
  'life-at-share@1',
  'pool-level-double-flow@1',
  'pool-level-half-flow@1',
  'pool-level@1',
  'set-farthest-force@1',
  'set-farthest-pressure@1',
  'set-farthest-volume@1',
  'set-farthest@1',
  'spring-natural-frequency@1',
  'spring-rate-from-wire@1',
  'surge-order@1',
  'viscosity-at-temperature@1',
]

const EVERY: readonly (readonly [string, Described])[] = [...FORMULAS, ...GROUP_FORMULAS]

describe('the registry', () => {
  it('holds every formula that was ever published', () => {
    expect([...FORMULAS.keys()]).toEqual(expect.arrayContaining(PINNED))
    expect([...GROUP_FORMULAS.keys()]).toEqual(expect.arrayContaining(PINNED_GROUPS))
  })

  it('keeps strength, fatigue, oil and chances from clearing a part', () => {
    const weighing = (weighs: Weighs) => EVERY.filter(([, each]) => each.weighs === weighs).map(([key]) => key)
    expect(weighing('never-clears')).toEqual(expect.arrayContaining(NEVER_CLEARS))
    expect(weighing('explains')).toEqual(expect.arrayContaining(EXPLAINS))
  })

  it('has no key in both kinds', () => {
    expect(new Set(EVERY.map(([key]) => key)).size).toBe(EVERY.length)
  })

  it('keys each formula by its own id and version', () => {
    for (const [key, formula] of EVERY) {
      expect(key).toBe(`${formula.id}@${String(formula.version)}`)
      expect(key).toMatch(/^[a-z0-9-]+@[1-9]\d*$/)
    }
  })

  it('tells in words what each formula does, takes and gives, and where it comes from', () => {
    for (const [, formula] of EVERY) {
      for (const text of [formula.says, formula.source]) expect(text).toMatch(/^\S.{5,}\.$/)
      expect(formula.says).toContain('=')
      for (const named of [...Object.values(formula.inputs), formula.output]) {
        expect(named.says.length).toBeGreaterThan(5)
        expect(Object.keys(KEPT_UNIT)).toContain(named.kind)
      }
      for (const name of Object.keys(formula.inputs)) expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/)
    }
  })

  it('finds a formula by its key', () => {
    expect(formulaNamed('tip-stock-left@1')).toBe(FORMULAS.get('tip-stock-left@1'))
  })

  it('answers an unknown version with the versions there are', () => {
    const [first] = faultsOf(() => formulaNamed('tip-stock-left@99'))
    expect(first?.code).toBe('unknown-formula')
    expect(first?.value).toBe('tip-stock-left@99')
    expect(first?.mend).toContain('tip-stock-left@1.')
    expect(first?.mend).not.toContain('stud-tension')
  })

  it('answers an unknown name with the names there are, and does not take a property of every object for one', () => {
    for (const name of ['tip-stock@1', '', 'constructor', '__proto__']) {
      const [first] = faultsOf(() => formulaNamed(name))
      expect(first?.code).toBe('unknown-formula')
      expect(first?.mend).toContain('stud-tension@1')
    }
  })

  it('refuses two formulas of one id and version', () => {
    expect(groupFormulaNamed('set-spread@1')).toBe(GROUP_FORMULAS.get('set-spread@1'))
    expect(faultsOf(() => groupFormulaNamed('stem-wear@1'))[0]?.code).toBe('unknown-formula')
    const twice = formulaNamed('stem-wear@1')
    const [first] = faultsOf(() => keyed([twice, { ...twice }]))
    expect(first?.code).toBe('formula-twice')
    expect(first?.value).toBe('stem-wear@1')
    expect([...keyed([twice, { ...twice, version: 2 }]).keys()]).toEqual(['stem-wear@1', 'stem-wear@2'])
  })
})
