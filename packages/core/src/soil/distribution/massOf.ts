import type { ParticleDistribution } from "./ParticleDistribution.js";
import { binOf } from "./sizeEdges.js";

/**
 * Mass of all particles, kg/m3 of fuel; 1e-3 is 1 mg/L.
 *
 * @example
 * massOf(distributionFromMass({ mass: 2e-3 })) // 2e-3
 */
export function massOf(distribution: ParticleDistribution): number {
  return sumFrom(distribution.masses, 0);
}

/** Mass of the particles in the bins from an edge up, kg/m3. */
export function massFrom(distribution: ParticleDistribution, edge: number): number {
  return sumFrom(distribution.masses, binOf(edge));
}

/** Sum of an array from an index on, smallest (last) terms first. */
export function sumFrom(values: Float64Array, first: number): number {
  let sum = 0;
  for (let at = values.length - 1; at >= first; at--) sum += values[at] ?? 0;
  return sum;
}
