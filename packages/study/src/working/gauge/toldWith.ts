import { mapSteps } from "../choices/mapSteps.js";
import type { Step } from "../Step.js";
import { renamed } from "../worked.js";

/** What a model was asked with, each as a step of its own. */
export interface PutIn {
  readonly demand: Step;
  readonly temperature: Step;
  /** resistances over clean of the elements */
  readonly ratios: readonly Step[];
}

/** A working of the model with what was put in leading on to where that comes from. */
export function toldWith(step: Step, { demand, temperature, ratios }: PutIn): Step {
  return mapSteps(step, (one) => {
    const { origin, name, part } = one;
    if (origin.by === "asked" && origin.option === "demand")
      return { ...renamed(demand, name, one.kind), value: one.value };
    if (origin.by === "asked" && origin.option === "temperature") return { ...temperature, name };
    if (origin.by !== "words" || part === undefined || one.unit !== "1") return one;
    const own = ratios.find(({ value }) => value === one.value);
    return own ? { ...one, origin: { ...origin, from: [own] } } : one;
  });
}
