import {
  distributionFromCode,
  distributionFromCounts,
  distributionFromMass,
  type ParticleDistribution,
  parseCode,
} from "@thirstline/core";
import type { SystemSolids } from "@thirstline/spec/system";
import type { LifeReason } from "./LifeAnswer.js";

/** Delivered solids by size, and how much of them the counts do not carry. */
export interface Delivered {
  readonly distribution: ParticleDistribution;
  /** share of the mass beyond the counted sizes, 0 to 1; 0 for solids stated by mass */
  readonly extrapolated: number;
}

/** Particles in fuel from a code (its upper limits, the safe side), counts, or solids of a dust. */
export function deliveredOf(fuel: SystemSolids): Delivered | LifeReason {
  if (fuel.solids !== undefined) {
    const dust = fuel.dust === undefined ? {} : { dust: fuel.dust };
    return { distribution: distributionFromMass({ mass: fuel.solids, ...dust }), extrapolated: 0 };
  }
  const made = fuel.counts
    ? distributionFromCounts(fuel.counts)
    : fuel.code === undefined
      ? null
      : distributionFromCode(parseCode(fuel.code));
  if (made === null) return { code: "no delivered fuel" };
  if (!made.known) return { code: "no solids", why: made.reason };
  return { distribution: made, extrapolated: made.extrapolated.below + made.extrapolated.above };
}
