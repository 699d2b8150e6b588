import { studentQuantile } from "./fit/studentQuantile.js";
import type { Fitted, Weighed } from "./fitAll.js";
import { flat } from "./shapes.js";

/** Chance that growth is taken for shown where there is none. */
const CHANCE = 0.05;

/** Whether some law of growth explains a run better than none, beyond what scatter would do. */
export function hasTrend({ sigmas, prior }: Weighed, fits: readonly Fitted[]): boolean {
  const still = fits.find(({ model }) => model.shape === flat);
  const grown = fits
    .filter(({ model }) => model.shape !== flat)
    .reduce((least, one) => Math.min(least, one.deviance), Infinity);
  if (!still) return false;
  const free = Math.max(1, sigmas.length + prior.weight - 2);
  const deviations = studentQuantile(1 - CHANCE, free);
  return still.deviance - grown > (sigmas.length + prior.weight) * Math.log1p(deviations ** 2 / free);
}
