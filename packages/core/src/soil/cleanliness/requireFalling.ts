import { InputError } from "../../InputError.js";
import { requireAtLeast } from "../../require.js";
import { type AtCodeSizes, type CountsPerMl, codeSizes, type ScaleNumber } from "./CleanlinessCode.js";

/** Refuses counts below 0, and counts that rise with size: what is 6 um and up is also 4 um and up. */
export function requireFallingCounts(caller: string, counts: CountsPerMl): void {
  let before = Infinity;
  for (const size of codeSizes) {
    const count = counts[size];
    requireAtLeast(caller, `counts.${size}`, count, 0, "particles per mL");
    if (count > before) {
      const most = `at most ${before} particles per mL, the count at the smaller size (which includes these)`;
      throw new InputError(caller, `counts.${size}`, most, count);
    }
    before = count;
  }
}

/** Refuses scale numbers that rise with size, whatever was not counted between. */
export function requireFallingScale(caller: string, scale: AtCodeSizes<ScaleNumber>): void {
  let before = Infinity;
  for (const size of codeSizes) {
    const here = ranked(scale[size]);
    if (here === null) continue;
    if (here > before) {
      const most = `at most ${before}, the number before it: larger particles are among the smaller size's too`;
      throw new InputError(caller, `the scale number at ${size.slice(2)} um`, most, scale[size]);
    }
    before = here;
  }
}

function ranked(scale: ScaleNumber): number | null {
  if (scale === "*" || scale === "-") return null;
  return scale === ">28" ? 29 : scale;
}
