import { requireMoreThan } from "../../require.js";

/** The folds of a pleated element. */
export interface Pleats {
  /** from the fold's mouth to its bottom, m */
  readonly depth: number;
  /** width of the gap between two walls, m */
  readonly gap: number;
  /** area of the medium, m2 */
  readonly area: number;
}

/**
 * Resistance of the gaps between pleats, 1/m3: fuel that enters a fold evenly drains through both walls along its depth.
 * Tight folds cost with the cube of the gap; fewer, wider ones can pass more.
 *
 * Plane gap, laminar, even suction through both walls: drop = 12 viscosity velocity depth^2 / gap^3 with the medium's own
 * face velocity. Loss in the clean-side gaps and folds that touch come on top.
 *
 * @param pleats depth, m; gap, m; area, m2
 * @throws InputError naming the field
 * @see lubrication theory, e.g. G. K. Batchelor, An Introduction to Fluid Dynamics (1967), section 4.8
 */
export function pleatResistance(pleats: Pleats): number {
  requireMoreThan("filter", "pleats.depth", pleats.depth, 0, "m");
  requireMoreThan("filter", "pleats.gap", pleats.gap, 0, "m");
  requireMoreThan("filter", "pleats.area", pleats.area, 0, "m2");
  return (12 * pleats.depth ** 2) / (pleats.gap ** 3 * pleats.area);
}
