import { requireBetween } from "../../require.js";

/**
 * Permeability of a real fibre pad over the fibre radius squared, by Davies' fit to measured pads.
 * The usual first choice for felt, glass paper and melt-blown web; dp/t = 64 mu u c^1.5 (1 + 56 c^3) / d^2 is the same law.
 *
 * Holds for solidity 0.006 to 0.3, fibres lying across the flow, creeping flow. Real pads scatter widely about it
 * (clumped fibres, mixed diameters): see `fibreLaws` for how far published laws lie apart.
 *
 * @param solidity fibre volume over bed volume, 0.006 to 0.3
 * @returns permeability over fibre radius squared, no unit
 * @throws InputError when solidity is outside that range
 * @see C. N. Davies, Proc. Inst. Mech. Eng. 1B (1952) 185
 * @example
 * davies(0.1) // 1.8716131984898072
 */
export function davies(solidity: number): number {
  requireBetween("davies", "solidity", solidity, { from: 0.006, to: 0.3 });
  return 1 / (16 * solidity ** 1.5 * (1 + 56 * solidity ** 3));
}
