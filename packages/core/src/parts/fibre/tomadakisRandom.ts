import { requireSolidity } from "./requireSolidity.js";
import { tomadakis } from "./tomadakis.js";

/**
 * Permeability over fibre radius squared of a bed with fibres pointing every way, by the same route as `tomadakisThrough`.
 * Lets through a quarter to a third more than the flat mat.
 *
 * Holds for creeping flow; refused from solidity 0.963, where the model has no way through left (threshold porosity 0.037).
 * Reads high in very open beds.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 0.963
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see M. M. Tomadakis and S. V. Sotirchos, AIChE J. 39 (1993) 397; constants as in M. M. Tomadakis and T. J. Robertson,
 * J. Compos. Mater. 39 (2005) 163
 * @example
 * tomadakisRandom(0.1) // 3.302851343346487
 */
export function tomadakisRandom(solidity: number): number {
  requireSolidity("tomadakisRandom", solidity, 0.963);
  return tomadakis(solidity, { threshold: 0.037, exponent: 0.661 });
}
