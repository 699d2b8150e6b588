import { requireBetween, requireMoreThan } from "../../require.js";
import { MOST_ROUGH } from "./borders.js";
import { FrictionLaw } from "./FrictionLaw.js";

/**
 * Darcy friction factor of a round line at any Reynolds number.
 * Laminar flow does not feel the wall's roughness at all; turbulent flow does.
 *
 * 64/Re to Re 2300; Colebrook–White from Re 4000; between them a monotone, once-differentiable passage that is ours: the
 * flow there is unsteady and no law holds, so a figure from it is to be marked transitional.
 *
 * @param reynolds Reynolds number, more than 0
 * @param relativeRoughness roughness over bore, 0 to 0.05
 * @returns Darcy friction factor
 * @throws InputError outside those ranges
 * @see White, Fluid Mechanics (7th ed. 2011), eq. 6.13 and 6.48
 * @example
 * frictionFactor(1000, 0) // 0.064
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  requireMoreThan("frictionFactor", "reynolds", reynolds, 0);
  requireBetween("frictionFactor", "relativeRoughness", relativeRoughness, { from: 0, to: MOST_ROUGH });
  const law = new FrictionLaw(relativeRoughness, "smooth");
  law.reynolds = reynolds;
  law.update();
  return law.value / reynolds / reynolds;
}
