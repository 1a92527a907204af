import { PI } from './elementary.ts'
import { formula } from './formula.ts'
import type { FormulaInput } from './formula.ts'

/** Standard gravity, mm/s². */
const GRAVITY = 9806.65
/** mm³/s in one L/min. */
const MM3_EACH_SECOND = 1_000_000 / 60
/** Loss at a sharp entrance, in velocity heads (common in hydraulics texts), and one more for the speed itself. */
const VELOCITY_HEADS = 1.5
/** Where the stream in a drain turns turbulent, the laminar friction below no longer holds. */
const LAMINAR_TO = 2000

const DRAIN = {
  'drain-diameter': { kind: 'length', says: 'diameter of a drain hole', least: 3, most: 40 },
  'drain-length': { kind: 'length', says: 'length of a drain hole', least: 2, most: 200 },
  viscosity: {
    kind: 'ratio',
    says: 'kinematic viscosity of the oil at its temperature, mm²/s (cSt) as a plain number',
    least: 2,
    most: 2000,
  },
} as const
const HEAD: FormulaInput = {
  kind: 'length',
  says: 'height of the oil above the drain’s sill, and the drop of the hole if it runs full',
  least: 0.5,
  most: 200,
}
const SOURCE =
  'Entrance loss and laminar pipe friction, as in Munson, Young and Okiishi, Fundamentals of Fluid Mechanics (pipe case read in a textbook companion); sum derived and solved a second way.'
const NOT_COUNTED = 'Windage, blow-by, foam and dirt are not in it: within a factor of two of the flow at best'

/** Height that drives a stream at this speed (mm/s) through one drain, and its change with each figure. */
function headAt(speed: number, x: Readonly<Record<keyof typeof DRAIN, number>>) {
  const across = x['drain-diameter']
  const friction = (32 * x.viscosity * x['drain-length']) / (across * across)
  return {
    value: ((VELOCITY_HEADS * speed * speed) / 2 + friction * speed) / GRAVITY,
    speed: (VELOCITY_HEADS * speed + friction) / GRAVITY,
    friction: speed / GRAVITY,
    perLength: friction / x['drain-length'],
    perViscosity: friction / x.viscosity,
    perDiameter: (-2 * friction) / across,
  }
}

const turbulent = (speed: number, x: Readonly<Record<keyof typeof DRAIN, number>>): string | undefined =>
  (speed * x['drain-diameter']) / x.viscosity > LAMINAR_TO
    ? `the stream in the drain is turbulent; this holds below a Reynolds number of ${String(LAMINAR_TO)}.`
    : undefined

const area = (diameter: number): number => (PI / 4) * diameter * diameter

/** Flow through one drain under a standing height of oil: L/min from lengths and viscosity. Laminar only. Explains, never relaxes a rule. */
export const drainFlow = formula({
  id: 'drain-flow',
  version: 1,
  says: `Flow of one drain = its area × the speed that solves gravity × height = 1.5 × speed² ÷ 2 + 32 × viscosity × length × speed ÷ diameter². ${NOT_COUNTED}.`,
  source: SOURCE,
  inputs: { head: HEAD, ...DRAIN },
  output: { kind: 'flow', says: 'flow of one drain' },
  weighs: 'explains',
  evaluate: (x) => {
    const speed = speedUnder(x)
    const held = headAt(speed, x)
    const out = area(x['drain-diameter']) / MM3_EACH_SECOND
    const bySpeed = out / held.speed
    const byFriction = -bySpeed * held.friction
    return {
      value: out * speed,
      partials: {
        head: bySpeed,
        'drain-diameter': (2 * out * speed) / x['drain-diameter'] + byFriction * held.perDiameter,
        'drain-length': byFriction * held.perLength,
        viscosity: byFriction * held.perViscosity,
      },
    }
  },
  refuses: (x) => turbulent(speedUnder(x), x),
})

function speedUnder(x: Readonly<Record<'head' | keyof typeof DRAIN, number>>): number {
  const friction = (32 * x.viscosity * x['drain-length']) / (x['drain-diameter'] * x['drain-diameter'])
  // Written as a quotient, so that thick oil doesn't lose digits in the difference of two near-equal numbers.
  return (2 * GRAVITY * x.head) / (friction + Math.sqrt(friction * friction + 2 * VELOCITY_HEADS * GRAVITY * x.head))
}

/** How much of the flow named goes through: the level is worked out three times, because the flow is known within a factor of two at best. */
const poolLevelAt = (id: string, share: number, aside: string) =>
  formula({
    id,
    version: 1,
    says: `Oil level above the drains’ sills${aside} = (1.5 × speed² ÷ 2 + 32 × viscosity × length × speed ÷ diameter²) ÷ gravity, speed = flow ÷ (drains × area of one). ${NOT_COUNTED}.`,
    source: SOURCE,
    inputs: {
      flow: { kind: 'flow', says: 'oil that reaches this rocker box', least: 0.05, most: 60 },
      drains: { kind: 'count', says: 'number of equal drain holes', least: 1, most: 20, whole: true },
      ...DRAIN,
    },
    output: { kind: 'length', says: `oil level above the sills of the drains${aside}` },
    weighs: 'explains',
    evaluate: (x) => {
      const across = area(x['drain-diameter'])
      const speed = (share * x.flow * MM3_EACH_SECOND) / (x.drains * across)
      const held = headAt(speed, x)
      return {
        value: held.value,
        partials: {
          flow: (held.speed * speed) / x.flow,
          drains: 0,
          'drain-diameter': (held.speed * -2 * speed) / x['drain-diameter'] + held.friction * held.perDiameter,
          'drain-length': held.friction * held.perLength,
          viscosity: held.friction * held.perViscosity,
        },
      }
    },
    refuses: (x) => turbulent((share * x.flow * MM3_EACH_SECOND) / (x.drains * area(x['drain-diameter'])), x),
  })

/**
 * Level of the oil that stands on the head, above the sills of equal drains: mm from L/min, lengths and viscosity. Compare with the
 * guide tops, and show the three levels together: the flow is known within a factor of two at best. It explains a wet guide; it
 * never relaxes a rule about pump or seals. Laminar only; a tilted engine adds its own.
 */
export const poolLevel = poolLevelAt('pool-level', 1, '')

/** The same at half the flow: the low end of what is known. */
export const poolLevelHalfFlow = poolLevelAt('pool-level-half-flow', 0.5, ' at half the flow')

/** The same at twice the flow: the high end of what is known. */
export const poolLevelDoubleFlow = poolLevelAt('pool-level-double-flow', 2, ' at twice the flow')
