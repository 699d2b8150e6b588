import type { System, SystemFilter } from "@thirstline/spec/system";
import { mapParts, partsIn } from "../../model/parts.js";

/** A system with its filters changed; those that are not named stay as they are. Its spreads go: middle figures are meant. */
export function withFilters(
  system: System,
  names: readonly string[],
  change: (filter: SystemFilter) => SystemFilter,
): System {
  const { spreads: _, ...rest } = mapParts(system, (part) =>
    part.part === "filter" && names.includes(part.name) ? change(part) : part,
  );
  return rest;
}

/** A filter whose clean medium costs so many times what it does, as on its flow test. */
export function costing(filter: SystemFilter, factor: number): SystemFilter {
  const { medium } = filter;
  if (medium.by !== "flow test") throw new Error(`${filter.name} has no flow test`);
  const points = medium.points.map((point) => ({ ...point, drop: point.drop * factor }));
  return { ...filter, medium: { ...medium, points } };
}

/** The filter of a system with a name. */
export function filterOf(system: System, name: string): SystemFilter {
  const found = partsIn(system).find((part): part is SystemFilter => part.part === "filter" && part.name === name);
  if (found === undefined) throw new Error(`${system.name} has no filter called ${name}`);
  return found;
}
