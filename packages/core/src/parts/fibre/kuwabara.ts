import { requireSolidity } from "./requireSolidity.js";

/**
 * Permeability over fibre radius squared for parallel fibres across the flow, each in a cell with no vorticity at its rim.
 * An ordered bed: it lets less through than a real, random pad of the same solidity.
 *
 * Exact for its cell model in creeping flow; meant for dilute beds (solidity up to about 0.3).
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 1
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see S. Kuwabara, J. Phys. Soc. Japan 14 (1959) 527
 * @example
 * kuwabara(0.1) // 1.2469813662425566
 */
export function kuwabara(solidity: number): number {
  requireSolidity("kuwabara", solidity, 1);
  return (-Math.log(solidity) - 1.5 + 2 * solidity - solidity ** 2 / 2) / (8 * solidity);
}
