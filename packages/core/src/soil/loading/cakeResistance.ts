import { requireBetween, requireMoreThan } from "../../require.js";
import { DUST_DENSITY } from "../distribution/ParticleDistribution.js";

/**
 * Specific resistance of a cake of mineral dust, m/kg: what each kg per m2 adds to a medium's resistance (1/m).
 *
 * Kozeny and Carman's law for a bed of grains. A cake of medium dust adds little to a clean medium, which suggests that
 * pore blocking, and not cake, ends a fuel filter's life. Porosity matters most: from 0.4 to 0.6 it falls to a fifth.
 *
 * @param given porosity, above 0 and below 1; Sauter mean size, m; density of the grains, kg/m3, dust's when left out
 * @throws InputError naming the field
 * @see P. C. Carman, Trans. Inst. Chem. Eng. 15 (1937) 150: 180 (1 - e) / (rho d^2 e^3)
 * @example
 * cakeResistance({ porosity: 0.5, size: 6.85e-6 }) // 5.79e9
 */
export function cakeResistance(given: {
  readonly porosity: number;
  readonly size: number;
  readonly density?: number;
}): number {
  const { porosity, size, density = DUST_DENSITY } = given;
  // Loosest and densest beds that are still beds; common practice, no source.
  requireBetween("cakeResistance", "porosity", porosity, { from: 0.2, to: 0.95 });
  requireMoreThan("cakeResistance", "size", size, 0, "m");
  requireMoreThan("cakeResistance", "density", density, 0, "kg/m3");
  return (180 * (1 - porosity)) / (density * size * size * porosity ** 3);
}
