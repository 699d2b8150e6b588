import { type BandEnd, type FixedPump, type FuelState, fuelState, type LimitName, SupplyModel } from "@thirstline/core";
import { build } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { type Fits, fits, freeDrop } from "./freeDrop.js";
import { headOf } from "./headOf.js";
import { type Stack, withParts } from "./stack.js";

/** A drop in Pa of linear Q + quadratic Q², Q in m3/s. */
export interface Pumped {
  readonly linear: number;
  readonly quadratic: number;
}

/** Flows between none and the pump's swept flow at which the path without a stack is worked out beforehand. */
const STEPS = 128;

/** How closely a flow is found, as a share of the swept flow. */
const CLOSE = 1e-13;

/**
 * What a pump that slips and relieves to the tank moves through a stack, and whether a suction limit holds then. Its flow is
 * first closed in between two of a row of flows, where sums and tables are enough; only where a limit comes to lie between
 * those two is it found closely.
 */
export class PumpedFlow {
  readonly fuel: FuelState;
  readonly limits: readonly LimitName[];
  private readonly pump: FixedPump;
  private readonly demand: number;
  private readonly slip: number;
  private readonly model: SupplyModel;
  /** drop at which the pump moves each flow of the row, Pa */
  private readonly needed: Float64Array;
  private readonly rooms = new Map<string, number>();
  private readonly roomAt: (limit: LimitName, flow: number) => number;

  private constructor(model: SupplyModel, demand: number, roomAt: PumpedFlow["roomAt"], limits: readonly LimitName[]) {
    this.fuel = model.fuel;
    this.model = model;
    this.pump = model.supply.pump as FixedPump;
    this.demand = demand;
    this.slip = model.slipPerRise(this.pump);
    this.needed = Float64Array.from({ length: STEPS + 1 }, (_, step) => this.neededFor(this.flowAt(step)));
    this.roomAt = roomAt;
    this.limits = limits;
  }

  static of(
    stack: Stack,
    bore: number | null,
    given: { readonly temperature: number; readonly end: BandEnd; readonly passage: "smooth" | "early" },
  ): PumpedFlow {
    const plain = build(withParts(stack, [], bore));
    const fuel = fuelState(plain.fuel, { temperature: given.temperature });
    const setting = { fuel, passage: given.passage, end: given.end };
    const model = new SupplyModel(supplyOf(plain), setting);
    const { vacuumClean, vacuumAtChange } = limitsOf(plain).limits;
    const models = new Map<number, SupplyModel>();
    const withHead = (drop: number): SupplyModel => {
      const parts = drop === 0 ? [] : [headOf(drop, fuel)];
      const known = models.get(drop) ?? new SupplyModel(supplyOf(build(withParts(stack, parts, bore))), setting);
      models.set(drop, known);
      return known;
    };
    const roomAt = (limit: LimitName, flow: number): number => {
      if (limit === "vapour") {
        const room = freeDrop((drop) => withHead(drop).intake.lowest(flow) - fuel.vapourPressure);
        models.clear();
        return room;
      }
      return ((limit === "vacuum clean" ? vacuumClean : vacuumAtChange) ?? Infinity) - model.vacuum(flow);
    };
    const limits: LimitName[] = [
      ...(vacuumClean === undefined ? [] : ["vacuum clean" as const]),
      ...(vacuumAtChange === undefined ? [] : ["vacuum at change" as const]),
      "vapour",
    ];
    return new PumpedFlow(model, demandAt(plain, fuel, null).total, roomAt, limits);
  }

  /**
   * Whether a limit holds with a drop in the stack.
   *
   * @param times what the suction line's flow is taken by: 1.2 for 20 % in hand
   */
  fits(limit: LimitName, drop: Pumped, times: number): Fits {
    const step = this.stepOf(drop);
    const at = (flow: number) => times * Math.max(flow, this.demand);
    const [low, high] = [at(step < 0 ? 0 : this.flowAt(step)), at(this.flowAt(Math.min(step + 1, STEPS)))];
    if (fits(dropAt(drop, high), this.room(limit, high)) === "yes") return "yes";
    if (fits(dropAt(drop, low), this.room(limit, low)) === "no") return "no";
    const flow = at(this.flowWith(drop, step));
    return fits(dropAt(drop, flow), this.roomAt(limit, flow));
  }

  /** Vacuum at the pump's inlet with a drop in the stack, Pa. */
  vacuum(drop: Pumped): number {
    const flow = Math.max(this.demand, this.flowWith(drop, this.stepOf(drop)));
    return this.model.vacuum(flow) + dropAt(drop, flow);
  }

  private flowAt(step: number): number {
    return (this.pump.flow * step) / STEPS;
  }

  /** The drop in the stack at which the pump moves just this flow; it falls with the flow. */
  private neededFor(flow: number): number {
    const { pump, slip, model } = this;
    const outlet = model.supply.ambientPressure + pump.relief;
    return (pump.flow - flow) / slip - outlet + model.intake.pressure(flow);
  }

  /** The last flow of the row that the pump moves through a drop; -1 where it moves none. */
  private stepOf(drop: Pumped): number {
    let [moved, not] = [-1, STEPS + 1];
    while (not - moved > 1) {
      const step = (moved + not) >> 1;
      if (dropAt(drop, this.flowAt(step)) <= (this.needed[step] as number)) moved = step;
      else not = step;
    }
    return moved;
  }

  private flowWith(drop: Pumped, step: number): number {
    if (step < 0 || step >= STEPS) return step < 0 ? 0 : this.pump.flow;
    let [low, high] = [this.flowAt(step), this.flowAt(step + 1)];
    while (high - low > CLOSE * this.pump.flow) {
      const middle = (low + high) / 2;
      if (dropAt(drop, middle) <= this.neededFor(middle)) low = middle;
      else high = middle;
    }
    return low;
  }

  private room(limit: LimitName, flow: number): number {
    const key = `${limit} ${flow}`;
    const known = this.rooms.get(key) ?? this.roomAt(limit, flow);
    this.rooms.set(key, known);
    return known;
  }
}

function dropAt({ linear, quadratic }: Pumped, flow: number): number {
  return (linear + quadratic * flow) * flow;
}
