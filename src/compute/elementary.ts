import stdlibAtan from '@stdlib/math-base-special-atan'
import stdlibCos from '@stdlib/math-base-special-cos'
import stdlibExp from '@stdlib/math-base-special-exp'
import stdlibLn from '@stdlib/math-base-special-ln'
import stdlibPow from '@stdlib/math-base-special-pow'
import stdlibSin from '@stdlib/math-base-special-sin'
import stdlibTan from '@stdlib/math-base-special-tan'

// The one door to elementary functions: pinned pure-JavaScript packages, so that the last bit is the same on every engine and in
// five years (Math.pow alone differs between two releases of Node). What they are made of is + − × ÷ and bit patterns.

/** The double nearest to π. */
export const PI = 3.141592653589793

/** Radians in one degree: degrees come in and go out everywhere, and radians live only in this file and in partials. */
export const RADIAN = PI / 180

/** Cosine of an angle in degrees. NaN where the angle is no finite number. */
export function cosDegrees(angle: number): number {
  return stdlibCos(angle * RADIAN)
}

/** Sine of an angle in degrees. NaN where the angle is no finite number. */
export function sinDegrees(angle: number): number {
  return stdlibSin(angle * RADIAN)
}

/** Tangent of an angle in degrees: huge near ±90°, so callers keep their ranges away from it. NaN where the angle is no finite number. */
export function tanDegrees(angle: number): number {
  return stdlibTan(angle * RADIAN)
}

/** The angle in degrees, −90 to 90, whose tangent this is. */
export function degreesOfTangent(tangent: number): number {
  return stdlibAtan(tangent) / RADIAN
}

/** eˣ. 0 far below zero, Infinity beyond 709. */
export function exp(x: number): number {
  return stdlibExp(x)
}

/** Natural logarithm. NaN below zero, −Infinity at zero. */
export function ln(x: number): number {
  return stdlibLn(x)
}

/** A base above zero to any power. */
export function power(base: number, exponent: number): number {
  return stdlibPow(base, exponent)
}
