import { requireSolidity } from "./requireSolidity.js";
import { spielmanGoren } from "./spielmanGoren.js";

/**
 * Permeability over fibre radius squared of a flat mat with the flow going through it, each fibre in a permeable surrounding.
 *
 * Holds for dilute mats in creeping flow (solidity up to about 0.25); the condition has no answer from solidity 0.5.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 0.5
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see L. Spielman and S. L. Goren, Environ. Sci. Technol. 2 (1968) 279
 * @example
 * spielmanGorenFlat(0.1) // 1.682594666913029
 */
export function spielmanGorenFlat(solidity: number): number {
  requireSolidity("spielmanGorenFlat", solidity, 0.5);
  return spielmanGoren(solidity, { fixed: 1 / 2, neighbours: 1 });
}
