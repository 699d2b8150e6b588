import { type BandEnd, type ProfileEntry, type SupplyModel, solve } from "@thirstline/core";

/** The flow through every named filter of a supply at a demand, m3/s, by the filter's name. */
export function filterFlows(model: SupplyModel, demand: number, end: BandEnd): ReadonlyMap<string, number> {
  const flows = new Map<string, number>();
  const add = (entry: ProfileEntry): void => {
    if (entry.kind === "bank") entry.branches.flat().forEach(add);
    else if (entry.part.kind === "filter") flows.set(entry.part.name ?? "", entry.flow);
  };
  const intake = model.intake.descent(model.suctionFlow(demand));
  const onTheWay = [...intake.tanks.flatMap(({ descent }) => descent), ...intake.suction];
  for (const { profile } of onTheWay) add(profile);
  // Not from the model's descent: that leaves the delivery side out where the pump's pressure is not stated.
  const { delivery } = model.supply;
  if (delivery) for (const entry of solve(delivery, model.fuel, { end }).profile(demand)) add(entry);
  return flows;
}
