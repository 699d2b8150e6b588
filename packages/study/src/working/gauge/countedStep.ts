import type { Step } from "../Step.js";
import { inWords } from "../worked.js";

/** Something counted in the readings. */
export function countedStep(name: string, value: number, words = "counted"): Step {
  return inWords(words, { name, value, unit: "1", kind: "plain" });
}
