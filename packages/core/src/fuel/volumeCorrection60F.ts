import { requireBetween, requireMoreThan } from "../require.js";
import { type ProductGroup, requireProductGroup } from "./ProductGroup.js";
import { petroleumDensities } from "./volumeCorrection.js";

/**
 * Volume correction factor of petroleum products on the 60 degF basis (table 6B): density at a temperature over
 * density at 60 degF. For densities stated at 60 degF; everything else here starts from 15 degC.
 *
 * The 1980 form. The 2004 form moves the temperature scale slightly; at 850 kg/m3 and 100 degF they differ by 4e-6.
 *
 * @param given density at 60 degF, kg/m3; temperature, K; product group, taken from the density unless stated
 * @returns factor, no unit
 * @throws InputError for a density outside 610 to 1164 kg/m3, a temperature not above 0, or an unknown group
 * @see API Standard 2540 table 6B / API MPMS 11.1 (constants seen restated, density breaks from memory)
 * @example
 * volumeCorrection60F({ densityAt60F: 850, temperature: 310.927777777778 }) // 0.981440…, at 100 degF
 */
export function volumeCorrection60F(given: {
  readonly densityAt60F: number;
  readonly temperature: number;
  readonly group?: ProductGroup;
}): number {
  const { densityAt60F, temperature } = given;
  requireBetween("volumeCorrection60F", "densityAt60F", densityAt60F, petroleumDensities, "kg/m3");
  requireMoreThan("volumeCorrection60F", "temperature", temperature, 0, "K");
  const group = given.group ?? groupOf(densityAt60F);
  requireProductGroup("volumeCorrection60F", group);
  const { k0, k1, k2 } = constants[group];
  // 60 degF is 459.67 + 60 degrees Rankine, of 1/1.8 K each.
  const degreesF = 1.8 * temperature - 519.67;
  const expansion = (k0 / densityAt60F ** 2 + k1 / densityAt60F + k2) * degreesF;
  return Math.exp(-expansion * (1 + 0.8 * expansion));
}

// Density breaks, kg/m3 at 60 degF (from memory): petrol below 770.4, jet fuel from 787.5, fuel oil from 838.3.
function groupOf(densityAt60F: number): ProductGroup {
  if (densityAt60F >= 838.3) return "fuel oil";
  if (densityAt60F >= 787.5) return "jet fuel";
  if (densityAt60F >= 770.4) return "transition";
  return "petrol";
}

/** API 2540 table 6B (crude: 6A), expansion per degF = k0/rho^2 + k1/rho + k2. */
const constants: Readonly<Record<ProductGroup, { readonly k0: number; readonly k1: number; readonly k2: number }>> = {
  "fuel oil": { k0: 103.872, k1: 0.2701, k2: 0 },
  "jet fuel": { k0: 330.301, k1: 0, k2: 0 },
  transition: { k0: 1489.067, k1: 0, k2: -0.0018684 },
  petrol: { k0: 192.4571, k1: 0.2438, k2: 0 },
  crude: { k0: 341.0957, k1: 0, k2: 0 },
};
