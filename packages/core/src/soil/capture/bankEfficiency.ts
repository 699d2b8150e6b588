import { InputError } from "../../InputError.js";
import { requireAtLeast } from "../../require.js";
import { binCount } from "../distribution/sizeEdges.js";
import type { Efficiency } from "./Capture.js";

/**
 * Efficiency of elements side by side, weighed by the flow through each. A branch without an element catches nothing
 * and soon dirties the whole: one tenth of the flow unfiltered caps a bank at 90 %.
 *
 * @param branches flow, m3/s (or any one measure of it), and efficiency of each
 * @throws InputError for a negative flow, or when nothing flows
 * @example
 * bankEfficiency([{ flow: 2e-5, efficiency: fine }, { flow: 1e-5, efficiency: coarse }])
 */
export function bankEfficiency(
  branches: readonly { readonly flow: number; readonly efficiency: Efficiency }[],
): Efficiency {
  branches.forEach(({ flow }, at) => {
    requireAtLeast("bankEfficiency", `branches[${at}].flow`, flow, 0, "m3/s");
  });
  const total = branches.reduce((sum, { flow }) => sum + flow, 0);
  if (!(total > 0)) throw new InputError("bankEfficiency", "the flows together", "more than 0 m3/s", total);
  const whole = new Float64Array(binCount);
  for (const { flow, efficiency } of branches) {
    for (let bin = 0; bin < binCount; bin++) whole[bin] = (whole[bin] ?? 0) + (flow / total) * (efficiency[bin] ?? 0);
  }
  // The shares of the flows may add up to a hair above 1.
  return whole.map((share) => Math.min(1, share));
}
