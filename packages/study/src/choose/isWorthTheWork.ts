import type { RemedyResult } from "./RemedyAnswer.js";

/** Share of the demand, and Pa over the clean limit, that nobody would lift a spanner for. */
const LEAST = { inHand: 5e-4, overClean: 50 } as const;

/** Whether a change buys anything a person would notice: more in hand than as it is, or less over the clean limit. */
export function isWorthTheWork(
  one: Pick<RemedyResult, "inHand" | "overClean">,
  now: Pick<RemedyResult, "inHand" | "overClean">,
): boolean {
  return one.inHand > now.inHand + LEAST.inHand || (one.overClean ?? 0) < (now.overClean ?? 0) - LEAST.overClean;
}
