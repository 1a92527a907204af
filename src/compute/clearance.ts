import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const stem = (says: string): FormulaInput => ({ kind: 'length', says, least: 3, most: 30 })

/** Play of a spring in its pocket, across the diameter: difference of two lengths, mm. Negative: it does not go in. 5–150 mm. */
export const springInPocket = formula({
  id: 'spring-in-pocket',
  version: 1,
  says: 'Play of the spring in its pocket (across the diameter) = pocket diameter − outside diameter of the spring.',
  source: 'Definition (a difference).',
  inputs: {
    pocket: { kind: 'length', says: 'diameter of the spring pocket, cup or outer spring', least: 5, most: 150 },
    'spring-outside-diameter': { kind: 'length', says: 'outside diameter of the spring', least: 5, most: 150 },
  },
  output: { kind: 'length', says: 'play of the spring in its pocket, across the diameter' },
  evaluate: (x) => ({
    value: x.pocket - x['spring-outside-diameter'],
    partials: { pocket: 1, 'spring-outside-diameter': -1 },
  }),
})

/** Wear of a stem below the low limit of a new one: difference of two lengths, mm. Negative: still within the new limits. 3–30 mm. */
export const stemWear = formula({
  id: 'stem-wear',
  version: 1,
  says: 'Stem wear = low limit of the new stem diameter − measured stem diameter.',
  source: 'Definition (a difference). Counting from the low limit is common practice.',
  inputs: { 'new-low-limit': stem('low limit of the new stem diameter'), measured: stem('stem diameter as measured, one reading') },
  output: { kind: 'length', says: 'stem wear below the low limit of a new stem' },
  evaluate: (x) => ({ value: x['new-low-limit'] - x.measured, partials: { 'new-low-limit': 1, measured: -1 } }),
})

/** Clearance of a stem in its guide, across the diameter: difference of two lengths, mm. Negative: interference. 3–30 mm. */
export const stemClearance = formula({
  id: 'stem-clearance',
  version: 1,
  says: 'Stem clearance (across the diameter) = guide bore − stem diameter.',
  source: 'Definition (a difference).',
  inputs: { bore: stem('guide bore, one reading'), stem: stem('stem diameter, one reading at the same station') },
  output: { kind: 'length', says: 'stem clearance, across the diameter' },
  evaluate: (x) => ({ value: x.bore - x.stem, partials: { bore: 1, stem: -1 } }),
})
