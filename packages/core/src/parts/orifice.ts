import { requireBetween, requireMoreThan } from "../require.js";
import { type Named, nameOf } from "./Named.js";

/** A sharp restriction: a jet, a drilled plug, a half-shut cock. */
export interface Orifice extends Named {
  readonly kind: "orifice";
  /** m */
  readonly diameter: number;
  /** discharge coefficient, as stated by the user */
  readonly dischargeCoefficient: number;
}

/**
 * A sharp orifice by its discharge coefficient: drop = density/2 (flow/(Cd area))^2, none of it recovered.
 *
 * The coefficient is steady only in well turbulent flow; below a Reynolds number of some 10 000 in the hole it falls and
 * the drop is higher than this says (common practice, no source).
 *
 * @param given diameter, m; dischargeCoefficient, more than 0, at most 1
 * @throws InputError naming the field
 * @see White, Fluid Mechanics (7th ed. 2011), section 6.12
 * @example
 * orifice({ diameter: 0.002, dischargeCoefficient: 0.61 })
 */
export function orifice(given: Omit<Orifice, "kind">): Orifice {
  requireMoreThan("orifice", "diameter", given.diameter, 0, "m");
  requireMoreThan("orifice", "dischargeCoefficient", given.dischargeCoefficient, 0);
  requireBetween("orifice", "dischargeCoefficient", given.dischargeCoefficient, { from: 0, to: 1 });
  const { diameter, dischargeCoefficient } = given;
  return { kind: "orifice", ...nameOf(given), diameter, dischargeCoefficient };
}
