import type { Step } from "../Step.js";

/** All costs of a stretch; null where one is not known. */
export function known(costs: readonly (() => Step | null)[]): Step[] | null {
  const steps = costs.map((cost) => cost());
  return steps.every((step) => step !== null) && steps.length > 0 ? steps : null;
}
