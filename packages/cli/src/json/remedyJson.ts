import type { RemedyAnswer, RemedyResult } from "@thirstline/study";
import { figure } from "./figure.js";
import { plainJson, pointJson } from "./swapJson.js";

const units = { by: "m", from: "m", to: "m", restriction: "1" };

/** An answer to `remedy` for programs: SI, every figure with its unit. */
export function remedyJson({ question, system, pump, verdict, worst, now, demand, single, pairs }: RemedyAnswer) {
  return {
    question,
    system,
    pump,
    verdict,
    worst: pointJson(worst),
    demand: figure(demand, "m3/s", "not known"),
    now: resultJson(now),
    single: single.map(resultJson),
    pairs: pairs.map(resultJson),
  };
}

function resultJson(result: RemedyResult) {
  return {
    changes: result.changes.map((change) => {
      const counted = change.kind === "fewer fittings" ? { ...units, from: "1", to: "1" } : units;
      const warmer = change.kind === "warmer fuel" || change.kind === "cooler fuel";
      return plainJson(change, warmer ? { ...counted, by: "K" } : counted);
    }),
    temperature: figure(result.temperature, "K", "not known"),
    verdict: result.verdict,
    ceiling: figure(result.ceiling, "m3/s", "demand does not touch the limit"),
    limit: result.limit,
    inHand: figure(result.inHand, "1", "demand does not touch the limit"),
    overClean: figure(result.overClean, "Pa", "the clean limit holds, or none is given"),
    cost: figure(result.cost, "stated currency", "no cost stated"),
  };
}
