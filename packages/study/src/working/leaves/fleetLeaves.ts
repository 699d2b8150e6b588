import type { LeafRow } from "./Leaf.js";

const rates = (place: string, of: string): LeafRow[] => [
  [`entries.*.${place}.rate`, of],
  [`entries.*.${place}.least`, `slowest ${of}`],
  [`entries.*.${place}.most`, `fastest ${of}`],
];

/** Figures of an answer to `fleet`. */
export const fleetLeaves: readonly LeafRow[] = [
  ["within", "days looked ahead"],
  ["entries.*.due.days", "days until it is due"],
  ["entries.*.chance", "chance of a limit before it is due"],
  ...rates("hours", "rate of use"),
  ...rates("distance", "rate of travel"),
  ["entries.*.gauge.value", "gauge"],
  ["entries.*.elements.*.running", ({ element }) => `running time of ${element}`],
  ["entries.*.elements.*.limits.*.after", ({ by }, { element }) => `allowed for ${element} by ${by}`],
  ["entries.*.cautions.*.value", "gauge"],
  [
    "entries.*.cautions.*.limit",
    ({ code }) => (code === "gauge at the change limit" ? "limit at change" : "clean limit"),
  ],
  ["entries.*.cautions.*.reasons.*.early", "early end"],
  ["entries.*.cautions.*.reasons.*.late", "late end"],
  ["parts.*.delivery", "delivery time"],
];

/** What of a yard a figure belongs to: "yard", or "machine 0" and "part 0" and on, in the order of the answer. */
export function fleetOf([list, at]: readonly (string | number)[]): string {
  if (list === "entries") return `machine ${at}`;
  return list === "parts" ? `part ${at}` : "yard";
}
