import { filtersAt, type SupplyModel } from "@thirstline/core";

/** The flow through every filter of a supply at a demand, m3/s, by the filter's name. */
export function filterFlows(model: SupplyModel, demand: number): ReadonlyMap<string, number> {
  return new Map(filtersAt(model, demand).map(({ part, flow }) => [part.name ?? "", flow]));
}
