import type { System } from "@thirstline/spec/system";
import type { Asked } from "../Asked.js";
import type { Step } from "../Step.js";
import { searched } from "../worked.js";
import { workingOf } from "../workingOf.js";

/** A figure of a system that must be there. */
export function figureStep(system: System, figure: string, asked: Asked = {}): Step | null {
  return workingOf(system, figure, asked)?.step ?? null;
}

/** The temperature at which a system has least in hand, of those it is judged at: everywhere else there is no less. */
export function leastInHandAt(system: System, temperature: number, temperatures: readonly number[]): Step {
  const inHand = (at: number) => figureStep(system, "in hand, low end", { temperature: at });
  const left = inHand(temperature);
  const plain = {
    name: "temperature where least is in hand",
    value: temperature,
    unit: "K",
    kind: "temperature",
  } as const;
  const checks = temperatures.flatMap((at) => {
    const right = at === temperature ? null : inHand(at);
    if (left === null || right === null) return [];
    const words = `no less is in hand at ${Number((at - 273.15).toFixed(2))} °C`;
    return [{ words, left, relation: "<=", right } as const];
  });
  return searched("chosen from the temperatures it is judged at", plain, checks);
}
