import type { System, SystemFilter } from "@thirstline/spec/system";
import { mapParts, partsIn } from "../model/parts.js";
import type { SoilTargets } from "./SoilTargets.js";

/** The system with the filters soiled a share of the way from clean to due, 0 to 1 and beyond. */
export function soiledBy(system: System, share: number, targets: SoilTargets): System {
  const due = new Map(targets.due);
  return withSoil(system, ({ name }) => {
    const restriction = 1 + share * ((due.get(name) ?? 1) - 1);
    return restriction > 1 ? Number(restriction.toPrecision(9)) : undefined;
  });
}

/** How far the filters are on that way, by the one that is furthest; 0 where all are clean. */
export function soilShare(system: System, targets: SoilTargets): number {
  const due = new Map(targets.due);
  const shares = partsIn(system).flatMap((part) => {
    const target = part.part === "filter" ? (due.get(part.name) ?? 1) : 1;
    return part.part === "filter" && target > 1.005 ? [((part.restriction ?? 1) - 1) / (target - 1)] : [];
  });
  return Math.max(0, ...shares);
}

/** The system with each filter's resistance over clean as given; undefined for clean. */
export function withSoil(system: System, of: (filter: SystemFilter) => number | undefined): System {
  return mapParts(system, (part) => {
    if (part.part !== "filter") return part;
    const { restriction: _, ...clean } = part;
    const restriction = of(part);
    return restriction === undefined ? clean : { ...clean, restriction };
  });
}
