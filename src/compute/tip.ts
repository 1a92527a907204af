import { formula } from './formula.ts'

/**
 * Tip stock left on a valve over its whole life: shape difference of two lengths, mm. Judged by overall length, so that
 * earlier grinding counts too. Negative means below the minimum. Valid for valves of 20–500 mm.
 */
export const tipStockLeft = formula({
  id: 'tip-stock-left',
  version: 1,
  says: 'Stock left on the valve tip = overall length − minimum overall length; below zero, the valve is under its minimum.',
  source: 'Definition (a difference). Judging tip stock by overall length is common practice.',
  inputs: {
    'overall-length': { kind: 'length', says: 'overall length of the valve, tip to head, as measured', least: 20, most: 500 },
    'minimum-overall-length': { kind: 'length', says: 'least overall length that the valve may have', least: 20, most: 500 },
  },
  output: { kind: 'length', says: 'tip stock left' },
  evaluate: (x) => ({
    value: x['overall-length'] - x['minimum-overall-length'],
    partials: { 'overall-length': 1, 'minimum-overall-length': -1 },
  }),
})

/** How far the tip stands above the retainer once the tip is dressed: difference of two lengths, mm. Tips of at most 20 mm. */
export const tipHeightLeft = formula({
  id: 'tip-height-left',
  version: 1,
  says: 'Tip standing above the retainer after the work = tip standing above the retainer before − stock taken off the tip.',
  source: 'Definition (a difference).',
  inputs: {
    stands: { kind: 'length', says: 'how far the tip stands above retainer and keepers before the work', least: 0, most: 20 },
    taken: { kind: 'length', says: 'stock taken off the tip', least: 0, most: 5 },
  },
  output: { kind: 'length', says: 'tip standing above the retainer after the work' },
  evaluate: (x) => ({ value: x.stands - x.taken, partials: { stands: 1, taken: -1 } }),
})
