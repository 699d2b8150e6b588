import {
  type BandEnd,
  type FuelState,
  fuelState,
  LEAST_IN_HAND,
  type LimitName,
  marginsOf,
  SupplyModel,
} from "@thirstline/core";
import { build, type SystemPart } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { freeDrop } from "./freeDrop.js";
import { type Stack, withParts } from "./stack.js";

/** One flow through the stack under one fuel state, and what is free there for drops before each limit. */
export interface Condition {
  readonly temperature: number;
  readonly fuel: FuelState;
  readonly end: BandEnd;
  /** m3/s */
  readonly flow: number;
  /** Pa */
  readonly free: ReadonlyMap<LimitName, number>;
}

/** Free fall, m/s2, as core's rises take it. */
const FREE_FALL = 9.80665;

/** The conditions of one temperature: at the demand for the clean limit, and with 20 % more for all others. */
export function conditionsAt(stack: Stack, bore: number | null, temperature: number, end: BandEnd): Condition[] {
  const plain = build(withParts(stack, [], bore));
  const fuel = fuelState(plain.fuel, { temperature });
  const demand = demandAt(plain, fuel, null).total;
  const { limits } = limitsOf(plain);
  const more = 1 + LEAST_IN_HAND;
  const models = new Map<number, readonly SupplyModel[]>();
  const modelsAt = (drop: number) => {
    const known = models.get(drop);
    if (known) return known;
    const head: SystemPart = { part: "rise", name: "room", height: drop / (fuel.density * FREE_FALL) };
    const supply = supplyOf(build(withParts(stack, drop === 0 ? [] : [head], bore)));
    const made = (["smooth", "early"] as const).map((passage) => new SupplyModel(supply, { fuel, passage, end }));
    models.set(drop, made);
    return made;
  };
  const [first] = modelsAt(0) as readonly [SupplyModel];
  const { pump } = first.supply;
  const moved = pump.kind === "fixed" && pump.reliefTo === "tank" ? first.suctionFlow(0) : 0;
  const atDemand = Math.max(moved, demand);
  const withMore = Math.max(more * moved, more * demand);
  const room = (name: LimitName, margin: (model: SupplyModel) => number): [LimitName, number] => [
    name,
    freeDrop((drop) => Math.min(...modelsAt(drop).map(margin))),
  ];
  const names = [...marginsOf(first, limits).keys()];
  const others = names.filter((name) => name !== "vacuum clean");
  const marginOf = (name: LimitName) => (model: SupplyModel) => {
    // What the suction line carries is the pump's own flow where relief goes to the tank, and that is what must grow.
    if (name === "vacuum at change") return (limits.vacuumAtChange ?? Infinity) - model.vacuum(withMore);
    if (name === "vapour") return model.intake.lowest(withMore) - fuel.vapourPressure;
    return marginsOf(model, limits).get(name)?.(more * demand) ?? Infinity;
  };
  const onSuction = stack.side === "suction";
  const clean = names.includes("vacuum clean")
    ? [room("vacuum clean", (model) => (limits.vacuumClean ?? Infinity) - model.vacuum(atDemand))]
    : [];
  const suction = others.filter((name) => name === "vacuum at change" || name === "vapour");
  const rest = others.filter((name) => name !== "vacuum at change" && name !== "vapour");
  const common = { temperature, fuel, end };
  return [
    { ...common, flow: onSuction ? atDemand : demand, free: new Map(clean) },
    {
      ...common,
      flow: onSuction ? withMore : more * demand,
      free: new Map(suction.map((name) => room(name, marginOf(name)))),
    },
    { ...common, flow: more * demand, free: new Map(rest.map((name) => room(name, marginOf(name)))) },
  ].filter(({ free }) => free.size > 0);
}
