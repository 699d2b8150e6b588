import type { LimitName, Limits } from "./Limits.js";
import { riseOnCurve, type SupplyModel } from "./SupplyModel.js";

/** How far from a limit a supply is at a flow: 0 or more holds. Never rises with flow. */
export type Margin = (flow: number) => number;

/**
 * The margin of every limit that applies at a demand, by name: Pa, or m3/s for the pump's capacity.
 *
 * A feed pressure that is not stated counts as 0 gauge: an engine that would have to suck is not fed. A pulse pump's
 * delivery is not stated, so only its suction line is judged.
 */
export function marginsOf(model: SupplyModel, limits: Limits): ReadonlyMap<LimitName, Margin> {
  const margins = new Map<LimitName, Margin>();
  for (const [name, margin] of suctionMarginsOf(model, limits)) {
    margins.set(name, (demand) => margin(model.suctionFlow(demand)));
  }
  const feed = feedMargin(model, limits.feedPressure ?? 0);
  if (feed) margins.set("feed pressure", feed);
  const capacity = capacityMargin(model, limits.feedPressure ?? 0);
  if (capacity) margins.set("pump capacity", capacity);
  return margins;
}

/** The margins the suction side alone decides, at the flow it carries, m3/s. */
export function suctionMarginsOf(model: SupplyModel, limits: Limits): ReadonlyMap<LimitName, Margin> {
  const margins = new Map<LimitName, Margin>();
  const vacuum = (name: LimitName, limit: number | undefined) => {
    if (limit !== undefined) margins.set(name, (flow) => limit - model.vacuum(flow));
  };
  vacuum("vacuum clean", limits.vacuumClean);
  vacuum("vacuum at change", limits.vacuumAtChange);
  margins.set("vapour", (flow) => model.intake.lowest(flow) - model.fuel.vapourPressure);
  return margins;
}

/** Feed pressure over its limit, with the pump at the rise its relief or curve allows. */
function feedMargin(model: SupplyModel, least: number): Margin | null {
  const { pump, ambientPressure } = model.supply;
  if (pump.kind === "pulse") return null;
  return (demand) => {
    const inlet = model.intake.pressure(model.suctionFlow(demand));
    const outlet =
      pump.kind === "none"
        ? inlet
        : pump.kind === "curve"
          ? inlet + riseOnCurve(pump.points, demand)
          : pump.reliefTo === "tank"
            ? ambientPressure + pump.relief
            : inlet + pump.relief;
    const feed = inlet === -Infinity ? -Infinity : outlet - model.delivery.loss(demand) - ambientPressure;
    return feed - least;
  };
}

/** What the pump can move against the rise asked of it, over the demand. */
function capacityMargin(model: SupplyModel, least: number): Margin | null {
  const { pump, ambientPressure } = model.supply;
  switch (pump.kind) {
    case "none":
      return null;
    case "curve":
      return (demand) => (pump.points.at(-1)?.flow ?? 0) - demand;
    case "pulse":
      // Straight between its two stated ends; common practice, no source.
      return (demand) => pump.flow * (1 - Math.max(0, model.vacuum(demand)) / pump.suction) - demand;
    case "fixed":
      return (demand) => {
        const slip = model.slipPerRise(pump);
        if (slip === 0) return pump.flow - demand;
        const inlet = model.intake.pressure(demand);
        const needed = ambientPressure + least + model.delivery.loss(demand) - inlet;
        const open = pump.reliefTo === "inlet" ? pump.relief : ambientPressure + pump.relief - inlet;
        return pump.flow - slip * Math.max(0, Math.min(needed, open)) - demand;
      };
  }
}
