import type { AnswerLeaf } from "./answerLeaves.js";

/** Whether everything is gone through, and not one figure of each kind. */
export const LONG = process.env.THIRSTLINE_LONG === "1";

/** One figure of every kind: of those whose paths differ in places of lists only, the first; all of them in a long run. */
export function sampled(leaves: readonly AnswerLeaf[], kindOf: (leaf: AnswerLeaf) => string = () => ""): AnswerLeaf[] {
  if (LONG) return [...leaves];
  const first = new Map<string, AnswerLeaf>();
  for (const leaf of leaves) {
    const kind = `${leaf.path.map((step) => (typeof step === "number" ? "*" : step)).join(".")} ${kindOf(leaf)}`;
    if (!first.has(kind)) first.set(kind, leaf);
  }
  return [...first.values()];
}
