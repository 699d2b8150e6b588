import type { FleetGroup, FleetReason } from "./FleetAnswer.js";
import type { FleetMachine } from "./FleetMachine.js";
import type { Limit } from "./limitsOfElement.js";

/** Days from today within which what falls due is due now, as the week's work: common practice, no source. */
export const NOW_DAYS = 7;

/** Today, by `dayOf`, and days looked ahead. */
export interface Window {
  readonly on: number;
  readonly within: number;
}

/**
 * How pressing a machine is. Late: the manual's longest interval, its distance or its calendar is over. Now: something is
 * due within a week. Within: due in the days looked ahead; there a nuisance that runs right is best left alone until then.
 * A limit of the manual that nobody can tell the day of leaves only "late" and "now" to be said.
 */
export function groupOf(
  { stakes }: FleetMachine,
  limits: readonly Limit[],
  { reasons, runsRight }: { readonly reasons: readonly FleetReason[]; readonly runsRight: boolean },
  { on, within }: Window,
): FleetGroup {
  if (reasons.some(({ code }) => UNTRUSTED.has(code))) return "cannot say";
  if (limits.some(({ latest }) => latest < on)) return "late";
  const [first] = limits;
  if (first && first.day <= on + Math.min(NOW_DAYS, within)) return "now";
  if (reasons.length > 0) return "cannot say";
  if (!first || first.day > on + within) return "later";
  const manual = first.by !== "restriction" && first.by !== "gauge";
  return stakes === "a nuisance" && manual && runsRight ? "left alone" : "within";
}

/** Reasons for which nothing of a log is believed. */
const UNTRUSTED: ReadonlySet<FleetReason["code"]> = new Set([
  "log dated ahead",
  "no such element",
  "runs backwards",
  "no filter",
]);
