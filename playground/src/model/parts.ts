import type { System, SystemPart } from "@thirstline/spec/system";

/** Every part of a system in the order the fuel meets it; banks by what is in them. */
export function partsIn(system: System): SystemPart[] {
  const inside = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.flatMap((part) => (part.part === "bank" ? part.branches.flatMap(inside) : [part]));
  return [
    ...system.tanks.flatMap(({ path }) => inside(path)),
    ...inside(system.suction),
    ...inside(system.delivery ?? []),
  ];
}

/** A system with every part put through a change; banks keep their form. */
export function mapParts(system: System, change: (part: SystemPart) => SystemPart): System {
  const all = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.map((part) => (part.part === "bank" ? { ...part, branches: part.branches.map(all) } : change(part)));
  return {
    ...system,
    tanks: system.tanks.map((tank) => ({ ...tank, path: all(tank.path) })),
    suction: all(system.suction),
    ...(system.delivery === undefined ? {} : { delivery: all(system.delivery) }),
  };
}
