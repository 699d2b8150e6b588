import { requireBetween, requireMoreThan } from "../require.js";
import { MOST_ROUGH } from "./friction/index.js";
import { type Named, nameOf } from "./Named.js";

/** A straight, full, round line: pipe, tube or hose. */
export interface Line extends Named {
  readonly kind: "line";
  /** m */
  readonly length: number;
  /** inner diameter, m */
  readonly bore: number;
  /** height of the wall's roughness, m */
  readonly roughness: number;
}

/**
 * A line. In laminar flow half the bore costs sixteen times the drop.
 *
 * Laminar (Hagen–Poiseuille) to Re 2300, Darcy–Weisbach with Colebrook–White from Re 4000, a smooth passage between.
 * The first stretch after an inlet, where the flow is still forming, costs more than this says.
 *
 * @param given length, m; bore, m; roughness, m, at most 0.05 of the bore
 * @throws InputError naming the field
 * @see White, Fluid Mechanics (7th ed. 2011), sections 6.4 and 6.6
 * @example
 * line({ length: 6, bore: 0.01, roughness: 1.5e-6 })
 */
export function line(given: Omit<Line, "kind">): Line {
  requireMoreThan("line", "length", given.length, 0, "m");
  requireMoreThan("line", "bore", given.bore, 0, "m");
  requireBetween("line", "roughness", given.roughness, { from: 0, to: MOST_ROUGH * given.bore }, "m");
  return { kind: "line", ...nameOf(given), length: given.length, bore: given.bore, roughness: given.roughness };
}
