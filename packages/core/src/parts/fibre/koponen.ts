import { requireSolidity } from "./requireSolidity.js";

/**
 * Permeability over fibre radius squared of a random fibre web, fitted to computed flow through webs like paper and nonwovens.
 * Falls exponentially with solidity and, unlike the dilute laws, keeps doing so in dense sheets.
 *
 * Holds for creeping flow in webs of paper-like structure. The source's own range is not at hand; in very open beds
 * (solidity below about 0.05) the missing logarithm makes it a poor guide.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 1
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see A. Koponen and others, Phys. Rev. Lett. 80 (1998) 716
 * @example
 * koponen(0.1) // 3.1794206993779817
 */
export function koponen(solidity: number): number {
  requireSolidity("koponen", solidity, 1);
  return 5.55 / Math.expm1(10.1 * solidity);
}
