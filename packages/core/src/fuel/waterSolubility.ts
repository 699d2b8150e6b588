import { requireBetween, requireMoreThan } from "../require.js";

/**
 * Water that a petroleum fuel dissolves when saturated. It falls to less than half from 20 to 0 degC: what the warm
 * fuel held comes out as free water in the cold.
 *
 * Made for hydrocarbons other than olefins, and petroleum fractions. No measured table for diesel was found to check it
 * on; biodiesel and ethanol take up far more.
 *
 * @param given mass ratio of hydrogen to carbon; molar mass, kg/mol; temperature, K, from 233 to 373 (common practice,
 *   no source, for the ends)
 * @returns kg of water per kg of fuel
 * @throws InputError for a ratio outside 0.05 to 0.35, a molar mass not above 0, or a temperature outside 233 to 373 K
 * @see R. R. Hibbard, R. L. Schalla, NACA RM E52D24 (1952): log10 X = -(4200 H/C + 1050)(1/T - 0.0016) + 2, X in mol %
 * @example
 * waterSolubility({ hydrogenToCarbon: 0.181833, molarMass: 0.17033, temperature: 293.15 }) // 54.9e-6, n-dodecane
 */
export function waterSolubility(given: {
  readonly hydrogenToCarbon: number;
  readonly molarMass: number;
  readonly temperature: number;
}): number {
  const { hydrogenToCarbon, molarMass, temperature } = given;
  // From benzene (0.084) to methane (0.336), with room.
  requireBetween("waterSolubility", "hydrogenToCarbon", hydrogenToCarbon, { from: 0.05, to: 0.35 });
  requireMoreThan("waterSolubility", "molarMass", molarMass, 0, "kg/mol");
  requireBetween("waterSolubility", "temperature", temperature, { from: 233, to: 373 }, "K");
  const molePercent = 10 ** (-(4200 * hydrogenToCarbon + 1050) * (1 / temperature - 0.0016) + 2);
  const molarMassOfWater = 0.018015; // kg/mol
  return ((molePercent / 100) * molarMassOfWater) / molarMass;
}
