import type { Fitted } from "./fitAll.js";

/** A fitted model with its Akaike weight. */
export interface Weighted {
  readonly fitted: Fitted;
  /** 0 to 1; all add up to 1 */
  readonly weight: number;
}

/**
 * Akaike weights of fitted models: how likely each is the best of them. Of one law's mixes only the best counts, since they
 * are one law with one constant more, not three laws.
 *
 * @see K. P. Burnham and D. R. Anderson, Model Selection and Multimodel Inference (2nd ed. 2002), section 2.9
 */
export function lawWeights(fits: readonly Fitted[]): Weighted[] {
  const ordered = [...fits].sort((one, other) => one.score - other.score);
  const best = ordered.filter(
    ({ model }, at) => ordered.findIndex((other) => other.model.shape.law === model.shape.law) === at,
  );
  const least = best[0]?.score ?? 0;
  const raw = best.map((fitted) => ({ fitted, weight: Math.exp((least - fitted.score) / 2) }));
  const total = raw.reduce((sum, { weight }) => sum + weight, 0);
  return raw.map(({ fitted, weight }) => ({ fitted, weight: weight / total }));
}
