import { type FuelState, type Judgement, LEAST_IN_HAND } from "@thirstline/core";
import type { Reason, Verdict } from "./CheckAnswer.js";
import { fuelReasons } from "./fuelReasons.js";
import type { Row } from "./rows.js";

/** What a verdict is made of. */
export interface VerdictFacts {
  readonly judgement: Judgement;
  readonly fuel: FuelState;
  /** whether the suction side has a limit to be judged by */
  readonly complete: boolean;
  /** what lets nothing pass, when something does not */
  readonly shutBy: string | null;
  readonly rows: readonly Row[];
}

/**
 * The verdict at one temperature, with its reasons. What is not known comes first (wax, a fuel outside its data): no
 * figure is a promise there. Then a broken limit, then a missing one, then ends of a band that disagree.
 */
export function verdictOf(facts: VerdictFacts): { readonly verdict: Verdict; readonly reasons: readonly Reason[] } {
  const { judgement, complete, shutBy } = facts;
  if (shutBy !== null) return { verdict: "starves", reasons: [{ code: "shut", by: shutBy }] };
  const unknown = fuelReasons(facts.fuel, judgement.grade === "starves");
  if (unknown.length > 0) return { verdict: "cannot say", reasons: unknown };
  if (judgement.grade === "starves") {
    return { verdict: "starves", reasons: judgement.lowEnd.broken.map(({ limit }) => ({ code: "broken", limit })) };
  }
  if (!complete) return { verdict: "cannot say", reasons: [{ code: "no vacuum limit" }] };
  if (judgement.grade === "unsettled") {
    const limit = judgement.worse.atChange.limit;
    return { verdict: "cannot say", reasons: [{ code: "unsettled", limit, parts: bandParts(facts.rows) }] };
  }
  return { verdict: judgement.grade, reasons: tightReasons(judgement) };
}

function tightReasons({ grade, worse }: Judgement): Reason[] {
  if (grade !== "tight") return [];
  const reasons: Reason[] = [];
  if (worse.overCleanLimit) reasons.push({ code: "over clean limit" });
  if (worse.atChange.inHand < LEAST_IN_HAND) reasons.push({ code: "little in hand", limit: worse.atChange.limit });
  return reasons;
}

function bandParts(rows: readonly Row[]): string[] {
  const spread = rows.filter(
    ({ part }) =>
      part?.kind === "strainer" || (part?.kind === "filter" && part.medium.linear.high > part.medium.linear.low),
  );
  return spread.map(({ name }) => name);
}
