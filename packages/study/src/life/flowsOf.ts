import { filterProfiles, type SupplyModel } from "@thirstline/core";

/** The flow through every filter at a demand, m3/s, by name. */
export function flowsOf(model: SupplyModel, demand: number): Map<string, number> {
  return new Map(filterProfiles(model.descent(demand)).map(({ part, flow }) => [part.name ?? "", flow]));
}
