import type { CleanlinessCode } from "../cleanliness/CleanlinessCode.js";
import { codeOf } from "../cleanliness/codeOf.js";
import { countsPerMl } from "./countsPerMl.js";
import type { ParticleDistribution } from "./ParticleDistribution.js";

/**
 * Rounding in the sums over the bins that must not tip a count over a limit of the scale: fuel stated at the upper end
 * of a code's interval has that code.
 */
const ROUNDING = 1e-9;

/**
 * The cleanliness code of a distribution, for example behind a filter.
 *
 * @example
 * printCode(codeOfDistribution(distributionFromMass({ mass: 1e-3 }))) // "17/16/12"
 */
export function codeOfDistribution(distribution: ParticleDistribution): CleanlinessCode {
  const { at4, at6, at14 } = countsPerMl(distribution);
  const rounded = (count: number) => count * (1 - ROUNDING);
  return codeOf({ at4: rounded(at4), at6: rounded(at6), at14: rounded(at14) });
}
