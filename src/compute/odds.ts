import { exp, ln, power } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

const count = (says: string, least: number, most: number): FormulaInput => ({ kind: 'count', says, least, most, whole: true })
const hours = (says: string, least: number): FormulaInput => ({ kind: 'ratio', says, least, most: 100000 })
const SHAPE: FormulaInput = {
  kind: 'ratio',
  says: 'shape of the Weibull line: under 1 early failures, 1 chance, over 1 wear',
  least: 0.3,
  most: 8,
}
/** Exponent at which one part in 10¹³ still lives: a line drawn through failures says nothing out there. */
const ALL_GONE = 30

/**
 * Chance that all parts nobody has looked at are sound, from those of the same set that were: beta-binomial prediction, all shares of
 * bad parts held equally likely beforehand. Parts of one engine share a history, so the true spread is wider: it explains, no more.
 */
export const chanceRestSound = formula({
  id: 'chance-rest-sound',
  version: 1,
  says: 'Chance that none of the rest is bad = the product of (sound + i) ÷ (looked at + 1 + i), i from 1 to the number of the rest.',
  source: 'Beta-binomial prediction with a uniform prior, derived; equal to counting every finite set (hypergeometric).',
  inputs: {
    bad: count('parts found bad', 0, 200),
    'looked-at': count('parts looked at', 1, 200),
    rest: count('parts of the set not looked at', 1, 200),
  },
  output: { kind: 'ratio', says: 'chance that every part not looked at is sound' },
  weighs: 'explains',
  evaluate: (x) => {
    const sound = x['looked-at'] - x.bad
    let value = 1
    for (let i = 1; i <= x.rest; i += 1) value *= (sound + i) / (x['looked-at'] + 1 + i)
    return { value, partials: { bad: 0, 'looked-at': 0, rest: 0 } }
  },
  refuses: (x) => (x.bad > x['looked-at'] ? '“bad” is more than “looked-at”.' : undefined),
})

/**
 * Chance that a part which has lived so long fails in the next stretch, by a Weibull line: no unit. Age, stretch and characteristic life
 * in one and the same unit (hours of running). The line comes from a fleet, not from this engine: it explains.
 */
export const chanceFailsNext = formula({
  id: 'chance-fails-next',
  version: 1,
  says: 'Chance of failing next = 1 − exp((age ÷ life)^shape − ((age + stretch) ÷ life)^shape).',
  source:
    'Weibull distribution, a survivor’s chance; Miller and Freund, Probability and Statistics for Engineers, p. 143 (read in a textbook companion).',
  inputs: {
    age: hours('hours that the part has run', 0),
    stretch: hours('hours that lie ahead', 1),
    life: hours('characteristic life: hours by which 63 % have failed', 10),
    shape: SHAPE,
  },
  output: { kind: 'ratio', says: 'chance of failing in the stretch ahead' },
  weighs: 'explains',
  evaluate: (x) => {
    const [before, after] = [x.age / x.life, (x.age + x.stretch) / x.life]
    const [used, then] = [power(before, x.shape), power(after, x.shape)]
    const survives = exp(used - then)
    const [perBefore, perAfter] = [before === 0 ? 0 : (used * x.shape) / before, (then * x.shape) / after]
    return {
      value: 1 - survives,
      partials: {
        age: (survives * (perAfter - perBefore)) / x.life,
        stretch: (survives * perAfter) / x.life,
        life: (survives * (used - then) * x.shape) / x.life,
        shape: survives * (then * ln(after) - (before === 0 ? 0 : used * ln(before))),
      },
    }
  },
  refuses: (x) =>
    power((x.age + x.stretch) / x.life, x.shape) > ALL_GONE
      ? 'long before “age” and “stretch” are over, as good as every part has failed.'
      : undefined,
})

/** Life by which a given share has failed, by a Weibull line: life × (−ln(1 − share))^(1 ÷ shape), in the unit of the life. B10 is a share of 0.1. */
export const lifeAtShare = formula({
  id: 'life-at-share',
  version: 1,
  says: 'Life by which that share has failed = characteristic life × (−ln(1 − share))^(1 ÷ shape).',
  source: 'Weibull distribution, its percentile, derived from the definition.',
  inputs: {
    life: hours('characteristic life: hours by which 63 % have failed', 10),
    share: { kind: 'ratio', says: 'share that has failed; 0.1 for B10', least: 0.001, most: 0.99 },
    shape: SHAPE,
  },
  output: { kind: 'ratio', says: 'hours by which that share has failed' },
  weighs: 'explains',
  evaluate: (x) => {
    const gone = -ln(1 - x.share)
    const value = x.life * power(gone, 1 / x.shape)
    return {
      value,
      partials: {
        life: value / x.life,
        share: value / (x.shape * gone * (1 - x.share)),
        shape: (-value * ln(gone)) / (x.shape * x.shape),
      },
    }
  },
})
