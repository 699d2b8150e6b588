import { choicePoint } from "./choicePoint.js";
import type { LeafRow } from "./Leaf.js";

const changes = ["from", "to", "by", "restriction"] as const;

const result = (place: string): LeafRow[] => [
  // Which of the changes it is, is told by its place in the path.
  ...changes.flatMap((key) =>
    [0, 1].map((at): LeafRow => [`${place}.changes.${at}.${key}`, `change ${at + 1}, ${key}`]),
  ),
  [`${place}.temperature`, "temperature where least is in hand"],
  [`${place}.ceiling`, "ceiling at change, low end"],
  [`${place}.inHand`, "in hand, low end"],
  [`${place}.overClean`, "vacuum over the clean limit"],
  [`${place}.cost`, "cost"],
];

/** Figures of an answer to `remedy`. */
export const remedyLeaves: readonly LeafRow[] = [
  ...choicePoint("worst"),
  ["demand", "demand"],
  ...result("now"),
  ...result("single.*"),
  ...result("pairs.*"),
];

/** Which change, or pair of them, a figure of `remedy` belongs to. */
export function remedyOf([first, second]: readonly (string | number)[]): string {
  return first === "single" || first === "pairs" ? `${first} ${second}` : "now";
}
