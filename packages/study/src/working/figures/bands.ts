import { isUnsure as isUnsurePart } from "../../check/isUnsure.js";
import { partsOf } from "../../check/partsOf.js";
import type { Formula } from "../Formula.js";
import * as limits from "../formulas/limits.js";
import { higherEnd, lowerEnd } from "../formulas/path.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { renamed, worked } from "../worked.js";
import type { FigureMaker } from "./FigureMaker.js";

/** Whether anything of a system is known as a band only. */
function isUnsure({ supply }: Scene): boolean {
  return partsOf(supply).some(isUnsurePart);
}

/** Formulas for the ends of a band, by its unit. */
const ends: Readonly<Record<string, { readonly low: Formula; readonly high: Formula; readonly letter: string }>> = {
  Pa: { low: lowerEnd, high: higherEnd, letter: "p" },
  "m3/s": { low: limits.lowestCeiling, high: limits.highestCeiling, letter: "Q" },
  "1": { low: limits.leastInHand, high: limits.mostInHand, letter: "i" },
};

/** A figure with both ends of what is known of it, where anything is known as a band only. */
export function withEnds(
  scene: Scene,
  figure: { readonly name: string; readonly group: string; readonly of: (scene: Scene) => Step | null },
): FigureMaker[] {
  const { name, group, of } = figure;
  const own = (at: Scene) => {
    const step = of(at);
    return step && { ...step, name };
  };
  const end = (which: "low" | "high") => (): Step | null => {
    const title = `${name}, ${which} end`;
    const middle = own(scene);
    if (!isUnsure(scene)) return middle && renamed(middle, title);
    const steps = [own(scene.at({ end: "low" })), own(scene.at({ end: "high" }))];
    if (!steps.every((step) => step !== null)) return null;
    const [step] = steps as [Step];
    const laws = ends[step.unit];
    if (!laws) return null;
    const infinite = steps.find(({ value }) => !Number.isFinite(value));
    if (infinite) {
      const finite = steps.find(({ value }) => Number.isFinite(value));
      const chosen = which === "low" ? (finite ?? infinite) : infinite;
      return renamed(chosen, title);
    }
    return worked(laws[which], { [laws.letter]: steps }, { name: title, ...(step.kind ? { kind: step.kind } : {}) });
  };
  return [
    { name, group, make: () => own(scene) },
    { name: `${name}, low end`, group, make: end("low") },
    { name: `${name}, high end`, group, make: end("high") },
  ];
}
