import { describe, expect, it } from 'vitest'
import { FORMULAS, formulaNamed, keyed } from '../../src/compute/registry.ts'
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
  'coil-bind-margin@1',
  'free-length-loss@1',
  'gross-lift@1',
  'guide-length-left@1',
  'height-with-shim@1',
  'margin-after-facing@1',
  'net-lift@1',
  'retainer-to-guide-top@1',
  'retainer-to-seal-after-cut@1',
  'retainer-to-seal-clearance@1',
  'seal-to-spring-clearance@1',
  'spring-in-pocket@1',
  'spring-load-at-height@1',
  'spring-load-share@1',
  'spring-open-load@1',
  'spring-rate-from-loads@1',
  'spring-solid-height-squared-ground@1',
  'stem-clearance@1',
  'stem-wear@1',
  'stud-tension@1',
  'thread-minor-diameter-external@1',
  'thread-minor-diameter-internal@1',
  'thread-pitch-diameter@1',
  'thread-proof-load@1',
  'thread-stress-area-unified@1',
  'thread-stress-area@1',
  'tip-height-left@1',
  'tip-stock-left@1',
]

describe('the registry', () => {
  it('holds every formula that was ever published', () => {
    for (const key of PINNED) expect([...FORMULAS.keys()]).toContain(key)
  })

  it('keys each formula by its own id and version', () => {
    for (const [key, formula] of FORMULAS) {
      expect(key).toBe(`${formula.id}@${String(formula.version)}`)
      expect(key).toMatch(/^[a-z0-9-]+@[1-9]\d*$/)
    }
  })

  it('tells in words what each formula does, takes and gives, and where it comes from', () => {
    for (const formula of FORMULAS.values()) {
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
    const twice = formulaNamed('stem-wear@1')
    const [first] = faultsOf(() => keyed([twice, { ...twice }]))
    expect(first?.code).toBe('formula-twice')
    expect(first?.value).toBe('stem-wear@1')
    expect([...keyed([twice, { ...twice, version: 2 }]).keys()]).toEqual(['stem-wear@1', 'stem-wear@2'])
  })
})
