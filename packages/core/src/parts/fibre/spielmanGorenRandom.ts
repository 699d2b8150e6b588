import { requireSolidity } from "./requireSolidity.js";
import { spielmanGoren } from "./spielmanGoren.js";

/**
 * Permeability over fibre radius squared of a bed with fibres pointing every way, each fibre in a permeable surrounding.
 *
 * Holds for dilute beds in creeping flow (solidity up to about 0.25); the condition has no answer from solidity 0.75.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 0.75
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see L. Spielman and S. L. Goren, Environ. Sci. Technol. 2 (1968) 279
 * @example
 * spielmanGorenRandom(0.1) // 2.4982516141170414
 */
export function spielmanGorenRandom(solidity: number): number {
  requireSolidity("spielmanGorenRandom", solidity, 0.75);
  return spielmanGoren(solidity, { fixed: 1 / 3, neighbours: 5 / 6 });
}
