import { expect, it } from 'vitest'
import type { Formula } from '../../src/compute/formula.ts'
import {
  threadMinorDiameterExternal,
  threadMinorDiameterInternal,
  threadPitchDiameter,
  threadStressArea,
  threadStressAreaUnified,
} from '../../src/compute/thread.ts'

it.each<[string, Formula]>(
  [threadMinorDiameterExternal, threadMinorDiameterInternal, threadPitchDiameter, threadStressArea, threadStressAreaUnified].map((f) => [
    f.id,
    f,
  ]),
)('%s stays above zero, and grows with the diameter, at the coarsest pitch on the smallest thread', (_id, formula) => {
  const smallest = {
    'major-diameter': formula.inputs['major-diameter']?.least ?? Number.NaN,
    pitch: formula.inputs['pitch']?.most ?? Number.NaN,
  }
  const { value, partials } = formula.evaluate(smallest)
  expect(value).toBeGreaterThan(0)
  expect(partials['major-diameter']).toBeGreaterThan(0)
})
