import { Run } from "../circuit/Run.js";
import type { FuelState } from "../fuel/index.js";
import type { Setting } from "../parts/law/index.js";
import { requireAtLeast } from "../require.js";
import { Delivery } from "./Delivery.js";
import { Intake } from "./Intake.js";
import { lastFlow } from "./lastFlow.js";
import type { FixedPump, Pump } from "./PumpKinds.js";
import { requireSupply } from "./requireSupply.js";
import type { Supply } from "./Supply.js";
import type { SupplyDescent, SupplyState } from "./SupplyState.js";

export type { SupplyDescent, SupplyState } from "./SupplyState.js";

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
  /** what a fixed pump moves with its relief open to the tank, m3/s; NaN until it is asked for with elements as they are */
  private pumped = Number.NaN;
  /** what a fixed pump that slips makes of the suction side; null for any other */
  private readonly slipping: Run | null;

  constructor(supply: Supply, setting: Setting) {
    requireSupply("SupplyModel", supply);
    this.supply = supply;
    this.fuel = setting.fuel;
    this.intake = new Intake(supply, setting);
    this.delivery = new Delivery(supply, setting);
    const { pump } = supply;
    const slip = pump.kind === "fixed" ? this.slipPerRise(pump) : 0;
    this.slipping = slip > 0 ? new Run(this.intake.terms, 1 / slip) : null;
  }

  /**
   * Sets the resistance over clean of the named filters, for whoever follows elements as they fill; the others go back to
   * their own. A filter that was plugged or shut when the model was made stays so.
   */
  restrict(restrictions: ReadonlyMap<string, number>): void {
    this.pumped = Number.NaN;
    this.intake.restrict(restrictions);
    this.delivery.restrict(restrictions);
    this.slipping?.refold(restrictions);
  }

  /** Vacuum at the pump's inlet at a suction flow, m3/s, Pa. */
  vacuum(suctionFlow: number): number {
    return this.supply.ambientPressure - this.intake.pressure(suctionFlow);
  }

  /** Flow the suction line carries at a demand, m3/s: more than the demand when relief goes back to the tank. */
  suctionFlow(demand: number): number {
    const { pump } = this.supply;
    if (pump.kind !== "fixed" || pump.reliefTo === "inlet") return demand;
    // It does not follow the demand, so it is searched for once.
    if (Number.isNaN(this.pumped)) this.pumped = this.pumpedToTankRelief(pump);
    return Math.max(demand, this.pumped);
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

  /**
   * What a fixed pump moves with its relief open to the tank: the swept flow less the slip its rise causes. Its slip is a
   * linear resistance in the suction line, which the swept flow's own slip pressure drives through: one inverse, no search
   * within a search.
   */
  pumpedToTankRelief(pump: FixedPump): number {
    if (!this.slipping || this.intake.shut) return pump.flow;
    const outlet = this.supply.ambientPressure + pump.relief;
    const driving = pump.flow / this.slipPerRise(pump) - outlet;
    return Math.min(pump.flow, lastFlow(this.slipping, driving));
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
