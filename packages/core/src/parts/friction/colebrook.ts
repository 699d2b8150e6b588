import { requireBetween } from "../../require.js";
import { LAMINAR_END, MOST_ROUGH } from "./borders.js";
import { colebrookRoot } from "./colebrookRoot.js";

/**
 * Darcy friction factor of turbulent flow in a round line, from the Colebrook–White equation.
 * It is what a rougher wall or a slower flow costs; at high Reynolds number only the roughness counts.
 *
 * Holds from Re 4000 (the equation itself is solved from Re 2300 up); the equation is a fit to measurements, good to
 * some 5 % in service. Against 64-digit arithmetic it is within 4e-15 of the result.
 *
 * @param reynolds Reynolds number, 2300 to 1e13
 * @param relativeRoughness roughness over bore, 0 to 0.05
 * @returns Darcy friction factor
 * @throws InputError outside those ranges
 * @see C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133
 * @example
 * colebrook(1e5, 0) // 0.0179897730843 to 12 digits
 */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  requireBetween("colebrook", "reynolds", reynolds, { from: LAMINAR_END, to: 1e13 });
  requireBetween("colebrook", "relativeRoughness", relativeRoughness, { from: 0, to: MOST_ROUGH });
  const root = colebrookRoot(reynolds, relativeRoughness);
  return 1 / (root * root);
}
