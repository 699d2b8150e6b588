import { type Supply, SupplyModel, solve } from "@thirstline/core";
import type { Caution } from "../check/CheckAnswer.js";
import { filterFlows } from "../check/filterFlows.js";
import { partsOf } from "../check/partsOf.js";
import type { Due } from "./Due.js";

/** A word on every element that already shows its terminal drop, or more, as it is. */
export function pastDue(supply: Supply, { drops, fuel, demand }: Due): Caution[] {
  const flows = filterFlows(new SupplyModel(supply, { fuel, passage: "smooth", end: "middle" }), demand);
  return partsOf(supply).flatMap((part): Caution[] => {
    const terminalDrop = drops.get(part.name ?? "");
    if (part.kind !== "filter" || terminalDrop === undefined) return [];
    const drop = solve(part, fuel).drop(flows.get(part.name ?? "") ?? 0);
    return drop < terminalDrop || !Number.isFinite(drop)
      ? []
      : [{ code: "past terminal drop", part: part.name ?? "a filter", drop, terminalDrop }];
  });
}
