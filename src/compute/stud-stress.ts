import { cosDegrees, PI, RADIAN, tanDegrees } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const FORCE: FormulaInput = { kind: 'force', says: 'pull along the stud', least: 0, most: 50000 }
const SIDE: FormulaInput = { kind: 'force', says: 'side force at the fulcrum', least: 0, most: 5000 }
const NET: FormulaInput = { kind: 'length', says: 'diameter at the weakest section: the net one at a groove', least: 3, most: 40 }

/** Nominal tension in a round bar: force ÷ area, MPa. On the net section of a groove, as the stress concentrations ask. 3–40 mm. */
export const netTensionStress = formula({
  id: 'net-tension-stress',
  version: 1,
  says: 'Tension = 4 × pull ÷ (π × net diameter²).',
  source: 'Definition (force by area); Roark’s Formulas for Stress and Strain names the same nominal stress.',
  inputs: { force: FORCE, 'net-diameter': NET },
  output: { kind: 'stress', says: 'nominal tension on the net section' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const area = (PI / 4) * x['net-diameter'] * x['net-diameter']
    const value = x.force / area
    return { value, partials: { force: 1 / area, 'net-diameter': (-2 * value) / x['net-diameter'] } }
  },
})

/** Side force of a pushrod that leans: force × tan(angle), N. The angle in the rocker's plane; a guide plate takes what lies across it. */
export const studSideForce = formula({
  id: 'stud-side-force',
  version: 1,
  says: 'Side force on the stud = pushrod force along the stud × tan(lean of the pushrod).',
  source: 'Statics of a leaning strut, derived; solved a second time with vectors.',
  inputs: {
    'pushrod-force': { kind: 'force', says: 'pushrod force, its part along the stud: tip force × rocker ratio', least: 0, most: 20000 },
    lean: { kind: 'angle', says: 'lean of the pushrod from the stud’s direction', least: 0, most: 30 },
  },
  output: { kind: 'force', says: 'side force on the stud' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const cosine = cosDegrees(x.lean)
    const tangent = tanDegrees(x.lean)
    return {
      value: x['pushrod-force'] * tangent,
      partials: { 'pushrod-force': tangent, lean: (x['pushrod-force'] * RADIAN) / (cosine * cosine) },
    }
  },
})

/** Bending stress in a stud by a side force at the fulcrum: force × length ÷ length³, MPa. A stud clamped at the boss; add it to the tension. */
export const studBending = formula({
  id: 'stud-bending',
  version: 1,
  says: 'Bending stress = 32 × side force × height of the fulcrum above the section ÷ (π × net diameter³).',
  source:
    'Beam theory of a bar held at one end, as in any strength-of-materials text; Roark’s Formulas for Stress and Strain names the same nominal stress.',
  inputs: {
    'side-force': SIDE,
    height: { kind: 'length', says: 'height of the fulcrum above the section that is looked at', least: 0, most: 100 },
    'net-diameter': NET,
  },
  output: { kind: 'stress', says: 'nominal bending stress on the net section' },
  weighs: 'never-clears',
  evaluate: (x) => {
    const across = x['net-diameter']
    const each = 32 / (PI * across * across * across)
    const value = x['side-force'] * x.height * each
    return { value, partials: { 'side-force': x.height * each, height: x['side-force'] * each, 'net-diameter': (-3 * value) / across } }
  },
})
