import { InputError } from "../InputError.js";
import type { Circuit, Parallel } from "./Circuit.js";
import { hasFriction } from "./hasFriction.js";
import { netRise } from "./netRise.js";

/**
 * Circuits side by side: they share a drop, and their flows add up. The easier branch takes more.
 *
 * All branches must climb equally far, since they join the same two points; and each must resist flow, since otherwise
 * nothing decides how much it takes.
 *
 * @param branches two or more
 * @throws InputError when there are fewer, when their net rises differ by more than rounding, or when one has no friction
 * @example
 * parallel(filterA, filterB)
 */
export function parallel(...branches: readonly Circuit[]): Parallel {
  const [first] = branches;
  if (!first || branches.length < 2) {
    throw new InputError("parallel", "branches", "two or more", branches.length);
  }
  const climb = netRise(first);
  branches.forEach((branch, at) => {
    const own = netRise(branch);
    // Heights are typed to a millimetre at best; a billionth of a metre is rounding of their sum.
    if (Math.abs(own - climb) > 1e-9) {
      throw new InputError("parallel", `branches[${at}]'s net rise`, `${climb} m, as in the first branch`, own);
    }
    if (!hasFriction(branch)) {
      throw new InputError("parallel", `branches[${at}]`, "a circuit that resists flow", branch.kind);
    }
  });
  return { kind: "parallel", branches };
}
