import {
  type Filter,
  type FuelState,
  fuelState,
  type LimitName,
  marginsOf,
  resistanceRatio,
  SupplyModel,
  solve,
} from "@thirstline/core";
import { build, type CatalogueElement, type SystemPart } from "@thirstline/spec/system";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { dutyOf } from "../../life/dutyOf.js";
import { type Fits, fits, freeDrop } from "./freeDrop.js";
import { type OrderFacts, resistances } from "./OrderFacts.js";
import { type Stack, stageName, withParts } from "./stack.js";

/** A duty point, and what is free there for drops on either side of the pump. */
interface Point {
  readonly fuel: FuelState;
  /** m3/s through the stack, and behind the pump */
  readonly flow: number;
  readonly demand: number;
  readonly rooms: readonly { readonly free: number; readonly ofSuction: boolean; readonly ofDelivery: boolean }[];
}

const FREE_FALL = 9.80665;

/**
 * Whether an arrangement lasts an interval, by sums: at its end each element has caught what its order says, so its drop is
 * known, and margins only shrink on the way there. Exact, save within a hundredth of a Pa of a limit. Only where
 * `isAdditive` says that sums are enough.
 */
export class LifeGate {
  private readonly points: readonly Point[];
  private readonly others: ReadonlyMap<string, number>;

  constructor(stack: Stack, bore: number | null) {
    const plain = build(withParts(stack, [], bore));
    const duty = dutyOf(stack.system, plain);
    this.others = resistances(stack.system);
    this.points = (duty?.points ?? []).map(({ temperature, demand }) => pointAt(stack, bore, temperature, demand));
  }

  /** @param stages elements and counts, from the tank on */
  judge(
    stages: readonly { readonly element: CatalogueElement; readonly count: number; readonly part: StagePart }[],
    facts: OrderFacts,
  ): Fits {
    let worst: Fits = "yes";
    for (const { fuel, flow, demand, rooms } of this.points) {
      let onSuction = 0;
      const dynamicViscosity = fuel.density * fuel.kinematicViscosity;
      for (const [at, { element, count, part }] of stages.entries()) {
        const followed = facts.elements.get(stageName(at + 1, 1));
        const soil = (facts.soil?.[at] ?? 0) / count;
        const ratio = followed?.law ? resistanceRatio(followed.law, soil) : 1;
        const clean = part.drop(fuel, flow / count);
        const drop = clean + (ratio - 1) * part.resistance * dynamicViscosity * (flow / count);
        onSuction += drop;
        const { terminalDrop } = element.filter;
        if (terminalDrop !== undefined) worst = worseOf(worst, fits(drop, terminalDrop));
      }
      let grown = 0;
      for (const [name, resistance] of this.others) {
        const followed = facts.elements.get(name);
        const before = followed?.law ? resistanceRatio(followed.law, followed.soil) : 1;
        const ratio = followed?.law ? resistanceRatio(followed.law, facts.others.get(name) ?? 0) : 1;
        grown += (ratio - before) * resistance * dynamicViscosity * demand;
      }
      for (const { free, ofSuction, ofDelivery } of rooms) {
        worst = worseOf(worst, fits((ofSuction ? onSuction : 0) + (ofDelivery ? grown : 0), free));
      }
      if (worst === "no") return worst;
    }
    return worst;
  }
}

/** What one element of a stage costs. */
export interface StagePart {
  readonly filter: Filter;
  /** of the medium, 1/m3 */
  readonly resistance: number;
  /** clean, Pa, at a flow, m3/s */
  readonly drop: (fuel: FuelState, flow: number) => number;
}

/** An element as `LifeGate` reckons with it. */
export function stagePartOf({ system }: Stack, { filter }: CatalogueElement): StagePart {
  const { delivery: _, ...rest } = system;
  const { suction } = build({ ...rest, suction: [filter] });
  const part = suction.kind === "series" ? suction.items[0] : suction;
  const drops = new Map<FuelState, (flow: number) => number>();
  return {
    filter: part as Filter,
    resistance: (part as Filter).medium.linear.middle,
    drop: (fuel, flow) => {
      const known = drops.get(fuel) ?? solve(suction, fuel).drop;
      drops.set(fuel, known);
      return known(flow);
    },
  };
}

function worseOf(one: Fits, other: Fits): Fits {
  return one === "no" || other === "no" ? "no" : one === "too close" ? one : other;
}

function pointAt(stack: Stack, bore: number | null, temperature: number, demand: number): Point {
  const plain = build(withParts(stack, [], bore));
  const fuel = fuelState(plain.fuel, { temperature });
  const { limits } = limitsOf(plain);
  const modelWith = (suction: number, delivery: number) => {
    const system = withParts(stack, suction === 0 ? [] : [head(suction, fuel)], bore);
    const behind = delivery === 0 ? {} : { delivery: [...(system.delivery ?? []), head(delivery, fuel)] };
    return new SupplyModel(supplyOf(build({ ...system, ...behind })), { fuel, passage: "early", end: "middle" });
  };
  const first = modelWith(0, 0);
  const names = [...marginsOf(first, limits).keys()].filter((name) => name !== "vacuum clean");
  const margin = (name: LimitName, suction: number, delivery: number) =>
    marginsOf(modelWith(suction, delivery), limits).get(name)?.(demand) ?? Infinity;
  const rooms = names.map((name) => {
    // Which side a limit feels: found by trying a drop large enough to move any of them.
    const ofSuction = margin(name, 1e8, 0) !== margin(name, 0, 0);
    const ofDelivery = stack.system.delivery !== undefined && margin(name, 0, 1e8) !== margin(name, 0, 0);
    return {
      free: freeDrop((drop) => (ofSuction ? margin(name, drop, 0) : margin(name, 0, ofDelivery ? drop : 0))),
      ofSuction,
      ofDelivery,
    };
  });
  return { fuel, flow: first.suctionFlow(demand), demand, rooms };
}

function head(drop: number, fuel: FuelState): SystemPart {
  return { part: "rise", name: "room", height: drop / (fuel.density * FREE_FALL) };
}
