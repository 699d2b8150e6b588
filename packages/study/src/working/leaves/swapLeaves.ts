import { choicePoint } from "./choicePoint.js";
import type { LeafRow } from "./Leaf.js";

const side = (place: string): LeafRow[] => [
  ...choicePoint(`${place}.warm`),
  ...choicePoint(`${place}.cold`),
  [`${place}.inHandAtChange`, "in hand at the change"],
  [`${place}.starves.temperature`, "starves below"],
  [`${place}.lifeReasons.*.early`, "early end"],
  [`${place}.lifeReasons.*.late`, "late end"],
  [`${place}.life`, "end of life"],
  [`${place}.change.time`, "change"],
  [`${place}.spread.middle`, "life of draws"],
  [`${place}.spread.chance`, "chance of an end before the service interval"],
  [`${place}.spread.chanceError`, "standard error of the chance of an end before the service interval"],
  [`${place}.spread.draws`, "draws of the life"],
  [`${place}.cost.changes`, "changes a year"],
  [`${place}.cost.elements`, "cost of elements in a year"],
  [`${place}.cost.labour`, "cost of work in a year"],
  [`${place}.cost.stoppages`, "cost of stoppages in a year"],
  [`${place}.cost.total`, "cost of a year"],
];

/** Figures of an answer to `swap`; those outside of a side are of the system with the other element. */
export const swapLeaves: readonly LeafRow[] = [
  ["interval.time", "service interval"],
  ...side("now"),
  ...side("changed"),
  ...choicePoint("reasons.*.point"),
  ["reasons.*.below.temperature", "starves below"],
  ["reasons.*.time", "end of life"],
  ["reasons.*.interval", "service interval"],
  ["reasons.*.chance", "chance of an end before the service interval"],
  ["reasons.*.chanceError", "standard error of the chance of an end before the service interval"],
  ["reasons.*.draws", "draws of the life"],
  ["reasons.*.reasons.*.early", "early end"],
  ["reasons.*.reasons.*.late", "late end"],
  ["reasons.*.flow", "most flow at the places"],
  ["reasons.*.most", "most flow allowed"],
  ["reasons.*.fitted", "water kept by what is fitted"],
  ["reasons.*.other", "water kept by the other element"],
  ["reasons.*.beta", "beta asked"],
  ["reasons.*.size", "size asked"],
];

/** Which side a figure of `swap` belongs to. */
export function swapSideOf(path: readonly (string | number)[]): string {
  return path[0] === "now" || path[0] === "interval" ? "now" : "changed";
}
