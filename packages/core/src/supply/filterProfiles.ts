import type { PartProfile } from "../circuit/index.js";
import type { DescentEntry } from "./descent.js";
import type { SupplyDescent } from "./SupplyModel.js";

/** Every filter of a descent, banks included, from the tanks on: its flow and its drop. */
export function filterProfiles({ tanks, suction, delivery }: SupplyDescent): PartProfile[] {
  return [...tanks.map((tank) => tank.descent), suction, delivery].flatMap(filtersOn);
}

function filtersOn(entries: readonly DescentEntry[]): PartProfile[] {
  return entries.flatMap((entry): PartProfile[] => {
    if (entry.kind === "bank") return entry.branches.flatMap(filtersOn);
    return entry.profile.part.kind === "filter" ? [entry.profile] : [];
  });
}
