import { reynolds, velocity } from "../formulas/flow.js";
import { fuelViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import { worked } from "../worked.js";
import { ofPart, type PartScene } from "./PartScene.js";

type Bored = PartScene & { readonly part: { readonly bore: number } };

/** Bore of a line or fitting. */
export function boreOf(given: Bored): Step {
  return ofPart(given, "bore", { name: "bore", value: given.part.bore, unit: "m", kind: "bore" });
}

/** Mean velocity in its bore. */
export function velocityIn(given: Bored): Step {
  return worked(velocity, { Q: given.flow, D: boreOf(given) }, { part: given.path });
}

/** Reynolds number in a bore; its own figure where the answer has one. */
export function reynoldsIn(given: PartScene, bore: Step, value?: number): Step {
  return worked(
    reynolds,
    { Q: given.flow, D: bore, nu: fuelViscosity(given.scene) },
    { part: given.path, name: `Reynolds number in ${given.part.name}`, ...(value === undefined ? {} : { value }) },
  );
}
