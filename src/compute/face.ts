import { cosDegrees, RADIAN, sinDegrees } from './elementary.ts'
import { formula } from './formula.ts'
import type { Evaluated, FormulaInput } from './formula.ts'

const MARGIN = { kind: 'length', says: 'margin at its thinnest point before facing', least: 0, most: 20 } as const
const STOCK = { kind: 'length', says: 'stock taken off the face, square to the face', least: 0, most: 3 } as const
const ANGLE: FormulaInput = { kind: 'angle', says: 'angle of the face, measured from the head plane', least: 0, most: 60 }

/** How far a line at this angle from the head plane drops along the valve’s axis when it is moved square to itself by `stock`. */
export function axialDrop(stock: number, angle: number): Evaluated<'stock' | 'angle'> {
  const cosine = cosDegrees(angle)
  return { value: stock / cosine, partials: { stock: 1 / cosine, angle: (stock * sinDegrees(angle) * RADIAN) / (cosine * cosine) } }
}

/**
 * Margin left once a valve face is ground: length − length × ratio, mm. Stock n taken square to a face that stands at the
 * angle a from the head plane moves the face by n ÷ cos a along the valve's axis, and the same comes off the margin.
 * `per-normal` is that 1 ÷ cos a: 1.1547 for 30°, 1.4142 for 45°, 2 for 60°. Version 2 takes the angle itself. Below zero the
 * face would run out through the margin. Valid for faces of 0–60°.
 */
export const marginAfterFacing = formula({
  id: 'margin-after-facing',
  version: 1,
  says: 'Margin after facing = margin − stock off the face (square to it) × axial drop per unit of stock, which is 1 ÷ cos(face angle from the head plane).',
  source: 'Plane geometry: the axial shift of a line moved square to itself; the ratio 1.41 for a 45° face is common practice.',
  inputs: {
    margin: MARGIN,
    'normal-stock': STOCK,
    'per-normal': { kind: 'ratio', says: 'axial drop per unit of stock: 1 ÷ cos(face angle from the head plane)', least: 1, most: 2 },
  },
  output: { kind: 'length', says: 'margin after facing' },
  evaluate: (x) => ({
    value: x.margin - x['normal-stock'] * x['per-normal'],
    partials: { margin: 1, 'normal-stock': -x['per-normal'], 'per-normal': -x['normal-stock'] },
  }),
})

/** Margin left once a valve face is ground, from the face's angle: length − length ÷ cos(angle), mm. Faces of 0–60° from the head plane. */
export const marginAfterFacingAtAngle = formula({
  id: 'margin-after-facing',
  version: 2,
  says: 'Margin after facing = margin − stock off the face (square to it) ÷ cos(face angle from the head plane).',
  source: 'Plane geometry: the axial shift of a line moved square to itself; the ratio 1.41 for a 45° face is common practice.',
  inputs: { margin: MARGIN, 'normal-stock': STOCK, angle: ANGLE },
  output: { kind: 'length', says: 'margin after facing' },
  evaluate: (x) => {
    const drop = axialDrop(x['normal-stock'], x.angle)
    return { value: x.margin - drop.value, partials: { margin: 1, 'normal-stock': -drop.partials.stock, angle: -drop.partials.angle } }
  },
})

/** How far a valve sinks for stock taken square to its face, or to its seat: length ÷ cos(angle), mm. Angles of 0–60°. */
export const sinkFromNormalStock = formula({
  id: 'sink-from-normal-stock',
  version: 1,
  says: 'Sink of the valve = stock (square to the surface) ÷ cos(angle of the surface from the head plane).',
  source: 'Plane geometry: the axial shift of a line moved square to itself.',
  inputs: {
    'normal-stock': { ...STOCK, says: 'stock taken off the face or the seat, square to it' },
    angle: { ...ANGLE, says: 'angle of that face or seat, measured from the head plane' },
  },
  output: { kind: 'length', says: 'sink along the valve’s axis' },
  evaluate: (x) => {
    const { value, partials } = axialDrop(x['normal-stock'], x.angle)
    return { value, partials: { 'normal-stock': partials.stock, angle: partials.angle } }
  },
})

/**
 * Total sink of a valve from seat and face together: length + length ÷ cos(angle), mm. The stem tip rises and the installed height
 * grows by the same. The seat cutter is fed along the valve's axis, so its feed counts as it stands; face stock is square to the face.
 */
export const totalSink = formula({
  id: 'total-sink',
  version: 1,
  says: 'Total sink = feed of the seat cutter along the axis + stock off the face (square to it) ÷ cos(face angle from the head plane).',
  source: 'Plane geometry: both surfaces move the valve along its axis, and the moves add.',
  inputs: {
    'seat-feed': { kind: 'length', says: 'how far the seat cutter was fed along the axis', least: 0, most: 5 },
    'face-normal-stock': STOCK,
    'face-angle': ANGLE,
  },
  output: { kind: 'length', says: 'total sink of the valve: rise of its tip, growth of the installed height' },
  evaluate: (x) => {
    const drop = axialDrop(x['face-normal-stock'], x['face-angle'])
    return {
      value: x['seat-feed'] + drop.value,
      partials: { 'seat-feed': 1, 'face-normal-stock': drop.partials.stock, 'face-angle': drop.partials.angle },
    }
  },
})
