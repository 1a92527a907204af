import { formula } from './formula.ts'

/** Gross lift at the valve, before lash: length × ratio, mm. The lift that clearances are judged by. Lobe 0–25 mm, ratio 0.2–4. */
export const grossLift = formula({
  id: 'gross-lift',
  version: 1,
  says: 'Gross valve lift = lobe lift × rocker ratio.',
  source: 'Kinematics of a lever; common practice.',
  inputs: {
    'lobe-lift': { kind: 'length', says: 'lift of the cam lobe, at the tappet', least: 0, most: 25 },
    ratio: { kind: 'ratio', says: 'rocker ratio: valve arm ÷ pushrod arm', least: 0.2, most: 4 },
  },
  output: { kind: 'length', says: 'gross lift at the valve' },
  evaluate: (x) => ({ value: x['lobe-lift'] * x.ratio, partials: { 'lobe-lift': x.ratio, ratio: x['lobe-lift'] } }),
})

/** Net lift at the valve with solid tappets: difference of two lengths, mm. Lash at the valve, 0–2 mm; a hydraulic train has none. */
export const netLift = formula({
  id: 'net-lift',
  version: 1,
  says: 'Net valve lift = gross valve lift − lash at the valve.',
  source: 'Definition (a difference); common practice.',
  inputs: {
    'gross-lift': { kind: 'length', says: 'gross lift at the valve', least: 0, most: 40 },
    lash: { kind: 'length', says: 'lash between rocker and valve tip', least: 0, most: 2 },
  },
  output: { kind: 'length', says: 'net lift at the valve' },
  evaluate: (x) => ({ value: x['gross-lift'] - x.lash, partials: { 'gross-lift': 1, lash: -1 } }),
  refuses: (x) => (x.lash > x['gross-lift'] ? '“lash” is more than “gross-lift”, so the valve would not open.' : undefined),
})
