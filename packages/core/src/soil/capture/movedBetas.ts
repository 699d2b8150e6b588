import { countFrom } from "../distribution/countFrom.js";
import type { BetaPoint, CaptureCaution } from "./Capture.js";
import type { Fractional } from "./fractionalEfficiency.js";

/** More than this share and the answer says so. */
const NOTED = 0.01;

/** The stated betas that holding every bin to no gain has changed by more than 1 %. */
export function movedBetas(points: readonly BetaPoint[], { dust, gained }: Fractional): CaptureCaution[] {
  return points.flatMap(({ size, beta }) => {
    const up = countFrom({ counts: dust, masses: dust }, size);
    const down = up / beta - countFrom({ counts: gained, masses: gained }, size);
    const held = up / down;
    return Math.abs(held / beta - 1) > NOTED ? [{ code: "beta moved", size, stated: beta, held }] : [];
  });
}
