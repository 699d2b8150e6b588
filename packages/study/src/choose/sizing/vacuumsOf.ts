import { fuelState, SupplyModel, solve } from "@thirstline/core";
import { build, type CatalogueElement } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { supplyOf } from "../../check/supplyOf.js";
import { type Stack, withParts } from "./stack.js";

/** Vacuum at the pump's inlet by temperature, Pa, and what each stage adds to it. */
export interface Vacuums {
  /** without any stage */
  readonly base: Float64Array;
  /** with one stage more */
  readonly with: (before: Float64Array, element: number, count: number) => Float64Array;
}

/** The likely vacuum with clean elements, for ranking; what stands behind the pump adds nothing to it. */
export function vacuumsOf(
  stack: Stack,
  bore: number | null,
  temperatures: readonly number[],
  elements: readonly CatalogueElement[],
  counts: number,
): Vacuums {
  const built = build(withParts(stack, [], bore));
  const points = temperatures.map((temperature) => {
    const fuel = fuelState(built.fuel, { temperature });
    const model = new SupplyModel(supplyOf(built), { fuel, passage: "smooth", end: "middle" });
    const { suctionFlow, vacuum } = model.state(demandAt(built, fuel, null).total);
    return { fuel, flow: suctionFlow, vacuum };
  });
  const { delivery: _, ...rest } = stack.system;
  const drops = elements.map(({ filter }) => {
    const { suction } = build({ ...rest, suction: [filter] });
    const solved = points.map(({ fuel }) => solve(suction, fuel).drop);
    return Array.from({ length: counts }, (_, count) =>
      Float64Array.from(points, ({ flow }, at) => solved[at]?.(flow / (count + 1)) ?? Number.NaN),
    );
  });
  return {
    base: Float64Array.from(points, ({ vacuum }) => vacuum),
    with: (before, element, count) => {
      if (stack.side === "delivery") return before;
      const own = drops[element]?.[count - 1] as Float64Array;
      return before.map((vacuum, at) => vacuum + (own[at] as number));
    },
  };
}
