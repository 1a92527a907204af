/** One kpsi in MPa and one inch in mm (exact by definition of pound-force and inch): Neuber's fit is printed in kpsi and inches. */
export const KPSI = 6.894757293168361
export const INCH_OF_NOTCH = 25.4

/** √a in √in from the tensile strength in kpsi, steels, bending or tension: Shigley, 9th ed., p. 346 (read in page copies). */
export const NEUBER_STEEL = [0.246, -3.08e-3, 1.51e-5, -2.67e-8] as const
