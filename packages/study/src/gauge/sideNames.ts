import type { System, SystemPart } from "@thirstline/spec/system";

/** Elements that are not shut, by side of the pump, in the order fuel meets them. */
export function sideNames(system: System): {
  readonly suction: readonly string[];
  readonly delivery: readonly string[];
} {
  return {
    suction: [...system.tanks.flatMap(({ path }) => named(path)), ...named(system.suction)],
    delivery: named(system.delivery ?? []),
  };
}

function named(parts: readonly SystemPart[]): string[] {
  return parts.flatMap((part) => {
    if (part.part === "bank") return part.branches.flatMap(named);
    return part.part === "filter" && !part.blocked ? [part.name] : [];
  });
}
