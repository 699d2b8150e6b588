import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";

/** Every filter of a system in the order the fuel meets them. */
export function filtersOf(system: System): SystemFilter[] {
  const inside = (parts: readonly SystemPart[]): SystemFilter[] =>
    parts.flatMap((part): SystemFilter[] => {
      if (part.part === "filter") return [part];
      return part.part === "bank" ? part.branches.flatMap(inside) : [];
    });
  return [...system.tanks.map((tank) => tank.path), system.suction, system.delivery ?? []].flatMap(inside);
}
