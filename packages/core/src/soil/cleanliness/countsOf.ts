import type { AtCodeSizes, CleanlinessCode, ScaleNumber } from "./CleanlinessCode.js";
import { scaleLimits } from "./scaleLimits.js";

/** The counts a scale number stands for, particles per mL. */
export interface CountRange {
  /** not itself included, except by number 0 */
  readonly moreThan: number;
  /** included; Infinity where nothing bounds it */
  readonly upTo: number;
}

/**
 * The counts that a code stands for, particles per mL. A size not counted is bounded by nothing: 0 to Infinity.
 *
 * A part marked >= keeps its interval: few particles were counted, so the true count may lie above it.
 *
 * @see ISO 4406:2021, table 1
 * @example
 * countsOf(parseCode("18/16/13")).at4 // { moreThan: 1300, upTo: 2500 }
 */
export function countsOf(code: CleanlinessCode): AtCodeSizes<CountRange> {
  return { at4: rangeOf(code.at4.scale), at6: rangeOf(code.at6.scale), at14: rangeOf(code.at14.scale) };
}

function rangeOf(scale: ScaleNumber): CountRange {
  if (scale === "*" || scale === "-") return { moreThan: 0, upTo: Infinity };
  const number = scale === ">28" ? 29 : scale;
  return { moreThan: scaleLimits[number - 1] ?? 0, upTo: scaleLimits[number] ?? Infinity };
}
