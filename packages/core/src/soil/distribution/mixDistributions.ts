import { InputError } from "../../InputError.js";
import { requireAtLeast } from "../../require.js";
import { noParticles } from "./fillBins.js";
import type { ParticleDistribution } from "./ParticleDistribution.js";

/** Fuel that joins other fuel. */
export interface MixPart {
  /** any measure of how much: a volume, m3, or a flow, m3/s */
  readonly amount: number;
  readonly distribution: ParticleDistribution;
}

/**
 * Fuels run together: branches of a bank behind it, or a delivery into what the tank still held.
 *
 * @param parts amounts in one unit, not all 0
 * @throws InputError for a negative amount, or when nothing is mixed
 * @example
 * massOf(mixDistributions([{ amount: 1, distribution: clean }, { amount: 3, distribution: dirty }]))
 */
export function mixDistributions(parts: readonly MixPart[]): ParticleDistribution {
  parts.forEach(({ amount }, at) => {
    requireAtLeast("mixDistributions", `parts[${at}].amount`, amount, 0);
  });
  const total = parts.reduce((sum, { amount }) => sum + amount, 0);
  if (!(total > 0)) throw new InputError("mixDistributions", "the amounts together", "more than 0", total);
  const mixed = noParticles();
  for (const { amount, distribution } of parts) {
    addShare(mixed.counts, distribution.counts, amount / total);
    addShare(mixed.masses, distribution.masses, amount / total);
  }
  return mixed;
}

function addShare(sum: Float64Array, values: Float64Array, share: number): void {
  for (let bin = 0; bin < sum.length; bin++) sum[bin] = (sum[bin] ?? 0) + share * (values[bin] ?? 0);
}
