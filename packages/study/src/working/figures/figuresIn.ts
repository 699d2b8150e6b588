import type { Step } from "../Step.js";
import type { FigureMaker } from "./FigureMaker.js";

/**
 * Makes figures of one group, each with its own name on its step.
 *
 * @param slow see `FigureMaker`
 */
export function figuresIn(group: string, slow = false): (name: string, make: () => Step | null) => FigureMaker {
  return (name, make) => ({
    group,
    name,
    make: () => {
      const step = make();
      return step && { ...step, name };
    },
    ...(slow ? { slow } : {}),
  });
}
