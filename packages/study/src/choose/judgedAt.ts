import { fuelState, type Judgement, judge } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import { demandAt } from "../check/demandAt.js";
import { limitsOf } from "../check/limitsOf.js";
import { supplyOf } from "../check/supplyOf.js";

/** The judgement over a system at a fuel temperature, K, with its elements as they are. */
export function judgedAt(built: Built, temperature: number): Judgement {
  const fuel = fuelState(built.fuel, { temperature });
  const { limits } = limitsOf(built);
  return judge(supplyOf(built), fuel, limits, demandAt(built, fuel, null).total);
}
