import type { ScaleNumber } from "./CleanlinessCode.js";
import { scaleLimits } from "./scaleLimits.js";

/** The scale number whose interval ("more than" to "up to and including") holds a count per mL. */
export function scaleNumberOf(perMl: number): ScaleNumber {
  const scale = scaleLimits.findIndex((limit) => perMl <= limit);
  return scale === -1 ? ">28" : scale;
}
