import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";

/** Where a part stands in a system, as a path into it. */
export type Path = readonly (string | number)[];

/** A part, and where it stands. */
export interface Placed<Part extends SystemPart = SystemPart> {
  readonly part: Part;
  readonly path: Path;
}

/** Every part of a system with its place, in the order the fuel meets them; those in banks too. */
export function placesOf(system: System): Placed[] {
  const inside = (parts: readonly SystemPart[], path: Path): Placed[] =>
    parts.flatMap((part, at): Placed[] => {
      const own = { part, path: [...path, at] };
      if (part.part !== "bank") return [own];
      return [own, ...part.branches.flatMap((branch, side) => inside(branch, [...path, at, "branches", side]))];
    });
  return [
    ...system.tanks.flatMap((tank, at) => inside(tank.path, ["tanks", at, "path"])),
    ...inside(system.suction, ["suction"]),
    ...inside(system.delivery ?? [], ["delivery"]),
  ];
}

/** Every filter with its place. */
export function filterPlaces(system: System): Placed<SystemFilter>[] {
  return placesOf(system).filter((one): one is Placed<SystemFilter> => one.part.part === "filter");
}

/** Whether a path leads into a place. */
export function isInside(path: Path, place: Path): boolean {
  return place.length <= path.length && place.every((step, at) => step === path[at]);
}
