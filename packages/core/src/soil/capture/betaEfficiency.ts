import { requireAtLeast } from "../../require.js";

/**
 * Share of the test dust, of a size and up, that an element of that beta catches: beta 2 half of it, beta 75 98.67 %.
 *
 * @param beta 1 or more
 * @throws InputError for a beta below 1
 * @see ISO 16889:2022: efficiency = 1 - 1/beta
 * @example
 * betaEfficiency(75) // 0.9866666666666667
 */
export function betaEfficiency(beta: number): number {
  requireAtLeast("betaEfficiency", "beta", beta, 1);
  return 1 - 1 / beta;
}
