import { InputError } from "../../InputError.js";
import { requireMoreThan } from "../../require.js";

/** How well a stage separates free water, as stated at one flow. */
export interface Separation {
  /** share of the free water, at least 0 and less than 1 */
  readonly efficiency: number;
  /** at which that was found, m3/s */
  readonly flow: number;
}

/**
 * Share of the free water that a stage separates at another flow. Twice the flow lets the square root of the share
 * through: 96 % at rated flow is 80 % at twice, 99.8 % at half.
 *
 * 1 - E = (1 - E0)^(Q0/Q), the form of a well-mixed settler of fixed area. That coalescing elements follow it is an
 * assumption; drops broken up finer by a faster pump are not in it. Common practice, no source, for fuel separators.
 *
 * @param stated efficiency and the flow it holds at; see `Separation`
 * @param flow m3/s, more than 0
 * @throws InputError naming the field; an efficiency of 1 holds at no flow but its own, so it is refused
 * @see W. Deutsch, Annalen der Physik 68 (1922) 335, for the form (from memory)
 * @example
 * separationAt({ efficiency: 0.96, flow: 5e-5 }, 1e-4) // 0.8
 */
export function separationAt(stated: Separation, flow: number): number {
  if (!(stated.efficiency >= 0 && stated.efficiency < 1)) {
    const right = "at least 0 and less than 1 (for a claim of all water, what the test could still have seen pass)";
    throw new InputError("separationAt", "efficiency", right, stated.efficiency);
  }
  requireMoreThan("separationAt", "stated.flow", stated.flow, 0, "m3/s");
  requireMoreThan("separationAt", "flow", flow, 0, "m3/s");
  return -Math.expm1((Math.log1p(-stated.efficiency) * stated.flow) / flow);
}
