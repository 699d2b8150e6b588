import { distributionFromMass } from "../distribution/distributionFromMass.js";
import { binCount, sizeEdges } from "../distribution/sizeEdges.js";
import type { TestDust } from "../distribution/testDusts.js";
import type { BetaLine } from "./betaLine.js";
import type { Efficiency } from "./Capture.js";

/** What a beta line does to each bin of the test dust. */
export interface Fractional {
  readonly efficiency: Efficiency;
  /** test dust in each bin, 1/m3 for 1 kg/m3 */
  readonly dust: Float64Array;
  /** particles each bin would have had to gain for the line to hold, 1/m3; 0 where nothing was held back */
  readonly gained: Float64Array;
}

/** A share this small is what rounding leaves of 0. */
const ROUNDING = 1e-12;

/**
 * Fractional efficiency from beta: E = 1 - down/up in each size bin of the test dust, held at 0 where beta rises so
 * steeply from 1 that the bin would have to gain particles.
 *
 * Beta is a ratio of all particles from a size up, so it is not by itself the share of that size: where beta rises with
 * size, the larger particles flatter it.
 */
export function fractionalEfficiency(line: BetaLine, dust: TestDust): Fractional {
  const { counts } = distributionFromMass({ mass: 1, dust });
  const efficiency = new Float64Array(binCount);
  const gained = new Float64Array(binCount);
  let upAbove = 0;
  let downAbove = 0;
  for (let bin = binCount - 1; bin >= 0; bin--) {
    const up = counts[bin] ?? 0;
    const remain = Math.exp(-line(sizeEdges[bin] ?? 0));
    const downFrom = (upAbove + up) * remain;
    const down = downFrom - downAbove;
    // Where the dust has no particles, all that is there to see is beta at the lower edge.
    const share = up > 0 ? 1 - down / up : 1 - remain;
    efficiency[bin] = share > ROUNDING ? share : 0;
    gained[bin] = Math.max(0, down - up);
    upAbove += up;
    downAbove = downFrom;
  }
  return { efficiency, dust: counts, gained };
}
