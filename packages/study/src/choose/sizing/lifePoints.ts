import { type FuelState, fuelState, type LimitName, marginsOf, SupplyModel } from "@thirstline/core";
import { build } from "@thirstline/spec/system";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { dutyOf } from "../../life/dutyOf.js";
import { freeDrop } from "./freeDrop.js";
import { headOf } from "./headOf.js";
import { type Stack, withParts } from "./stack.js";

/** What is free for drops before a limit, Pa, and the flow through the stack when all of it is taken, m3/s. */
interface Room {
  readonly free: number;
  readonly flow: number;
  readonly ofSuction: boolean;
  readonly ofDelivery: boolean;
}

/** A duty point. */
export interface LifePoint {
  readonly fuel: FuelState;
  /** m3/s behind the pump */
  readonly demand: number;
  readonly rooms: readonly Room[];
  /** m3/s through the stack: with none in the way, and the least before a limit is met */
  readonly most: number;
  readonly least: number;
}

/** The duty points of a stack with lines of a bore. */
export function lifePoints(stack: Stack, bore: number | null): LifePoint[] {
  const duty = dutyOf(stack.system, build(withParts(stack, [], bore)));
  return (duty?.points ?? []).map(({ temperature, demand }) => pointAt(stack, bore, temperature, demand));
}

function pointAt(stack: Stack, bore: number | null, temperature: number, demand: number): LifePoint {
  const plain = build(withParts(stack, [], bore));
  const fuel = fuelState(plain.fuel, { temperature });
  const { limits } = limitsOf(plain);
  const modelWith = (suction: number, delivery: number) => {
    const system = withParts(stack, suction === 0 ? [] : [headOf(suction, fuel)], bore);
    const behind = delivery === 0 ? {} : { delivery: [...(system.delivery ?? []), headOf(delivery, fuel)] };
    return new SupplyModel(supplyOf(build({ ...system, ...behind })), { fuel, passage: "early", end: "middle" });
  };
  const first = modelWith(0, 0);
  const names = [...marginsOf(first, limits).keys()].filter((name) => name !== "vacuum clean");
  const margin = (name: LimitName, suction: number, delivery: number) =>
    marginsOf(modelWith(suction, delivery), limits).get(name)?.(demand) ?? Infinity;
  const rooms = names.map((name): Room => {
    // Which side a limit feels: found by trying a drop large enough to move any of them.
    const ofSuction = margin(name, 1e8, 0) !== margin(name, 0, 0);
    const ofDelivery = stack.system.delivery !== undefined && margin(name, 0, 1e8) !== margin(name, 0, 0);
    const free = freeDrop((drop) => (ofSuction ? margin(name, drop, 0) : margin(name, 0, ofDelivery ? drop : 0)));
    // What the pump can move is asked at the demand, not at what it happens to move.
    const flow =
      name === "pump capacity"
        ? demand
        : modelWith(ofSuction && Number.isFinite(free) ? free : 0, 0).suctionFlow(demand);
    return { free, flow, ofSuction, ofDelivery };
  });
  const most = first.suctionFlow(demand);
  const bounding = rooms.filter(({ ofSuction, free }) => ofSuction && free >= 0);
  const least = Math.min(
    most,
    Math.max(demand, ...bounding.filter(({ free }) => free < Infinity).map(({ flow }) => flow)),
  );
  return { fuel, demand, rooms, most, least };
}
