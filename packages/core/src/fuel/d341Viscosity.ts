import { requireMoreThan } from "../require.js";
import { zOf } from "./d341Z.js";
import { mm2PerSecond } from "./units.js";

/**
 * Viscosity that has a given Z of ASTM D341: the exact inverse of `d341Z`, found by Newton's method in a bracket.
 *
 * The closed inverse printed in the standard misses by up to 1.1e-4 below 2 mm2/s; this one returns to within
 * rounding. It always ends: Z rises with viscosity everywhere, and its exponential lies between 0 and 0.23, which
 * brackets the answer.
 *
 * @param z the number Z, more than the Z of no viscosity at all, 0.7 + exp(-1.47)
 * @returns kinematic viscosity, m2/s
 * @throws InputError for a Z no liquid has
 * @see ASTM D341-93 to -20, section 5
 * @example
 * d341Viscosity(2.7007540891204935) // 2e-6
 */
export function d341Viscosity(z: number): number {
  requireMoreThan("d341Viscosity", "z", z, zOf(0));
  let low = Math.max(0, z - 0.7 - Math.exp(-1.47));
  let high = z - 0.7;
  let v = high;
  // Newton's method converges in 4 to 6 steps here; the count only bounds rounding that never settles.
  for (let step = 0; step < 60 && high > low; step++) {
    const excess = zOf(v) - z;
    if (excess === 0) break;
    if (excess > 0) high = v;
    else low = v;
    const slope = 1 - (1.84 + 1.02 * v) * Math.exp(-1.47 - 1.84 * v - 0.51 * v * v);
    const guess = v - excess / slope;
    const next = guess > low && guess < high ? guess : (low + high) / 2;
    if (next === v) break;
    v = next;
  }
  return v * mm2PerSecond;
}
