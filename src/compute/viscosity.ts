import { exp, ln } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

/** Walther's constant, good above about 2 mm²/s; the two temperatures at which oil sheets print viscosity; 0 °C in kelvin. */
const SHIFT = 0.7
const [COLD, HOT, ZERO] = [40, 100, 273.15]
const viscosity = (says: string, least: number, most: number): FormulaInput => ({ kind: 'ratio', says, least, most })

const twice = (v: number): number => ln(ln(v + SHIFT))
const slope = (v: number): number => 1 / ((v + SHIFT) * ln(v + SHIFT))

/**
 * Kinematic viscosity of an oil at any temperature from the two figures of its sheet, mm²/s as a plain number: Walther's line through
 * 40 °C and 100 °C. −10 to 150 °C. Multigrade oils at high shear run thinner. Explains; decides nothing.
 */
export const viscosityAtTemperature = formula({
  id: 'viscosity-at-temperature',
  version: 1,
  says: 'Viscosity = exp(exp(straight line in ln of the absolute temperature)) − 0.7, the line = ln ln(viscosity + 0.7) at 40 °C and at 100 °C.',
  source: 'Walther’s equation, the short form in ASTM D341 (recalled); worked by coefficients and by direct interpolation.',
  inputs: {
    'at-forty': viscosity('viscosity at 40 °C, mm²/s (cSt)', 5, 1000),
    'at-hundred': viscosity('viscosity at 100 °C, mm²/s (cSt)', 2, 60),
    temperature: { kind: 'temperature', says: 'temperature of the oil', least: -10, most: 150 },
  },
  output: { kind: 'ratio', says: 'kinematic viscosity at that temperature, mm²/s (cSt)' },
  weighs: 'explains',
  evaluate: (x) => {
    const kelvin = x.temperature + ZERO
    const span = ln((HOT + ZERO) / (COLD + ZERO))
    const share = ln(kelvin / (COLD + ZERO)) / span
    const [cold, hot] = [twice(x['at-forty']), twice(x['at-hundred'])]
    const inner = exp(cold + share * (hot - cold))
    const value = exp(inner) - SHIFT
    const change = (value + SHIFT) * inner
    return {
      value,
      partials: {
        'at-forty': change * (1 - share) * slope(x['at-forty']),
        'at-hundred': change * share * slope(x['at-hundred']),
        temperature: (change * (hot - cold)) / (span * kelvin),
      },
    }
  },
  refuses: (x) =>
    x['at-hundred'] >= x['at-forty'] ? 'an oil is thinner at 100 °C than at 40 °C: “at-hundred” must be less than “at-forty”.' : undefined,
})
