import { formula } from './formula.ts'

/**
 * Margin left once a valve face is ground: length − length × ratio, mm. Stock n taken square to a face that stands at the
 * angle a from the head plane moves the face by n ÷ cos a along the valve's axis, and the same comes off the margin.
 * `per-normal` is that 1 ÷ cos a: 1.1547 for 30°, 1.4142 for 45°, 2 for 60°. It comes in as a figure because deciding code
 * has no cosine of its own. Below zero the face would run out through the margin. Valid for faces of 0–60°.
 */
export const marginAfterFacing = formula({
  id: 'margin-after-facing',
  version: 1,
  says: 'Margin after facing = margin − stock off the face (square to it) × axial drop per unit of stock, which is 1 ÷ cos(face angle from the head plane).',
  source: 'Plane geometry: the axial shift of a line moved square to itself; the ratio 1.41 for a 45° face is common practice.',
  inputs: {
    margin: { kind: 'length', says: 'margin at its thinnest point before facing', least: 0, most: 20 },
    'normal-stock': { kind: 'length', says: 'stock taken off the face, square to the face', least: 0, most: 3 },
    'per-normal': { kind: 'ratio', says: 'axial drop per unit of stock: 1 ÷ cos(face angle from the head plane)', least: 1, most: 2 },
  },
  output: { kind: 'length', says: 'margin after facing' },
  evaluate: (x) => ({
    value: x.margin - x['normal-stock'] * x['per-normal'],
    partials: { margin: 1, 'normal-stock': -x['per-normal'], 'per-normal': -x['normal-stock'] },
  }),
})
