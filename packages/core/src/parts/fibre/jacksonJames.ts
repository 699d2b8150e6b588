import { requireSolidity } from "./requireSolidity.js";

/**
 * Permeability over fibre radius squared of a random bed, fibres pointing every way.
 * A weighted mean of flow along and across a lattice, leading terms only.
 *
 * Holds for dilute beds in creeping flow (solidity up to about 0.25); the leading terms fall to 0 at solidity
 * exp(-0.931) = 0.394, from where it is refused.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 0.394
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see G. W. Jackson and D. F. James, Can. J. Chem. Eng. 64 (1986) 364
 * @example
 * jacksonJames(0.1) // 2.057377639491068
 */
export function jacksonJames(solidity: number): number {
  requireSolidity("jacksonJames", solidity, 0.394);
  return (3 / (20 * solidity)) * (-Math.log(solidity) - 0.931);
}
