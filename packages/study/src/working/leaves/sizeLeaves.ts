import { effortWords } from "../choices/effortWords.js";
import type { LeafRow } from "./Leaf.js";

const layout = (place: string): LeafRow[] => [
  ...[0, 1, 2].map((at): LeafRow => [`${place}.stages.${at}.count`, `elements of stage ${at + 1}`]),
  [`${place}.bore`, "bore of the lines"],
];

const arrangement = (place: string): LeafRow[] => [
  ...layout(place),
  [`${place}.elements`, "elements in all"],
  [`${place}.changesAYear`, "elements changed in a year"],
  [`${place}.yearlyCost`, "cost of a year"],
  [`${place}.vacuum`, "most vacuum"],
  [`${place}.life`, "end of life"],
  [`${place}.spread.middle`, "life of draws"],
  [`${place}.spread.chance`, "chance of an end before the service interval"],
  [`${place}.spread.chanceError`, "standard error of the chance of an end before the service interval"],
  [`${place}.spread.draws`, "draws of the life"],
  [`${place}.stoppages`, "cost of stoppages in a year"],
];

/** More than any search keeps to: one each 5 K between the coldest and the hottest fuel, and those stated. */
const TEMPERATURES = 100;

/** Figures of an answer to `size`. */
export const sizeLeaves: readonly LeafRow[] = [
  ["reasons.*.temperature", "temperature not judged"],
  ["reasons.*.interval", "interval asked"],
  ["reasons.*.most", "longest interval allowed"],
  ["asked.rating.beta", "beta asked"],
  ["asked.rating.size", "size asked"],
  ["asked.interval", "interval asked"],
  ...Array.from(
    { length: TEMPERATURES },
    (_, at): LeafRow => [`temperatures.${at}`, `temperature ${at + 1} searched at`],
  ),
  ["candidates", "candidates"],
  ["passing", "passing"],
  ...arrangement("best.*"),
  ...arrangement("arrangements.*"),
  ["failed.*.count", "arrangements that fail by this"],
  ...layout("failed.*.example"),
  ...layout("nearest"),
  ["nearest.inHand", "least in hand"],
  ["nearest.life", "end of life"],
  ...Object.entries(effortWords).map(([key, words]): LeafRow => [`effort.${key}`, words]),
];

/** Which arrangement a figure of `size` belongs to, or the search itself. */
export function sizeOf([first, second]: readonly (string | number)[], answer: object): string {
  if (first === "arrangements") return `arrangement ${second}`;
  if (first === "failed") return `failed ${second}`;
  if (first === "nearest") return "nearest";
  if (first !== "best") return "search";
  // The best of a ranking stands in the list too, under its own place.
  const { arrangements, best } = answer as {
    readonly arrangements: readonly object[];
    readonly best: Readonly<Record<string, object | null>>;
  };
  const own = JSON.stringify(best[String(second)]);
  return `arrangement ${arrangements.findIndex((one) => JSON.stringify(one) === own)}`;
}
