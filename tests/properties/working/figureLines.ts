import type { FigureMaker } from "@thirstline/study/working";
import { stepLines } from "./stepLines.js";

/**
 * Figures as a list tells them, a line each: group and name, whether a list leaves the value out, the value, and how its last
 * step is told. Those without a value here are left out.
 */
export function figureLines(makers: readonly FigureMaker[]): string[] {
  return makers.flatMap(({ group, name, slow = false, make }) => {
    const step = make();
    if (step === null) return [];
    const [told = ""] = stepLines([step]);
    return [`${group}: ${name}${slow ? ", slow" : ""} = ${Number(step.value.toPrecision(6))} | ${told}`];
  });
}
