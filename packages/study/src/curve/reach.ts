import type { CheckPoint } from "../check/CheckAnswer.js";

/** How far beyond what is to be seen a curve runs on. */
const BEYOND = 1.15;
/** A ceiling further off than this many demands would leave the demand in the corner of the picture. */
const FAR = 4;

/** Where a curve ends, m3/s: a bit beyond the furthest ceiling, or beyond the demand where no ceiling is near. */
export function reach({ ceilings, demand }: Pick<CheckPoint, "ceilings" | "demand">): number {
  const found = [ceilings.clean, ceilings.atChange].map(({ flow }) => flow.high);
  const seen = found.filter((flow) => flow <= FAR * demand.total);
  return BEYOND * Math.max(demand.total, ...seen);
}
