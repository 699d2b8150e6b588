import type { System } from "@thirstline/spec/system";
import type { CheckPoint } from "@thirstline/study";
import { partAt } from "../edit/lists.js";
import type { Chosen } from "../model/Place.js";
import { partsIn } from "../model/parts.js";
import { ratedSize } from "./ratedSize.js";
import type { SheetFilter } from "./Tried.js";

/** Filters of one kind of element, which are changed together. */
export type Alike = readonly SheetFilter[];

/** Filters with a size, by their kind of element, in the order the fuel meets them. */
function alikeFilters(system: System): Alike[] {
  const groups = new Map<string, SheetFilter[]>();
  for (const part of partsIn(system)) {
    if (part.part !== "filter" || ratedSize(part) === null) continue;
    const key = JSON.stringify([part.medium, part.betas, part.statedRating, part.capacityTest]);
    const group = groups.get(key) ?? [];
    group.push(part);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** The kind that is meant: of the filter that is chosen, else of the one that costs most. */
export function meantFilters(system: System, point: CheckPoint, chosen: Chosen | null): Alike | null {
  const groups = alikeFilters(system);
  const has = (name: string | undefined) => groups.find((group) => group.some((one) => one.name === name));
  if (chosen?.kind === "part") {
    const part = partAt(system, chosen.place);
    const inside = part?.part === "bank" ? part.branches.flat() : [part];
    const found = inside.map((one) => has(one?.name)).find((group) => group !== undefined);
    if (found) return found;
  }
  const costs = [...point.suction, ...point.delivery].filter(({ kind }) => kind === "filter");
  costs.sort((a, b) => (b.drop ?? 0) - (a.drop ?? 0));
  return costs.map(({ name }) => has(name)).find((group) => group !== undefined) ?? groups[0] ?? null;
}
