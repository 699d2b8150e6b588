import type { ParticleDistribution } from "./ParticleDistribution.js";

/** Sizes beyond which a distribution made from counts holds no particles, m. */
export interface Cutoffs {
  readonly from: number;
  readonly to: number;
}

/**
 * Cutoffs taken where none are given.
 *
 * Down to 1 um: the smallest size the dust standard lists; the glass-fibre membrane that weighs diesel's solids (EN
 * 12662, from memory) holds from 0.7 um. Up to 70 um: as far as automatic counters are used on fuel (IP 577:2013,
 * scope).
 */
export const usualCutoffs: Cutoffs = { from: 1e-6, to: 70e-6 };

/** A distribution made from counts or a code, and how far the counts alone carry it. */
export interface CountedSolids extends ParticleDistribution {
  readonly known: true;
  /** shares of the mass that lie beyond the smallest and the largest size counted, 0 to 1 */
  readonly extrapolated: { readonly below: number; readonly above: number };
  /** a size is marked >=: fewer than 20 particles were counted there, so there may be more */
  readonly fewCounted: boolean;
}

/** Why no distribution can be made. */
export type NoSolidsReason =
  /** fewer than two of the three sizes were counted, which gives no slope */
  | "too few sizes counted"
  /** the interval asked for has no such end: above scale number 28, or below 0 */
  | "no such limit"
  /**
   * the counts make more than 1 g/L of solids, some forty times what diesel may hold: too many, or too steep a slope
   */
  | "more than 1 g/L of solids";

/** That there is no distribution, and why. */
export interface NoSolids {
  readonly known: false;
  readonly reason: NoSolidsReason;
}
