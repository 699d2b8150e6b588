import {
  type BandEnd,
  type FuelState,
  fuelState,
  LEAST_IN_HAND,
  type LimitName,
  marginsOf,
  SupplyModel,
} from "@thirstline/core";
import { build } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { freeDrop } from "./freeDrop.js";
import { headOf } from "./headOf.js";
import { slipsToTank } from "./OrderFacts.js";
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

/**
 * The conditions of one temperature: at the demand for the clean limit, and with 20 % more for all others. Where the suction
 * line's flow hangs on the stack itself, only those that do not feel it: `SlipGate` has the others.
 */
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
    const parts = drop === 0 ? [] : [headOf(drop, fuel)];
    const supply = supplyOf(build(withParts(stack, parts, bore)));
    const made = (["smooth", "early"] as const).map((passage) => new SupplyModel(supply, { fuel, passage, end }));
    models.set(drop, made);
    return made;
  };
  const [first] = modelsAt(0) as readonly [SupplyModel];
  // With slip, what the pump moves hangs on how the passage to turbulence is read.
  const carried = (model: SupplyModel) => model.suctionFlow(demand);
  const room = (name: LimitName, margin: (model: SupplyModel) => number): [LimitName, number] => [
    name,
    freeDrop((drop) => Math.min(...modelsAt(drop).map(margin))),
  ];
  const names = [...marginsOf(first, limits).keys()];
  const others = names.filter((name) => name !== "vacuum clean");
  const marginOf = (name: LimitName) => (model: SupplyModel) => {
    // What the suction line carries is the pump's own flow where relief goes to the tank, and that is what must grow.
    if (name === "vacuum at change") return (limits.vacuumAtChange ?? Infinity) - model.vacuum(more * carried(model));
    if (name === "vapour") return model.intake.lowest(more * carried(model)) - fuel.vapourPressure;
    return marginsOf(model, limits).get(name)?.(more * demand) ?? Infinity;
  };
  const onSuction = stack.side === "suction";
  const apart = onSuction && slipsToTank(stack.system);
  const clean =
    names.includes("vacuum clean") && !apart
      ? [room("vacuum clean", (model) => (limits.vacuumClean ?? Infinity) - model.vacuum(carried(model)))]
      : [];
  const ofSuction = others.filter((name) => name === "vacuum at change" || name === "vapour");
  const suction = apart ? [] : ofSuction;
  const rest = others.filter((name) => name !== "vacuum at change" && name !== "vapour");
  const common = { temperature, fuel, end };
  return [
    { ...common, flow: onSuction ? carried(first) : demand, free: new Map(clean) },
    {
      ...common,
      flow: more * (onSuction ? carried(first) : demand),
      free: new Map(suction.map((name) => room(name, marginOf(name)))),
    },
    { ...common, flow: more * demand, free: new Map(rest.map((name) => room(name, marginOf(name)))) },
  ].filter(({ free }) => free.size > 0);
}
