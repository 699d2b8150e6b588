import { requireMoreThan } from "../require.js";
import { mm2PerSecond } from "./units.js";

/**
 * Viscosity from Z by the closed formula printed beside ASTM D341's equation. Kept as a check on the standard only:
 * `d341Viscosity` is exact and is what everything else uses.
 *
 * Its round trip with `d341Z` misses by up to 1.1e-4 between 0.5 and 3 mm2/s.
 *
 * @param z the number Z, more than 0.7
 * @returns kinematic viscosity, m2/s
 * @throws InputError for a Z of 0.7 or less
 * @see ASTM D341-93 to -20, section 5: v = (Z - 0.7) - exp(-0.7487 - 3.295 (Z - 0.7) + 0.6119 (Z - 0.7)^2 - 0.3193 (Z - 0.7)^3)
 * @example
 * d341ClosedInverse(2.7007540891204935) // 2.000172082726817e-6, not 2e-6
 */
export function d341ClosedInverse(z: number): number {
  requireMoreThan("d341ClosedInverse", "z", z, 0.7);
  const y = z - 0.7;
  return (y - Math.exp(-0.7487 - 3.295 * y + 0.6119 * y ** 2 - 0.3193 * y ** 3)) * mm2PerSecond;
}
