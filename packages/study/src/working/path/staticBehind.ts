import { pressureAfter } from "../formulas/path.js";
import type { Step } from "../Step.js";
import { worked } from "../worked.js";
import { kineticIn } from "./kineticIn.js";
import { known } from "./known.js";
import type { Start } from "./Start.js";

/** Static pressure behind what has been spent. */
export function staticBehind(start: Start, value: number | null, name: string): Step | null {
  // On the main path no flow is the start of flow: a check valve is just opening. In a branch it may be held shut.
  if (value === null && (start.depth > 0 || start.flow.value !== 0)) return null;
  const d = known(start.spent);
  if (!d) return null;
  const more = { name: `pressure behind ${name}`, ...(value === null ? {} : { value }) };
  return worked(pressureAfter, { p: start.pressure(), d, p_k: kineticIn(start) }, more);
}
