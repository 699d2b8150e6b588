import { fuelState, type Judgement, judge, LEAST_IN_HAND, type LimitName, type Supply } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";

/** The order in which a limit is named where several are broken. */
export const LIMIT_ORDER: readonly LimitName[] = [
  "pump capacity",
  "vacuum clean",
  "vacuum at change",
  "feed pressure",
  "vapour",
];

/**
 * The first limit that a system fails to hold at any of the temperatures, K, by the whole judgement; null where it holds
 * with 20 % in hand at all of them.
 */
export function firstLimit(system: System, temperatures: readonly number[]): LimitName | null {
  const built = build(system);
  const { limits } = limitsOf(built);
  const supply: Supply = supplyOf(built);
  const broken = new Set<LimitName>();
  for (const temperature of temperatures) {
    const fuel = fuelState(built.fuel, { temperature });
    for (const limit of notHeld(judge(supply, fuel, limits, demandAt(built, fuel, null).total))) broken.add(limit);
  }
  return LIMIT_ORDER.find((limit) => broken.has(limit)) ?? null;
}

function notHeld({ lowEnd, highEnd }: Judgement): LimitName[] {
  return [lowEnd, highEnd].flatMap(({ ceilings }) =>
    ceilings.flatMap(({ limit, inHand }) => (inHand < (limit === "vacuum clean" ? 0 : LEAST_IN_HAND) ? [limit] : [])),
  );
}
