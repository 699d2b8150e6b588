import { type Band, cleaned, fuelState, SupplyModel } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import { checkPoint } from "../check/checkPoint.js";
import { type Ends, each, eachEnd, modelsOf, ordered } from "../check/ends.js";
import { isGround } from "../check/ground.js";
import { isSoiled, isUnsure } from "../check/isUnsure.js";
import { partsOf } from "../check/partsOf.js";
import { supplyOf } from "../check/supplyOf.js";
import type { CurvePoint } from "./CurveAnswer.js";
import { curveState } from "./curveState.js";
import { dueAt } from "./Due.js";
import { dueSupply } from "./dueSupply.js";
import { pastDue } from "./pastDue.js";
import { reach } from "./reach.js";

/** What one curve is asked with; null where the file or the answer decides. */
export interface CurveAsked {
  /** K */
  readonly temperature: number;
  /** m3/s */
  readonly demand: number | null;
  /** m3/s */
  readonly to: number | null;
  readonly points: number;
}

/** The curve at one fuel temperature; `drops` holds the terminal drops stated, Pa, by element. */
export function curvePoint(built: Built, drops: ReadonlyMap<string, number>, asked: CurveAsked): CurvePoint {
  const point = checkPoint(built, asked.temperature, asked.demand);
  const fuel = fuelState(built.fuel, { temperature: asked.temperature });
  const supply = supplyOf(built);
  const parts = partsOf(supply);
  const spread = parts.some(isUnsure);
  const end = asked.to ?? reach(point);
  const demand = Float64Array.from({ length: asked.points }, (_, at) => (end * at) / (asked.points - 1));
  const due = drops.size === 0 ? null : dueAt(built, drops, asked.demand);
  const dueModels =
    due && eachEnd((end) => new SupplyModel(dueSupply(supply, due, end), { fuel, passage: "smooth", end }));
  return {
    temperature: asked.temperature,
    unanswered: point.reasons.filter(isGround),
    cautions: [...point.cautions, ...(due ? pastDue(supply, due) : [])],
    demand,
    clean: curveState(modelsOf(cleaned(supply), fuel), demand, spread),
    now: parts.some(isSoiled) ? curveState(modelsOf(supply, fuel), demand, spread) : null,
    atChange: dueModels && curveState(dueModels, demand, spread),
    duty: {
      demand: point.demand.total,
      suctionFlow: point.suctionFlow,
      vacuum: point.vacuum,
      vacuumNow: point.vacuumNow,
      vacuumAtChange: dueModels && vacuumAt(dueModels, point.demand.total),
      feedPressure: point.feedPressure,
    },
    vacuumLimits: point.vacuumLimits,
    feedLimit: point.feedLimit,
    ceilings: point.ceilings,
  };
}

function vacuumAt(models: Ends<SupplyModel>, demand: number): Band {
  const { low, middle, high } = each(models, (model) => model.state(demand).vacuum);
  return ordered(low, middle, high);
}
