import { requireBetween } from "../../require.js";
import { sumFrom } from "./massOf.js";
import type { ParticleDistribution } from "./ParticleDistribution.js";
import { binCount, binOf, sizeEdges } from "./sizeEdges.js";

/**
 * Particles of a size and up, 1/m3. Exact at the sizes that are stated in practice (`sizeEdges` holds them); inside a
 * bin its particles are shared out evenly over log size.
 *
 * @param size m, from 0.7 to 150 um
 * @throws InputError for a size outside the bins
 * @example
 * countFrom(distributionFromMass({ mass: 1e-3 }), 10e-6) // 8.21e7, that is 82.1 per mL
 */
export function countFrom(distribution: ParticleDistribution, size: number): number {
  requireBetween("countFrom", "size", size, { from: sizeEdges[0] ?? 0, to: sizeEdges[binCount] ?? 0 }, "m");
  const bin = binOf(size);
  const [low, high] = [sizeEdges[bin] ?? 0, sizeEdges[bin + 1] ?? 0];
  const share = size === low ? 1 : Math.log(high / size) / Math.log(high / low);
  return sumFrom(distribution.counts, bin + 1) + share * (distribution.counts[bin] ?? 0);
}
