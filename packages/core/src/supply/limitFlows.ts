import { Run } from "../circuit/Run.js";
import { Terms } from "../parts/law/index.js";
import type { LimitName, Limits } from "./Limits.js";
import { lastFlow } from "./lastFlow.js";
import { lastHolding } from "./lastHolding.js";
import { suctionMarginsOf } from "./margins.js";
import type { CurvePump, FixedPump } from "./PumpKinds.js";
import type { SupplyModel } from "./SupplyModel.js";

/** Rounding of a pressure, as a share of the air's: a margin below it is met. */
const ROUNDING = 2 ** -46;

/**
 * The largest flow in the suction line at which each limit of that side holds, m3/s. A vacuum is the drop of the whole
 * suction side, so its limit is met at that drop's flow: an inverse, which closes in on the split at the same time.
 */
export function suctionLimitFlows(model: SupplyModel, limits: Limits): ReadonlyMap<LimitName, number> {
  const { intake, fuel } = model;
  const { ambientPressure } = model.supply;
  const run = new Run(intake.terms);
  const flows = new Map<LimitName, number>();
  for (const [limit, margin] of suctionMarginsOf(model, limits)) {
    if (limit === "vapour") {
      // The pump's inlet is nearly always the lowest place of all. Where a hump is, it is met at less than the inlet's flow.
      const atInlet = lastFlow(run, -fuel.vapourPressure);
      const met = atInlet === 0 || (atInlet < Infinity && margin(atInlet) >= -ROUNDING * ambientPressure);
      flows.set(limit, met ? atInlet : lastHolding(margin, atInlet < Infinity ? atInlet : 1e-4));
    } else {
      const vacuum = limit === "vacuum clean" ? limits.vacuumClean : limits.vacuumAtChange;
      flows.set(limit, lastFlow(run, (vacuum ?? Infinity) - ambientPressure));
    }
  }
  return flows;
}

/** The largest demand, m3/s, at which the feed pressure holds; null for a pump whose delivery is not stated. */
export function feedLimitFlow(model: SupplyModel, least: number): number | null {
  const { pump, ambientPressure } = model.supply;
  const needed = ambientPressure + least;
  switch (pump.kind) {
    case "pulse":
      return null;
    case "none":
      return lastFlow(new Run(wholeOf(model)), -needed);
    case "curve":
      return curveFlow(model, pump, needed);
    case "fixed":
      if (pump.reliefTo === "inlet") return lastFlow(new Run(wholeOf(model)), pump.relief - needed);
      return model.intake.shut ? 0 : lastFlow(new Run(model.delivery.terms), pump.relief - least);
  }
}

/** The largest demand, m3/s, a pump can move against the rise asked of it; null without a pump. */
export function capacityFlow(model: SupplyModel, least: number): number | null {
  const { pump, ambientPressure } = model.supply;
  switch (pump.kind) {
    case "none":
      return null;
    case "curve":
      return pump.points.at(-1)?.flow ?? 0;
    case "pulse": {
      // What its suction falls by as it moves more is a linear resistance in the suction line.
      const run = new Run(model.intake.terms, pump.suction / pump.flow);
      return Math.min(pump.flow, lastFlow(run, pump.suction - ambientPressure));
    }
    case "fixed": {
      const slip = model.slipPerRise(pump);
      if (slip === 0) return pump.flow;
      const run = new Run(wholeOf(model), 1 / slip);
      const shut = lastFlow(run, pump.flow / slip - ambientPressure - least);
      // It need not move more against the rise asked than against its open relief valve.
      return Math.min(pump.flow, Math.max(shut, openFlow(model, pump, slip)));
    }
  }
}

/** What a pump that slips moves with its relief open. */
function openFlow(model: SupplyModel, pump: FixedPump, slip: number): number {
  if (pump.reliefTo === "inlet") return Math.max(0, pump.flow - slip * pump.relief);
  return model.intake.shut ? 0 : model.pumpedToTankRelief(pump);
}

/** Where a pump's falling rise no longer covers what both sides cost: between two of its points the rise is a resistance. */
function curveFlow(model: SupplyModel, { points }: CurvePump, needed: number): number {
  const terms = wholeOf(model);
  const run = new Run(terms);
  const after = points.findIndex(({ flow, rise }) => !(run.at(flow) <= rise - needed));
  const right = points[after];
  const left = points[after - 1];
  if (!right) return lastFlow(run, (points.at(-1)?.rise ?? 0) - needed);
  if (!left) return lastFlow(run, right.rise - needed);
  const fall = (left.rise - right.rise) / (right.flow - left.flow);
  return lastFlow(new Run(terms, fall), left.rise + fall * left.flow - needed);
}

/** Suction and delivery, passed one after the other. */
function wholeOf({ intake, delivery }: SupplyModel): Terms {
  const terms = new Terms();
  terms.add(intake.terms);
  terms.add(delivery.terms);
  return terms;
}
