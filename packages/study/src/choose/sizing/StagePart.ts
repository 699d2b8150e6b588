import { type Filter, type FuelState, solve } from "@thirstline/core";
import { build, type CatalogueElement } from "@thirstline/spec/system";
import type { Stack } from "./stack.js";

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
