import { formula } from './formula.ts'

/**
 * Tension on the stud that carries a rocker: force × ratio, N. Valve tip and pushrod push the rocker the same way, so their
 * forces add at the stud. Static, rigid, no friction, both forces along the stud: it explains and screens, and is no proof
 * of strength. A shaft-mounted rocker loads a stand, not a stud. Force 0–20,000 N, ratio 0.2–4.
 */
export const studTension = formula({
  id: 'stud-tension',
  version: 1,
  says: 'Tension on the rocker stud = force at the valve tip × (1 + rocker ratio).',
  source: 'Statics of a lever: moments about the fulcrum give the pushrod force (tip force × ratio), and the stud holds the sum.',
  inputs: {
    'tip-force': { kind: 'force', says: 'force between rocker and valve tip, such as the open load of the spring', least: 0, most: 20000 },
    ratio: { kind: 'ratio', says: 'rocker ratio: valve arm ÷ pushrod arm', least: 0.2, most: 4 },
  },
  output: { kind: 'force', says: 'tension on the stud' },
  evaluate: (x) => ({
    value: x['tip-force'] * (1 + x.ratio),
    partials: { 'tip-force': 1 + x.ratio, ratio: x['tip-force'] },
  }),
})
