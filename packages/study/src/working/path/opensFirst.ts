import { known } from "./known.js";
import type { Branch } from "./splitStep.js";

/** The branch through which flow begins, where none flows yet: the one that costs least; undefined where all are shut. */
export function opensFirst(branches: readonly Branch[]): Branch | undefined {
  const cost = ({ alone }: Branch) => known(alone.costs)?.reduce((sum, { value }) => sum + value, 0) ?? Infinity;
  const least = Math.min(...branches.map(cost));
  return branches.find((branch) => cost(branch) === least && least < Infinity);
}
