import { InputError } from "../../InputError.js";
import { requireBetween } from "../../require.js";
import { testDusts } from "../distribution/testDusts.js";
import { type BetaLine, betaLine } from "./betaLine.js";
import type { BetaPoint, Capture, CaptureCaution, CaptureGiven, Efficiency } from "./Capture.js";
import { fractionalEfficiency } from "./fractionalEfficiency.js";
import { movedBetas } from "./movedBetas.js";
import { requireBetas } from "./requireBetas.js";

/** Betas that the words of a rating state. */
const RATED = { absolute: 75, "beta 75": 75, "beta 200": 200, "beta 1000": 1000 } as const;

/**
 * How an element catches, size by size, from what its maker states.
 *
 * Betas are turned to fractional efficiencies on the test dust. From one point the efficiencies are a band and the
 * answer says so. A nominal rating alone, nothing stated, and an element fitted backwards give no efficiencies, but the
 * reason.
 *
 * @param given see `CaptureGiven`
 * @throws InputError for a beta below 1 or one that falls with size, a size outside 1 to 100 um, an unknown rating kind
 *   or test dust, or a leak outside 0 to 1
 * @see ISO 16889:2022, ISO 19438:2023 for beta; `betaLine` for what lies between the points
 * @example
 * captureOf({ betas: [{ size: 10e-6, beta: 2 }, { size: 25e-6, beta: 75 }] })
 */
export function captureOf(given: CaptureGiven): Capture {
  const { betas, rating, dust = "A3 medium", leak = 0, reversed = false } = given;
  requireBetween("captureOf", "leak", leak, { from: 0, to: 1 });
  if (!Object.hasOwn(testDusts, dust)) {
    throw new InputError("captureOf", "dust", Object.keys(testDusts).join(" or "), dust);
  }
  const stated = betas ?? ratedBetas(rating);
  if (stated) requireBetas(stated, betas ? "betas" : "rating");
  if (reversed) return { known: false, reason: "fitted backwards" };
  if (!stated) return { known: false, reason: rating ? "nominal rating" : "no beta stated" };
  const points = [...stated].sort((one, other) => one.size - other.size);
  const cautions: CaptureCaution[] = [{ code: "betas from test dust" }];
  if (!betas && rating?.kind === "absolute") cautions.push({ code: "absolute taken as beta 75" });
  const middle = fractionalEfficiency(betaLine(points), dust);
  cautions.push(...movedBetas(points, middle));
  const whole = sealed(middle.efficiency, leak);
  if (points.length > 1) {
    return { known: true, efficiency: { low: whole, middle: whole, high: whole }, cautions };
  }
  const end = (line: BetaLine) => sealed(fractionalEfficiency(line, dust).efficiency, leak);
  // Common practice, no source: the line twice as steep, ending at the stated size or already at half of it.
  const low = end(betaLine(points, 2));
  const high = end(betaLine(points.map(({ size, beta }) => ({ size: size / 2, beta }))));
  return { known: true, efficiency: { low, middle: whole, high }, cautions: [...cautions, { code: "one beta point" }] };
}

function ratedBetas(rating: CaptureGiven["rating"]): BetaPoint[] | undefined {
  if (!rating || rating.kind === "nominal") return undefined;
  if (!Object.hasOwn(RATED, rating.kind)) {
    throw new InputError("captureOf", "rating.kind", `nominal, ${Object.keys(RATED).join(", ")}`, rating.kind);
  }
  return [{ size: rating.size, beta: RATED[rating.kind] }];
}

/** What slips past the seal is not caught. */
function sealed(efficiency: Efficiency, leak: number): Efficiency {
  return efficiency.map((share) => share * (1 - leak));
}
