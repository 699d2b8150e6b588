import { filterProfiles, fuelState, SupplyModel } from "@thirstline/core";
import { supplyOf } from "../check/supplyOf.js";
import type { GaugeElement, GaugeSide } from "./GaugeAnswer.js";
import type { GaugeFacts } from "./gaugeFacts.js";
import { LimitMap } from "./LimitMap.js";
import type { SideFit } from "./SideFit.js";

/** Each element of a side as its gauge has it now; its drop at full demand where the limit is judged, tanks low. */
export function elementsNow(facts: GaugeFacts, side: GaugeSide, { soil }: SideFit): GaugeElement[] {
  const { built } = facts;
  const path = facts[side];
  const { demand } = soil.best.model.stateAt(soil.best.fit.parameters);
  const met = roomMap(facts, side)?.at(demand) ?? null;
  const fuel = fuelState(built.fuel, { temperature: met?.temperature ?? built.temperature });
  const model = new SupplyModel(supplyOf(built), { fuel, passage: "smooth", end: "middle" });
  const { burn, return: back } = built.demand(fuel);
  const dropsAt = (ratio: number) => {
    model.restrict(path.at(ratio));
    return new Map(
      filterProfiles(model.descent(demand * (burn + back))).map(({ part, drop }) => [part.name ?? "", drop ?? 0]),
    );
  };
  const { low, middle, high } = soil.ratio;
  const [clean, now] = [dropsAt(1), dropsAt(Math.max(1, middle))];
  const full = met && Number.isFinite(met.ratio) ? dropsAt(met.ratio) : null;
  const ends = [low, middle, high].map((ratio) => path.at(Math.max(1, ratio)));
  return path.names.map((name): GaugeElement => {
    const [least = 1, likely = 1, most = 1] = ends.map((state) => state.get(name) ?? 1);
    const [dropClean, drop] = [clean.get(name) ?? 0, now.get(name) ?? 0];
    const room = full === null ? 0 : (full.get(name) ?? 0) - dropClean;
    return {
      name,
      ratio: { low: least, middle: likely, high: most },
      dropClean,
      drop,
      roomUsed: full === null ? null : room > 0 ? (drop - dropClean) / room : 1,
    };
  });
}

/** Where the first limit is met with nothing but this side's elements filling; null without a limit or a place to judge. */
export function roomMap(
  { built, points, limits, limited, terminals, ...paths }: GaugeFacts,
  side: GaugeSide,
): LimitMap | null {
  if (!limited || points.length === 0) return null;
  return new LimitMap({ built, limits, points, terminals, restrictions: paths[side].at });
}
