import { requireAtLeast } from "../require.js";
import { mm2PerSecond } from "./units.js";

/** Least viscosity the equation is stated for, m2/s: 0.21 mm2/s (ASTM D341-93, section 5; from memory). */
export const d341LeastViscosity = 2.1e-7;

/**
 * The number Z of ASTM D341, whose double logarithm is a straight line over log temperature.
 * The exponential makes it hold for thin fuels too: Z = v + 0.7 alone is good above 2 mm2/s only.
 *
 * Holds from 0.21 to 2e7 mm2/s (ASTM D341, from memory). Rounding is the only error.
 *
 * @param kinematicViscosity m2/s
 * @returns Z, no unit
 * @throws InputError below 0.21 mm2/s
 * @see ASTM D341-93 to -20, section 5: Z = v + 0.7 + exp(-1.47 - 1.84 v - 0.51 v^2), v in mm2/s
 * @example
 * d341Z(2e-6) // 2.7007540891204935
 */
export function d341Z(kinematicViscosity: number): number {
  requireAtLeast("d341Z", "kinematicViscosity", kinematicViscosity, d341LeastViscosity, "m2/s");
  return zOf(kinematicViscosity / mm2PerSecond);
}

/** Z of a viscosity in mm2/s, unchecked. */
export function zOf(v: number): number {
  return v + 0.7 + Math.exp(-1.47 - 1.84 * v - 0.51 * v * v);
}
