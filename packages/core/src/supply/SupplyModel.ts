import type { FuelState } from "../fuel/index.js";
import type { Setting } from "../parts/law/index.js";
import { requireAtLeast } from "../require.js";
import { Delivery } from "./Delivery.js";
import type { DescentEntry } from "./descent.js";
import { Intake, type IntakeDescent } from "./Intake.js";
import { lastHolding } from "./lastHolding.js";
import type { FixedPump, Pump } from "./PumpKinds.js";
import { requireSupply } from "./requireSupply.js";
import type { Supply } from "./Supply.js";

/** A supply at one demand. Pressures are static, as gauges read them. */
export interface SupplyState {
  /** m3/s the engine asks for, return included */
  readonly demand: number;
  /** m3/s the suction line carries */
  readonly suctionFlow: number;
  /** at the pump's inlet, below the air around, Pa; negative when fuel stands above; Infinity when nothing can pass */
  readonly vacuum: number;
  /** rise over the pump, Pa; null when the pump's rise is not stated */
  readonly pumpRise: number | null;
  /** gauge pressure at the injection pump, Pa; null when it cannot be known */
  readonly feedPressure: number | null;
  /** m3/s over the relief valve; 0 when shut, or when no more than demand passes it */
  readonly relief: number;
}

/** Every part of a supply at one demand. */
export interface SupplyDescent extends IntakeDescent {
  readonly delivery: readonly DescentEntry[];
}

/**
 * A supply under one fuel state.
 *
 * @throws InputError when there is no tank, or several whose paths do not all resist flow; from `state` and `descent` when
 * the demand is not 0 or more
 */
export class SupplyModel {
  readonly supply: Supply;
  readonly fuel: FuelState;
  readonly intake: Intake;
  readonly delivery: Delivery;

  constructor(supply: Supply, setting: Setting) {
    requireSupply("SupplyModel", supply);
    this.supply = supply;
    this.fuel = setting.fuel;
    this.intake = new Intake(supply, setting);
    this.delivery = new Delivery(supply, setting);
  }

  /**
   * Sets the resistance over clean of the named filters, for whoever follows elements as they fill; the others go back to
   * their own. A filter that was plugged or shut when the model was made stays so.
   */
  restrict(restrictions: ReadonlyMap<string, number>): void {
    this.intake.restrict(restrictions);
    this.delivery.restrict(restrictions);
  }

  /** Vacuum at the pump's inlet at a suction flow, m3/s, Pa. */
  vacuum(suctionFlow: number): number {
    return this.supply.ambientPressure - this.intake.pressure(suctionFlow);
  }

  /** Flow the suction line carries at a demand, m3/s: more than the demand when relief goes back to the tank. */
  suctionFlow(demand: number): number {
    const { pump } = this.supply;
    if (pump.kind !== "fixed" || pump.reliefTo === "inlet") return demand;
    return Math.max(demand, this.pumpedToTankRelief(pump));
  }

  /** All that gauges would read at a demand, m3/s. */
  state(demand: number): SupplyState {
    requireAtLeast("state", "demand", demand, 0, "m3/s");
    const { pump, ambientPressure } = this.supply;
    const suctionFlow = this.suctionFlow(demand);
    const inlet = this.intake.pressure(suctionFlow);
    const pumpRise = this.pumpRise(pump, demand, inlet, suctionFlow);
    // A pump that gets nothing gives nothing, whatever rise its relief valve would allow.
    const outlet = pumpRise === null || inlet === -Infinity ? inlet : inlet + pumpRise;
    const feed = pumpRise === null ? null : outlet - this.delivery.loss(demand) - ambientPressure;
    return {
      demand,
      suctionFlow,
      vacuum: ambientPressure - inlet,
      pumpRise,
      feedPressure: feed,
      relief: this.relieved(pump, demand, suctionFlow, pumpRise),
    };
  }

  /** The pressure part by part at a demand, m3/s. */
  descent(demand: number): SupplyDescent {
    const { suctionFlow, pumpRise } = this.state(demand);
    const intake = this.intake.descent(suctionFlow);
    const outlet = this.intake.pressure(suctionFlow) + (pumpRise ?? Number.NaN);
    const known = this.supply.delivery !== null && Number.isFinite(outlet);
    return { ...intake, delivery: known ? this.delivery.descent(demand, outlet) : [] };
  }

  /** Slip of a fixed pump per pressure rise under this fuel, m3/s per Pa. */
  slipPerRise(pump: FixedPump): number {
    if (!pump.slip) return 0;
    const dynamicViscosity = this.fuel.density * this.fuel.kinematicViscosity;
    return (pump.slip.flow / pump.slip.rise) * (pump.slip.dynamicViscosity / dynamicViscosity);
  }

  /** What a fixed pump moves with its relief open to the tank: the swept flow less the slip its rise causes. */
  private pumpedToTankRelief(pump: FixedPump): number {
    const slip = this.slipPerRise(pump);
    if (slip === 0 || this.intake.shut) return pump.flow;
    const outlet = this.supply.ambientPressure + pump.relief;
    // More flow, less inlet pressure, more rise, more slip: what is left falls as the flow assumed grows.
    const left = (flow: number) => pump.flow - slip * Math.max(0, outlet - this.intake.pressure(flow)) - flow;
    return lastHolding(left, pump.flow);
  }

  private pumpRise(pump: Pump, demand: number, inlet: number, suctionFlow: number): number | null {
    switch (pump.kind) {
      case "none":
        return 0;
      case "pulse":
        return null;
      case "curve":
        return riseOnCurve(pump.points, demand);
      case "fixed": {
        const slip = this.slipPerRise(pump);
        const open = pump.reliefTo === "inlet" ? pump.relief : this.supply.ambientPressure + pump.relief - inlet;
        if (suctionFlow > demand) return open;
        const spare = pump.flow - demand;
        if (spare < 0) return 0;
        return slip > 0 ? Math.min(open, spare / slip) : open;
      }
    }
  }

  private relieved(pump: Pump, demand: number, suctionFlow: number, pumpRise: number | null): number {
    if (pump.kind !== "fixed") return 0;
    if (pump.reliefTo === "tank") return suctionFlow - demand;
    return Math.max(0, pump.flow - this.slipPerRise(pump) * (pumpRise ?? 0) - demand);
  }
}

/** Rise of a pump curve, straight between its points, held before the first and after the last. */
export function riseOnCurve(points: readonly { readonly flow: number; readonly rise: number }[], flow: number): number {
  const after = points.findIndex((point) => point.flow >= flow);
  const right = points[after];
  const left = points[after - 1];
  if (!right) return points.at(-1)?.rise ?? 0;
  if (!left) return right.rise;
  return left.rise + ((right.rise - left.rise) * (flow - left.flow)) / (right.flow - left.flow);
}
