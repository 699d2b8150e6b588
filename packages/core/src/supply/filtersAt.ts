import type { PartProfile } from "../circuit/index.js";
import { filterProfiles } from "./filterProfiles.js";
import type { SupplyModel } from "./SupplyModel.js";

/**
 * Every filter of a supply at a demand, m3/s, from the tanks on: its flow and its drop, none behind a pump whose
 * delivery is shut. Those behind the pump too where
 * its pressure is not stated, and a descent leaves them out: flows and drops do not hang on it.
 *
 * @example
 * filtersAt(model, 9.5e-5).map(({ part, drop }) => [part.name, drop])
 */
export function filtersAt(model: SupplyModel, demand: number): PartProfile[] {
  const { intake, delivery } = model;
  return filterProfiles({
    ...intake.descent(model.suctionFlow(demand)),
    delivery: delivery.shut ? [] : delivery.descent(demand, 0),
  });
}
