import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import type { Efficiency } from "./Capture.js";

/**
 * Soil that an element takes from each volume of fuel, kg/m3. Times its flow it is the rate at which the element loads.
 *
 * Allocates nothing, so it may stand in the inner loop of a life.
 *
 * @param efficiency one share a bin, from `captureOf`
 * @example
 * caughtMass(delivered, element.efficiency.middle) * flow // kg/s
 */
export function caughtMass(incoming: ParticleDistribution, efficiency: Efficiency): number {
  let caught = 0;
  for (let bin = 0; bin < efficiency.length; bin++) caught += (incoming.masses[bin] ?? 0) * (efficiency[bin] ?? 0);
  return caught;
}
