import { type BandEnd, cleaned, type Filter, type Supply, SupplyModel, solve } from "@thirstline/core";
import { filterFlows } from "../check/filterFlows.js";
import type { Due } from "./Due.js";
import { mapFilters } from "./mapFilters.js";

/**
 * The supply with every element that has a stated terminal drop soiled until it shows it; the others as they are.
 *
 * The flow an element shows it at is its own at the demand with all elements clean. Soil multiplies the linear term of
 * the medium only, so the restriction follows in closed form; at every end of a band the drop is the one stated, since
 * that is what the gauge reads whatever the clean element cost. One that costs more than its terminal drop when clean, or
 * carries no flow, stays clean.
 */
export function dueSupply(supply: Supply, due: Due, end: BandEnd): Supply {
  const { drops, fuel, demand } = due;
  const flows = filterFlows(new SupplyModel(cleaned(supply), { fuel, passage: "smooth", end }), demand);
  return mapFilters(supply, (filter) => {
    const drop = drops.get(filter.name ?? "");
    const flow = Math.abs(flows.get(filter.name ?? "") ?? 0);
    return drop === undefined ? filter : { ...filter, restriction: restrictionAt({ drop, flow }, filter, due, end) };
  });
}

function restrictionAt(
  { drop, flow }: { readonly drop: number; readonly flow: number },
  filter: Filter,
  { fuel }: Due,
  end: BandEnd,
): number {
  if (flow === 0 || filter.blocked) return 1;
  const clean = solve({ ...filter, restriction: 1 }, fuel, { end }).drop(flow);
  const perRestriction = fuel.density * fuel.kinematicViscosity * filter.medium.linear[end] * flow;
  return Math.max(1, 1 + (drop - clean) / perRestriction);
}
