import { InputError } from "../../InputError.js";
import { requireAtLeast, requireBetween } from "../../require.js";
import type { BetaPoint } from "./Capture.js";

/** Sizes at which a beta can be stated: test dusts reach from just below 1 um to just above 100 um. */
const SIZES = { from: 1e-6, to: 100e-6 };

/** Refuses betas that are none, below 1, outside the dust's sizes, stated twice at a size, or falling with size. */
export function requireBetas(points: readonly BetaPoint[], path: string): void {
  if (points.length === 0) throw new InputError("captureOf", path, "at least one beta, or left out", points);
  const placed = points.map((point, at) => ({ ...point, path: path === "betas" ? `betas[${at}]` : path }));
  for (const point of placed) {
    requireBetween("captureOf", `${point.path}.size`, point.size, SIZES, "m");
    requireAtLeast("captureOf", `${point.path}.beta`, point.beta, 1);
  }
  placed.sort((one, other) => one.size - other.size);
  placed.forEach((point, at) => {
    const before = placed[at - 1];
    if (before === undefined) return;
    if (point.size === before.size) {
      throw new InputError("captureOf", `${point.path}.size`, "a size with no other beta", point.size);
    }
    if (point.beta < before.beta) {
      const least = `at least ${before.beta}, the beta of a smaller size (large particles are held at least as well)`;
      throw new InputError("captureOf", `${point.path}.beta`, least, point.beta);
    }
  });
}
