import { requireSolidity } from "./requireSolidity.js";

/**
 * Permeability over fibre radius squared for a square array of parallel fibres across the flow.
 * A theory of an ordered array, so a witness for the low end of what real pads let through.
 *
 * Holds for creeping flow in dilute arrays; refused from the solidity at which the fibres of a square array touch (pi/4).
 * Beside the computed drag of square arrays (Sangani and Acrivos 1982, from memory) it is 0.4 % off up to a solidity of 0.2,
 * 4 % at 0.3 and 28 % at 0.5.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 0.785
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see J. E. Drummond and M. I. Tahir, Int. J. Multiphase Flow 10 (1984) 515
 * @example
 * drummondTahir(0.1) // 1.265646528173137
 */
export function drummondTahir(solidity: number): number {
  requireSolidity("drummondTahir", solidity, 0.785);
  const rational = (2 * solidity - 0.796 * solidity ** 2) / (1 + 0.489 * solidity - 1.605 * solidity ** 2);
  return (-Math.log(solidity) - 1.476 + rational) / (8 * solidity);
}
