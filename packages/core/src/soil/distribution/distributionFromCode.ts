import { type CleanlinessCode, type CountsPerMl, codeSizes, type ScaleNumber } from "../cleanliness/CleanlinessCode.js";
import { countsOf } from "../cleanliness/countsOf.js";
import { distributionFromCounts } from "./distributionFromCounts.js";
import { type CountedSolids, type Cutoffs, type NoSolids, usualCutoffs } from "./Solids.js";

/** Which count of each scale number's interval to take. */
export type IntervalEnd = "upper" | "middle" | "lower";

/**
 * Particles by size from a cleanliness code. A code is an interval, twice as wide as its lower limit, at each size; by
 * default the upper limits are taken, which is the safe side: the most soil for the filters and the pump behind them.
 *
 * "middle" is the geometric mean of both limits; "lower" the lower limit itself, which has the next lower code.
 * A size that was not counted takes part in nothing: two sizes carry the line.
 *
 * @param code as counted, or from `parseCode`
 * @param end which count of each interval; "upper" when left out
 * @param cutoffs m, see `usualCutoffs`
 * @returns the distribution; or that there is none, with the reason
 * @see distributionFromCounts for what lies between and beyond the sizes
 * @example
 * massOf(distributionFromCode(parseCode("18/16/13"))) // 4.10e-3 kg/m3 at most
 */
export function distributionFromCode(
  code: CleanlinessCode,
  end: IntervalEnd = "upper",
  cutoffs: Cutoffs = usualCutoffs,
): CountedSolids | NoSolids {
  const ranges = countsOf(code);
  const counts: Partial<Record<keyof CountsPerMl, number>> = {};
  for (const size of codeSizes) {
    if (!isCounted(code[size].scale)) continue;
    const { moreThan, upTo } = ranges[size];
    const count = { upper: upTo, middle: Math.sqrt(moreThan * upTo), lower: moreThan }[end];
    if (count === 0 || count === Infinity) return { known: false, reason: "no such limit" };
    counts[size] = count;
  }
  const made = distributionFromCounts(counts, cutoffs);
  return made.known ? { ...made, fewCounted: codeSizes.some((size) => code[size].fewCounted) } : made;
}

function isCounted(scale: ScaleNumber): boolean {
  return scale !== "*" && scale !== "-";
}
