import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const bore = (says: string): FormulaInput => ({ kind: 'length', says, least: 3, most: 30 })

/**
 * Clearance across the diameter from the side-play that an indicator shows when the valve is rocked: length ÷ (1 + ratio), mm.
 * The stem touches opposite corners of the guide, so it tilts by clearance ÷ guide length, and the indicator, its distance beyond
 * the guide's end, sees more. Full travel from stop to stop, not half of it. At half a guide's length away it is the familiar
 * halving. Good to 0.02 % for stems in guides; a bell-mouthed guide acts shorter, so that the clearance comes out too large.
 */
export const sidePlayToClearance = formula({
  id: 'side-play-to-clearance',
  version: 1,
  says: 'Stem clearance (across the diameter) = side-play ÷ (1 + 2 × distance of the indicator from the guide’s end ÷ guide length).',
  source: 'Plane geometry of a stem tilted between opposite corners of its guide, derived; checked against the exact corner contact.',
  inputs: {
    'side-play': { kind: 'length', says: 'full travel of the indicator, valve rocked from stop to stop', least: 0, most: 10 },
    'guide-length': { kind: 'length', says: 'length of the guide', least: 10, most: 200 },
    'indicator-distance': {
      kind: 'length',
      says: 'distance of the indicator’s contact from the near end of the guide',
      least: 0,
      most: 100,
    },
  },
  output: { kind: 'length', says: 'stem clearance, across the diameter' },
  evaluate: (x) => {
    const magnified = 1 + (2 * x['indicator-distance']) / x['guide-length']
    const value = x['side-play'] / magnified
    const change = -value / magnified
    return {
      value,
      partials: {
        'side-play': 1 / magnified,
        'guide-length': (change * -2 * x['indicator-distance']) / (x['guide-length'] * x['guide-length']),
        'indicator-distance': (change * 2) / x['guide-length'],
      },
    }
  },
})

/** Clearance from a tool whose reading is twice the clearance by its own geometry: length ÷ 2, mm. Only where the tool's sheet says so. */
export const toolDoubledClearance = formula({
  id: 'tool-doubled-clearance',
  version: 1,
  says: 'Stem clearance = reading ÷ 2, for a tool that shows twice the clearance.',
  source: 'Plane geometry: an indicator half a guide’s length beyond the guide. Common practice.',
  inputs: { reading: { kind: 'length', says: 'reading of the tool that doubles', least: 0, most: 10 } },
  output: { kind: 'length', says: 'stem clearance, across the diameter' },
  evaluate: (x) => ({ value: x.reading / 2, partials: { reading: 0.5 } }),
})

/** How much wider a guide is at its end than in its middle: difference of two lengths, mm. Negative: it is waisted the other way. 3–30 mm. */
export const bellmouth = formula({
  id: 'bellmouth',
  version: 1,
  says: 'Bellmouth = guide bore at the end − guide bore in the middle, in one axis.',
  source: 'Definition (a difference).',
  inputs: { end: bore('guide bore near its end'), middle: bore('guide bore in the middle, same axis') },
  output: { kind: 'length', says: 'how much wider the guide is at its end' },
  evaluate: (x) => ({ value: x.end - x.middle, partials: { end: 1, middle: -1 } }),
})

/** Out-of-round of a bore or stem: the difference of two diameters, without its sign, mm. Three-lobed shapes don't show in two axes. 3–30 mm. */
export const outOfRound = formula({
  id: 'out-of-round',
  version: 1,
  says: 'Out-of-round = difference between the diameters in two axes at one depth, larger − smaller.',
  source: 'Definition (a difference).',
  inputs: { 'first-axis': bore('diameter in one axis'), 'second-axis': bore('diameter square to it, at the same depth') },
  output: { kind: 'length', says: 'out-of-round' },
  evaluate: (x) => {
    const sign = x['first-axis'] >= x['second-axis'] ? 1 : -1
    return { value: sign * (x['first-axis'] - x['second-axis']), partials: { 'first-axis': sign, 'second-axis': -sign } }
  },
})
