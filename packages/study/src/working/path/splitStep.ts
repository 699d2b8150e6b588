import { LAMINAR_END } from "@thirstline/core";
import { dropSum, flowSum } from "../formulas/path.js";
import type { Check, PartPath, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { inWords, searched, worked } from "../worked.js";
import { known } from "./known.js";
import type { Stretch } from "./Stop.js";

/** A branch by itself, with the flow that core found put in. */
export interface Branch {
  readonly place: PartPath;
  readonly size: number;
  readonly alone: Stretch;
}

/** Where a flow splits. */
export interface Splitting {
  readonly scene: Scene;
  readonly path: PartPath | null;
  readonly name: string;
  readonly total: Step;
}

/**
 * Whether a line of a branch stands on the step to turbulent flow, in the reading that has one: then the branch may cost
 * anything within the step, and its drop at that flow says nothing of what the bank costs.
 */
export function standsOnStep({ setting }: Scene, { alone }: Branch): boolean {
  if (setting.passage !== "early") return false;
  return alone.stops.some((stop) => Math.abs((stop.reynolds?.().value ?? 0) / LAMINAR_END - 1) < 1e-6);
}

/** The flow of a branch: searched for, with what proves it. */
export function splitStep({ scene, path, total }: Splitting, branches: readonly Branch[], at: number): Step {
  const own = branches[at] as Branch;
  const name = "flow through the branch";
  const plain = {
    name,
    value: own.size,
    unit: "m3/s",
    kind: "flow",
    ...(path === null ? {} : { part: path }),
  } as const;
  if (own.size === 0) return inWords("nothing flows here: it is shut, or held shut", plain);
  const mine = known(own.alone.costs);
  const flowing = branches.flatMap((branch, place) => (place !== at && branch.size !== 0 ? [branch] : []));
  const checks = flowing.flatMap((other): Check[] => {
    const theirs = known(other.alone.costs);
    if (!mine || !theirs || standsOnStep(scene, own) || standsOnStep(scene, other)) return [];
    return [
      {
        words: "the drop along this branch is that along another",
        left: worked(dropSum, { d: mine }, { name: "drop along this branch" }),
        relation: "=",
        right: worked(dropSum, { d: theirs }, { name: "drop along another" }),
      },
    ];
  });
  const parts = branches.map(({ size }) => inWords("as found", { ...plain, value: size }));
  const sum: Check = {
    words: "the branches' flows add up to the whole",
    left: worked(flowSum, { Q: parts }, { name: "flow of all branches" }),
    relation: "=",
    right: total,
  };
  return searched("the flow splits so that every branch costs the same, found by Newton's method in a bracket", plain, [
    ...checks,
    sum,
  ]);
}
