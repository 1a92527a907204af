import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'
import { SEAT, slopeBetween, THROAT, throatTooFlat, TOP, topTooSteep } from './cutters.ts'

const SOURCE =
  'Plane geometry of three cutter lines in the seat’s section, derived and checked by clipping polygons; which cutter moves which edge: US Army TM 10-3930-671-24.'
const diameter = (says: string): FormulaInput => ({ kind: 'length', says, least: 10, most: 150 })
const feed = (says: string): FormulaInput => ({ kind: 'length', says, least: 0, most: 5 })

/**
 * Axial feed of the top cutter that brings the outside edge from one diameter to a smaller one: length × difference of tangents,
 * mm. The valve doesn't sink. Negative: the edge is already inside the target, and only a deeper seat cut would bring it out.
 */
export const topFeedToOutsideDiameter = formula({
  id: 'top-feed-to-outside-diameter',
  version: 1,
  says: 'Feed of the top cutter = (outside diameter − wanted outside diameter) ÷ 2 × (tan(seat angle) − tan(top angle)).',
  source: SOURCE,
  inputs: {
    'outside-diameter': diameter('outside diameter of the seat ring as it is'),
    'target-outside-diameter': diameter('outside diameter that is wanted'),
    'seat-angle': SEAT,
    'top-angle': TOP,
  },
  output: { kind: 'length', says: 'feed of the top cutter, along the axis' },
  evaluate: (x) => {
    const slope = slopeBetween(x['seat-angle'], x['top-angle'])
    const radial = (x['outside-diameter'] - x['target-outside-diameter']) / 2
    return {
      value: radial * slope.value,
      partials: {
        'outside-diameter': slope.value / 2,
        'target-outside-diameter': -slope.value / 2,
        'seat-angle': radial * slope.steep,
        'top-angle': radial * slope.flat,
      },
    }
  },
  refuses: topTooSteep,
})

/**
 * Axial feed of the throat cutter that brings the inside edge from one diameter to a larger one: length × difference of tangents,
 * mm. The valve doesn't sink. Negative: the edge is already outside the target, and only a deeper seat cut would bring it in.
 */
export const throatFeedToInsideDiameter = formula({
  id: 'throat-feed-to-inside-diameter',
  version: 1,
  says: 'Feed of the throat cutter = (wanted inside diameter − inside diameter) ÷ 2 × (tan(throat angle) − tan(seat angle)).',
  source: SOURCE,
  inputs: {
    'inside-diameter': diameter('inside diameter of the seat ring as it is'),
    'target-inside-diameter': diameter('inside diameter that is wanted'),
    'seat-angle': SEAT,
    'throat-angle': THROAT,
  },
  output: { kind: 'length', says: 'feed of the throat cutter, along the axis' },
  evaluate: (x) => {
    const slope = slopeBetween(x['throat-angle'], x['seat-angle'])
    const radial = (x['target-inside-diameter'] - x['inside-diameter']) / 2
    return {
      value: radial * slope.value,
      partials: {
        'inside-diameter': -slope.value / 2,
        'target-inside-diameter': slope.value / 2,
        'seat-angle': radial * slope.flat,
        'throat-angle': radial * slope.steep,
      },
    }
  },
  refuses: throatTooFlat,
})

/** Outside diameter of the ring after feeds of top and seat cutter: length from lengths and two angles, mm. Top makes it smaller, seat larger. */
export const seatOutsideDiameterAfterFeeds = formula({
  id: 'seat-outside-diameter-after-feeds',
  version: 1,
  says: 'Outside diameter after the cuts = outside diameter + 2 × (seat feed − top feed) ÷ (tan(seat angle) − tan(top angle)).',
  source: SOURCE,
  inputs: {
    'outside-diameter': diameter('outside diameter of the seat ring as it is'),
    'top-feed': feed('feed of the top cutter, along the axis'),
    'seat-feed': feed('feed of the seat cutter, along the axis'),
    'seat-angle': SEAT,
    'top-angle': TOP,
  },
  output: { kind: 'length', says: 'outside diameter of the seat ring after the cuts' },
  evaluate: (x) => {
    const slope = slopeBetween(x['seat-angle'], x['top-angle'])
    const moved = (2 * (x['seat-feed'] - x['top-feed'])) / slope.value
    return {
      value: x['outside-diameter'] + moved,
      partials: {
        'outside-diameter': 1,
        'top-feed': -2 / slope.value,
        'seat-feed': 2 / slope.value,
        'seat-angle': (-moved * slope.steep) / slope.value,
        'top-angle': (-moved * slope.flat) / slope.value,
      },
    }
  },
  refuses: topTooSteep,
})

/** Inside diameter of the ring after feeds of seat and throat cutter: length from lengths and two angles, mm. Throat makes it larger, seat smaller. */
export const seatInsideDiameterAfterFeeds = formula({
  id: 'seat-inside-diameter-after-feeds',
  version: 1,
  says: 'Inside diameter after the cuts = inside diameter + 2 × (throat feed − seat feed) ÷ (tan(throat angle) − tan(seat angle)); never less than the throat bore.',
  source: SOURCE,
  inputs: {
    'inside-diameter': diameter('inside diameter of the seat ring as it is'),
    'seat-feed': feed('feed of the seat cutter, along the axis'),
    'throat-feed': feed('feed of the throat cutter, along the axis'),
    'seat-angle': SEAT,
    'throat-angle': THROAT,
  },
  output: { kind: 'length', says: 'inside diameter of the seat ring after the cuts, as the cutters leave it' },
  evaluate: (x) => {
    const slope = slopeBetween(x['throat-angle'], x['seat-angle'])
    const moved = (2 * (x['throat-feed'] - x['seat-feed'])) / slope.value
    return {
      value: x['inside-diameter'] + moved,
      partials: {
        'inside-diameter': 1,
        'seat-feed': -2 / slope.value,
        'throat-feed': 2 / slope.value,
        'seat-angle': (-moved * slope.flat) / slope.value,
        'throat-angle': (-moved * slope.steep) / slope.value,
      },
    }
  },
  refuses: throatTooFlat,
})
