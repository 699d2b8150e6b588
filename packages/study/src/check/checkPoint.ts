import {
  type Band,
  cleaned,
  densityAt,
  fuelState,
  type Judgement,
  judge,
  kineticPressure,
  type SupplyModel,
} from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import type { CheckPoint } from "./CheckAnswer.js";
import { cautionsOf } from "./cautionsOf.js";
import { ceilingsOf } from "./ceilingsOf.js";
import { costsInOrder } from "./costsInOrder.js";
import { demandAt } from "./demandAt.js";
import { type Ends, each, modelsOf, ordered } from "./ends.js";
import { isSoiled } from "./isUnsure.js";
import { limitsOf } from "./limitsOf.js";
import { partsOf } from "./partsOf.js";
import { type Rows, rowsOf } from "./rows.js";
import { shutBy } from "./shutBy.js";
import { supplyOf } from "./supplyOf.js";
import { verdictOf } from "./verdictOf.js";

/** 15 degC, the reference of fuel densities, K. */
const REFERENCE = 288.15;

/** The answer at one fuel temperature, K; `asked` replaces the file's demand, m3/s, burn and return in proportion. */
export function checkPoint(built: Built, temperature: number, asked: number | null): CheckPoint {
  const fuel = fuelState(built.fuel, { temperature });
  const demand = demandAt(built, fuel, asked);
  const supply = supplyOf(built);
  const { limits, cautions, complete } = limitsOf(built);
  const judgement = judge(supply, fuel, limits, demand.total);
  const holdsSoil = partsOf(supply).some(isSoiled);
  const clean = modelsOf(cleaned(supply), fuel);
  const now = holdsSoil ? modelsOf(supply, fuel) : clean;
  const states = each(clean, (model) => model.state(demand.total));
  const nowStates = holdsSoil ? each(now, (model) => model.state(demand.total)) : states;
  const { suctionFlow } = states.middle;
  const descent = clean.middle.descent(demand.total);
  const velocityHead = kineticPressure(suctionFlow, descent.bore, fuel);
  const rows = rowsOf(clean.middle, descent, velocityHead, suctionFlow);
  const vacuum = each(states, (state) => state.vacuum);
  const soiled = nowStates.middle.vacuum !== states.middle.vacuum;
  const asTheyAre = holdsSoil ? rowsOf(now.middle, now.middle.descent(demand.total), velocityHead, suctionFlow) : rows;
  const lowest = lowestOf(now, suctionFlow, asTheyAre.suction);
  const feed = each(nowStates, (state) => state.feedPressure ?? Number.NaN);
  const facts = { judgement, fuel, complete, shutBy: shutBy(supply), rows: [...rows.suction, ...rows.delivery] };
  return {
    temperature,
    ...verdictOf(facts),
    cautions: [
      ...cautions,
      ...cautionsOf({
        supply,
        altitude: built.altitude,
        fuel,
        densityAt15: densityAt(built.fuel.density, REFERENCE),
        returned: demand.return,
        rows,
        lowest,
        vacuum: nowStates.middle.vacuum,
        hasBore: descent.bore !== null,
      }),
    ],
    fuel: {
      name: built.fuel.name,
      density: fuel.density,
      kinematicViscosity: fuel.kinematicViscosity,
      vapourPressure: fuel.vapourPressure,
      cloudPoint: built.fuel.cloudPoint ?? null,
      coldFilterPluggingPoint: built.fuel.coldFilterPluggingPoint ?? null,
    },
    demand,
    ambientPressure: supply.ambientPressure,
    suctionFlow,
    vacuum,
    vacuumNow: soiled ? each(nowStates, (state) => state.vacuum) : null,
    vacuumLimits: { clean: limits.vacuumClean ?? null, atChange: limits.vacuumAtChange ?? null },
    feedPressure: Number.isNaN(feed.middle) ? null : ordered(feed.low, feed.middle, feed.high),
    feedLimit: limits.feedPressure ?? 0,
    lowest,
    velocityHead,
    ceilings: ceilingsOf(supply, judgement),
    binds: judgement.middle.atChange.limit,
    inHand: ordered(inHandAt(judgement, "highEnd"), inHandAt(judgement, "middle"), inHandAt(judgement, "lowEnd")),
    riseFree: limits.vacuumAtChange === undefined ? null : free(vacuum, limits.vacuumAtChange),
    most: costsInOrder(asTheyAre.suction)[0] ?? null,
    ...bare(rows),
    asTheyAre: showsSoil(asTheyAre) ? bare(asTheyAre) : null,
  };
}

/** Whether any element on the way described is stated to hold soil. */
function showsSoil({ suction, delivery }: Rows): boolean {
  return [...suction, ...delivery].some(({ part }) => part !== null && isSoiled(part));
}

function bare({ suction, delivery }: Rows): Pick<CheckPoint, "suction" | "delivery"> {
  const all = (rows: Rows["suction"]) => rows.map(({ part: _, ...row }) => row);
  return { suction: all(suction), delivery: all(delivery) };
}

function free(vacuum: Band, limit: number): Band {
  return ordered(limit - vacuum.high, limit - vacuum.middle, limit - vacuum.low);
}

function inHandAt(judgement: Judgement, end: "lowEnd" | "middle" | "highEnd"): number {
  return judgement[end].atChange.inHand;
}

function lowestOf(
  models: Ends<SupplyModel>,
  flow: number,
  rows: readonly { readonly name: string; readonly pressure: number | null }[],
): CheckPoint["lowest"] {
  const low = each(models, (model) => model.intake.descent(flow).lowest?.pressure ?? null);
  if (low.low === null || low.middle === null || low.high === null) return null;
  const at = rows.find((row) => row.pressure === low.middle) ?? rows[0];
  return { pressure: ordered(low.high, low.middle, low.low), part: at?.name ?? "tank" };
}
