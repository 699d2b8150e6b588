import type { CountsPerMl } from "../cleanliness/CleanlinessCode.js";
import { countFrom } from "./countFrom.js";
import { ML_PER_M3 } from "./distributionFromCounts.js";
import type { ParticleDistribution } from "./ParticleDistribution.js";

/**
 * What a particle counter would read: particles per mL of 4, 6 and 14 um(c) and up.
 *
 * @example
 * countsPerMl(distributionFromMass({ mass: 1e-3 })) // { at4: 945.7, at6: 402.9, at14: 28.18 }
 */
export function countsPerMl(distribution: ParticleDistribution): CountsPerMl {
  const at = (size: number) => countFrom(distribution, size) / ML_PER_M3;
  return { at4: at(4e-6), at6: at(6e-6), at14: at(14e-6) };
}
