import type { DescentEntry, SupplyModel } from "@thirstline/core";

/** The flow through every filter at a demand, m3/s, by name. */
export function flowsOf(model: SupplyModel, demand: number): Map<string, number> {
  const flows = new Map<string, number>();
  const visit = (entries: readonly DescentEntry[]) => {
    for (const entry of entries) {
      if (entry.kind === "bank") entry.branches.forEach(visit);
      else if (entry.profile.part.kind === "filter") flows.set(entry.profile.part.name ?? "", entry.profile.flow);
    }
  };
  const { tanks, suction, delivery } = model.descent(demand);
  for (const tank of tanks) visit(tank.descent);
  visit(suction);
  visit(delivery);
  return flows;
}
