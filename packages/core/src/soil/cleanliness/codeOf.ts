import { requireAtLeast } from "../../require.js";
import { type CleanlinessCode, type CodeSize, type CountsPerMl, codeSizes } from "./CleanlinessCode.js";
import { requireFallingCounts } from "./requireFalling.js";
import { scaleNumberOf } from "./scaleNumberOf.js";

/** Below so many counted particles, ISO 4406 wants the prefix >= (from memory). */
const SURE_FROM = 20;

/**
 * The cleanliness code of counted fuel: one scale number for each of 4, 6 and 14 um(c). One number up is about twice
 * the particles.
 *
 * @param counts particles per mL of each size and up
 * @param counted how many particles the counter really saw at each size, where known: below 20 the number is marked >=
 * @throws InputError for a count below 0 or one that rises with size
 * @see ISO 4406:2021, section 4
 * @example
 * printCode(codeOf({ at4: 1500, at6: 400, at14: 60 })) // "18/16/13"
 */
export function codeOf(counts: CountsPerMl, counted: Partial<CountsPerMl> = {}): CleanlinessCode {
  requireFallingCounts("codeOf", counts);
  for (const size of codeSizes) {
    const seen = counted[size];
    if (seen !== undefined) requireAtLeast("codeOf", `counted.${size}`, seen, 0, "particles");
  }
  const part = (size: CodeSize) => {
    const scale = scaleNumberOf(counts[size]);
    // ">28" has no number that a prefix could go with.
    return { scale, fewCounted: scale !== ">28" && (counted[size] ?? SURE_FROM) < SURE_FROM };
  };
  return { at4: part("at4"), at6: part("at6"), at14: part("at14") };
}
