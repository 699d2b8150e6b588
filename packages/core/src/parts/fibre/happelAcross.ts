import { requireSolidity } from "./requireSolidity.js";

/**
 * Permeability over fibre radius squared for parallel fibres across the flow, each in a cell with no shear at its rim.
 * Same picture as `kuwabara` with the other choice of rim; it lets through about a third more.
 *
 * Exact for its cell model in creeping flow; meant for dilute beds (solidity up to about 0.3).
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 1
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see J. Happel, AIChE J. 5 (1959) 174
 * @example
 * happelAcross(0.1) // 1.6529838414900815
 */
export function happelAcross(solidity: number): number {
  requireSolidity("happelAcross", solidity, 1);
  const square = solidity ** 2;
  return (-Math.log(solidity) + (square - 1) / (square + 1)) / (8 * solidity);
}
