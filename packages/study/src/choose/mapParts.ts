import type { System, SystemPart } from "@thirstline/spec/system";

/**
 * The same system with every part put through a function, from the innermost out: it hands back a part, several in a row,
 * or none. Its spreads are left out: they belong to places that may have moved.
 */
export function mapParts(
  system: System,
  change: (part: SystemPart) => SystemPart | readonly SystemPart[],
  side: "suction" | "delivery" | "everywhere" = "everywhere",
): System {
  const through = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.flatMap((part) => {
      const own = part.part === "bank" ? { ...part, branches: part.branches.map(through) } : part;
      return change(own);
    });
  const { spreads: _, ...rest } = system;
  return {
    ...rest,
    ...(side === "delivery"
      ? {}
      : {
          tanks: system.tanks.map((tank) => ({ ...tank, path: through(tank.path) })),
          suction: through(system.suction),
        }),
    ...(system.delivery === undefined || side === "suction" ? {} : { delivery: through(system.delivery) }),
  };
}
