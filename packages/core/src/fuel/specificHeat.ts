import { requireMoreThan } from "../require.js";
import { icePoint } from "./units.js";

/**
 * Specific heat of a petroleum liquid from its density.
 *
 * Made for petroleum oils; against the published 1800 (diesel) and 2010 J/kg K (petrol) it gives 5 % more and the same.
 * Ethanol (2386) and biodiesel are outside it.
 *
 * @param given density at 15 degC, kg/m3; temperature, K
 * @returns J/kg K
 * @throws InputError for a density or temperature not above 0
 * @see C. S. Cragoe, NBS Miscellaneous Publication 97 (1929): (1683 + 3.39 t)/sqrt(d), t in degC (equation from memory)
 * @example
 * specificHeat({ densityAt15: 840, temperature: 288.15 }) // 1892
 */
export function specificHeat(given: { readonly densityAt15: number; readonly temperature: number }): number {
  requireMoreThan("specificHeat", "densityAt15", given.densityAt15, 0, "kg/m3");
  requireMoreThan("specificHeat", "temperature", given.temperature, 0, "K");
  return (1683 + 3.39 * (given.temperature - icePoint)) / Math.sqrt(given.densityAt15 / 1000);
}
