import type { FuelState } from "../fuel/index.js";
import type { BandEnd } from "../parts/Band.js";
import { LAMINAR_END } from "../parts/friction/index.js";
import { requireMoreThan } from "../require.js";
import type { DescentEntry } from "./descent.js";
import type { LimitName, Limits } from "./Limits.js";
import { capacityFlow, feedLimitFlow, suctionLimitFlows } from "./limitFlows.js";
import { requireLimits } from "./requireLimits.js";
import type { Supply } from "./Supply.js";
import { type SupplyDescent, SupplyModel } from "./SupplyModel.js";

/** How far a supply can go before one limit is met. */
export interface Ceiling {
  readonly limit: LimitName;
  /** largest demand at which the limit holds, m3/s; 0 when it never does, Infinity when demand does not touch it */
  readonly flow: number;
  /** ceiling over demand, minus one; where the suction line carries the pump's whole flow, that flow's own ratio */
  readonly inHand: number;
}

/**
 * The supply ceiling of every limit, the worse of two readings: the smooth passage between laminar and turbulent flow,
 * and turbulent flow from Re 2300 up. A ceiling inside the jump of the second is the flow below it.
 *
 * @param supply from tank to injection pump
 * @param fuel from `fuelState`
 * @param limits what to keep to
 * @param demand m3/s, return included; more than 0
 * @param end which end of every band
 * @throws InputError when the demand is not more than 0, or a limit is not a finite number
 */
export function ceilings(supply: Supply, fuel: FuelState, limits: Limits, demand: number, end: BandEnd): Ceiling[] {
  requireMoreThan("ceilings", "demand", demand, 0, "m3/s");
  requireLimits("ceilings", limits);
  const smooth = new SupplyModel(supply, { fuel, passage: "smooth", end });
  const found = ceilingsOf(smooth, limits, demand);
  const reach = Math.max(demand, ...found.map(({ flow }) => flow).filter(Number.isFinite));
  // Where no line leaves laminar flow even at the highest ceiling, the other reading is the same.
  if (smooth.intake.shut || !leavesLaminar(smooth.descent(reach))) return found;
  const early = ceilingsOf(new SupplyModel(supply, { fuel, passage: "early", end }), limits, demand);
  return found.map((one, at) => {
    const other = early[at] ?? one;
    return { limit: one.limit, flow: Math.min(one.flow, other.flow), inHand: Math.min(one.inHand, other.inHand) };
  });
}

function ceilingsOf(model: SupplyModel, limits: Limits, demand: number): Ceiling[] {
  const { pump } = model.supply;
  const moved = pump.kind === "fixed" && pump.reliefTo === "tank" ? model.suctionFlow(0) : 0;
  // A pump whose slip eats all it moves relieves nothing: its suction line carries the demand, like any other.
  const whole = moved > 0 ? moved : null;
  const found = [...suctionLimitFlows(model, limits)].map(([limit, flow]): Ceiling => {
    if (whole === null) return { limit, flow, inHand: flow / demand - 1 };
    // The suction line does not feel the demand, so what is in hand there is read off the pump's own flow.
    const ofPump = flow / whole - 1;
    const met = flow < whole ? 0 : flow;
    return { limit, flow: met, inHand: ofPump < 0 ? ofPump : Math.min(ofPump, met / demand - 1) };
  });
  const least = limits.feedPressure ?? 0;
  const others = [
    ["feed pressure", feedLimitFlow(model, least)],
    ["pump capacity", capacityFlow(model, least)],
  ] as const;
  for (const [limit, flow] of others) if (flow !== null) found.push({ limit, flow, inHand: flow / demand - 1 });
  return found;
}

function leavesLaminar(descent: SupplyDescent): boolean {
  const turbulent = (entries: readonly DescentEntry[]): boolean =>
    entries.some((entry) =>
      entry.kind === "bank"
        ? entry.branches.some(turbulent)
        : entry.profile.regime !== null && (entry.profile.reynolds ?? 0) > LAMINAR_END,
    );
  return [...descent.tanks.map((one) => one.descent), descent.suction, descent.delivery].some(turbulent);
}
