import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import type { Efficiency } from "./Capture.js";

/**
 * What an element lets through.
 *
 * Same particles in, same share out: no bin gains particles. Loads nothing; see `caughtMass` for what stays.
 *
 * @param efficiency one share a bin, from `captureOf`
 * @example
 * throughFilter(delivered, element.efficiency.middle)
 */
export function throughFilter(incoming: ParticleDistribution, efficiency: Efficiency): ParticleDistribution {
  const remaining = (value: number, bin: number) => value * (1 - (efficiency[bin] ?? 0));
  return { counts: incoming.counts.map(remaining), masses: incoming.masses.map(remaining) };
}
