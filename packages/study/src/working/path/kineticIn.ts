import { kineticPressure, velocity } from "../formulas/flow.js";
import { fuelDensity } from "../fuel/density.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromSource, inWords, worked } from "../worked.js";

/** Where fuel moves: its flow, and the bore it runs in, where one is known. */
export interface Moving {
  readonly scene: Scene;
  readonly bore: Step | null;
  readonly flow: Step;
}

/** Pressure of the fuel's motion in the bore last met. */
export function kineticIn({ scene, bore, flow }: Moving): Step {
  if (bore === null) {
    return inWords("no bore is known here, so none is counted", {
      name: "pressure of the fuel's motion",
      value: 0,
      unit: "Pa",
      kind: "pressure",
    });
  }
  return worked(kineticPressure, {
    alpha: fromSource("F. M. White, Fluid Mechanics (7th ed. 2011), section 6.9; from memory", {
      name: "kinetic factor",
      value: 2,
      unit: "1",
      kind: "plain",
    }),
    rho: fuelDensity(scene),
    v: worked(velocity, { Q: flow, D: bore }),
  });
}
