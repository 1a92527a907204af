import { alongFace, SEAT, slopeBetween, THROAT, throatTooFlat, TOP, topTooSteep } from './cutters.ts'
import { formula } from './formula.ts'
import type { FormulaInput, Values } from './formula.ts'

const SOURCE =
  'Plane geometry of three cutter lines in the seat’s section, derived and checked by clipping polygons; the seat cutter widens both ways: common practice.'
const ANGLES = { 'top-angle': TOP, 'seat-angle': SEAT, 'throat-angle': THROAT } as const
const width = (says: string): FormulaInput => ({ kind: 'length', says, least: 0, most: 15 })

/** Width along the face gained for each unit of axial seat feed, and its change with each angle: both edges move. */
function widening(x: Values<keyof typeof ANGLES>) {
  const [outer, inner, face] = [
    slopeBetween(x['seat-angle'], x['top-angle']),
    slopeBetween(x['throat-angle'], x['seat-angle']),
    alongFace(x['seat-angle']),
  ]
  const radial = 1 / outer.value + 1 / inner.value
  const [perOuter, perInner] = [-face.value / (outer.value * outer.value), -face.value / (inner.value * inner.value)]
  return {
    value: radial * face.value,
    top: perOuter * outer.flat,
    seat: perOuter * outer.steep + perInner * inner.flat + radial * face.angle,
    throat: perInner * inner.steep,
  }
}

const cuttersTooNear = (x: Values<keyof typeof ANGLES>): string | undefined => topTooSteep(x) ?? throatTooFlat(x)

/**
 * Width of a seat after the seat cutter was fed down: length + length × (sum of two edges' moves), mm. A seat cut always widens,
 * by both edges, and sinks the valve by its feed. Where the throat bore or the insert's rim stops an edge, the seat is narrower.
 */
export const seatWidthAfterSeatFeed = formula({
  id: 'seat-width-after-seat-feed',
  version: 1,
  says: 'Width after the seat cut = width + seat feed × (1 ÷ (tan(seat) − tan(top)) + 1 ÷ (tan(throat) − tan(seat))) ÷ cos(seat).',
  source: SOURCE,
  inputs: {
    width: width('width of the seat along its face, before the cut'),
    'seat-feed': { kind: 'length', says: 'feed of the seat cutter, along the axis', least: 0, most: 5 },
    ...ANGLES,
  },
  output: { kind: 'length', says: 'width of the seat along its face, after the cut' },
  evaluate: (x) => {
    const per = widening(x)
    const fed = x['seat-feed']
    return {
      value: x.width + fed * per.value,
      partials: {
        width: 1,
        'seat-feed': per.value,
        'top-angle': fed * per.top,
        'seat-angle': fed * per.seat,
        'throat-angle': fed * per.throat,
      },
    }
  },
  refuses: cuttersTooNear,
})

/**
 * What a wider seat costs in sink: the feed of the seat cutter that widens a seat to the wanted width, which the valve sinks by,
 * mm. Negative: the seat is already wider than that, and top or throat cutter would narrow it without any sink.
 */
export const seatFeedSink = formula({
  id: 'seat-feed-sink',
  version: 1,
  says: 'Seat feed = sink = (wanted width − width) × cos(seat) ÷ (1 ÷ (tan(seat) − tan(top)) + 1 ÷ (tan(throat) − tan(seat))).',
  source: SOURCE,
  inputs: {
    width: width('width of the seat along its face, before the cut'),
    'target-width': width('width along the face that is wanted'),
    ...ANGLES,
  },
  output: { kind: 'length', says: 'feed of the seat cutter along the axis, and sink of the valve' },
  evaluate: (x) => {
    const per = widening(x)
    const value = (x['target-width'] - x.width) / per.value
    const change = -value / per.value
    return {
      value,
      partials: {
        width: -1 / per.value,
        'target-width': 1 / per.value,
        'top-angle': change * per.top,
        'seat-angle': change * per.seat,
        'throat-angle': change * per.throat,
      },
    }
  },
  refuses: cuttersTooNear,
})
