/** One coefficient of a fit: constant, factor of √(depth ÷ root radius), factor of depth ÷ root radius. */
type Coefficient = readonly [number, number, number]
type Cubic = readonly [Coefficient, Coefficient, Coefficient, Coefficient]

/**
 * A published fit of the stress concentration at a groove round a bar: a cubic in 2 × depth ÷ diameter whose coefficients hang on
 * depth ÷ root radius, with one set up to 2 and another beyond. On the net section. A groove that leaves no section concentrates
 * nothing: Roark's columns add to (1, 0, 0), which catches a slip in copying; Peterson's are fitted to charts and come near it.
 */
export interface GrooveFit {
  /** Depth ÷ root radius from which the fit holds; it holds up to `MOST_SHARPNESS`. */
  readonly least: number
  readonly blunt: Cubic
  readonly sharp: Cubic
}

/** Depth ÷ root radius up to which the blunt set holds, and up to which the sharp one does. */
export const BLUNT_TO = 2
export const MOST_SHARPNESS = 50

/** Roark's Formulas for Stress and Strain, Table 17.1, U-notch round a shaft (read in reprints of the table). */
export const ROARK_TENSION: GrooveFit = {
  least: 0.25,
  blunt: [
    [0.455, 3.354, -0.769],
    [3.129, -15.955, 7.404],
    [-6.909, 29.286, -16.104],
    [4.325, -16.685, 9.469],
  ],
  sharp: [
    [0.935, 1.922, 0.004],
    [0.537, -3.708, 0.04],
    [-2.538, 3.438, -0.012],
    [2.066, -1.652, -0.031],
  ],
}

/** The same table, bending. */
export const ROARK_BENDING: GrooveFit = {
  least: 0.25,
  blunt: [
    [0.455, 3.354, -0.769],
    [0.891, -12.721, 4.593],
    [0.286, 15.481, -6.392],
    [-0.632, -6.115, 2.568],
  ],
  sharp: [
    [0.935, 1.922, 0.004],
    [-0.552, -5.327, 0.086],
    [0.754, 6.281, -0.121],
    [-0.138, -2.876, 0.031],
  ],
}

/** Peterson's Stress Concentration Factors (Pilkey), circumferential U-groove (coefficients read in a reprint). */
export const PETERSON_TENSION: GrooveFit = {
  least: 0.1,
  blunt: [
    [0.89, 2.208, -0.094],
    [-0.923, -6.678, 1.638],
    [2.893, 6.448, -2.516],
    [-1.912, -1.944, 0.963],
  ],
  sharp: [
    [1.037, 1.967, 0.002],
    [-2.679, -2.98, -0.053],
    [3.09, 2.124, 0.165],
    [-0.424, -1.153, -0.106],
  ],
}

/** The same, bending. */
export const PETERSON_BENDING: GrooveFit = {
  least: 0.25,
  blunt: [
    [0.594, 2.958, -0.52],
    [0.422, -10.545, 2.692],
    [0.501, 14.375, -4.486],
    [-0.613, -6.573, 2.177],
  ],
  sharp: [
    [0.965, 1.926, 0],
    [-2.773, -4.414, -0.017],
    [4.785, 4.681, 0.096],
    [-1.995, -2.241, -0.074],
  ],
}
