import { type Leaf, proofOf, type Working } from "@thirstline/study/working";
import type { AnswerLeaf } from "./answerLeaves.js";

/** How a figure of an answer is found among the workings. */
export interface Told {
  readonly leafOf: (path: AnswerLeaf["path"]) => Leaf | null;
  readonly workingOf: (leaf: Leaf) => Working | null;
}

/** Largest disagreement met so far, and how many figures were compared: for reports. */
export const tally = { figures: 0, largest: 0 };

/** Every fault of the workings of some figures: one without a working, another figure, or a formula that does not come out. */
export function faultsOf(leaves: readonly AnswerLeaf[], { leafOf, workingOf }: Told): string[] {
  const faults: string[] = [];
  for (const { path, value, unit } of leaves) {
    const place = path.join(".");
    const leaf = leafOf(path);
    const working = leaf && workingOf(leaf);
    if (!leaf || !working) {
      faults.push(`${place} has no working${leaf ? `: "${leaf.figure}"` : ""}`);
      continue;
    }
    const { step } = working;
    const scale = Math.max(Math.abs(value), step.unit === "Pa" ? 1 : 0);
    if (step.unit !== unit) faults.push(`${place} is in ${unit}, its working "${leaf.figure}" in ${step.unit}`);
    const out = Math.abs(step.value - value);
    tally.figures++;
    if (out > 0) tally.largest = Math.max(tally.largest, out / scale);
    if (!(out <= 1e-9 * scale)) {
      faults.push(`${place} is ${value}, its working "${leaf.figure}" comes to ${step.value}`);
    }
    const proof = proofOf(working);
    tally.largest = Math.max(tally.largest, proof.largest);
    for (const { name, why, by } of proof.misses) faults.push(`${place}: ${name}, ${why}, is out by ${by}`);
  }
  return [...new Set(faults)];
}
