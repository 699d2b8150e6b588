import { requireSolidity } from "./requireSolidity.js";
import { tomadakis } from "./tomadakis.js";

/**
 * Permeability over fibre radius squared of a flat mat with the flow going through it, fibres random in the plane of the mat.
 * The arrangement of most sheet media.
 *
 * Holds for creeping flow; refused from solidity 0.89, where the model has no way through left (threshold porosity 0.11).
 * Reads high in very open beds.
 *
 * @param solidity fibre volume over bed volume, more than 0 and less than 0.89
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see M. M. Tomadakis and S. V. Sotirchos, AIChE J. 39 (1993) 397; constants as in M. M. Tomadakis and T. J. Robertson,
 * J. Compos. Mater. 39 (2005) 163
 * @example
 * tomadakisThrough(0.1) // 2.5719563823243297
 */
export function tomadakisThrough(solidity: number): number {
  requireSolidity("tomadakisThrough", solidity, 0.89);
  return tomadakis(solidity, { threshold: 0.11, exponent: 0.785 });
}
