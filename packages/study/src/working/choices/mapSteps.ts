import type { Origin, Step } from "../Step.js";

/** A working with every step put through a function, from the innermost out; steps that are shared stay shared. */
export function mapSteps(step: Step, change: (step: Step) => Step): Step {
  const done = new Map<Step, Step>();
  const through = (one: Step): Step => {
    const found = done.get(one);
    if (found) return found;
    const told = change({ ...one, origin: inside(one.origin, through) });
    done.set(one, told);
    return told;
  };
  return through(step);
}

function inside(origin: Origin, through: (step: Step) => Step): Origin {
  switch (origin.by) {
    case "formula":
      return { ...origin, inputs: origin.inputs.map((input) => ({ ...input, steps: input.steps.map(through) })) };
    case "words":
    case "draws":
      return { ...origin, from: origin.from.map(through) };
    case "search":
      return {
        ...origin,
        checks: origin.checks.map((check) => ({ ...check, left: through(check.left), right: through(check.right) })),
      };
    default:
      return origin;
  }
}
