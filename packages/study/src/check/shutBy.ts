import type { Circuit, Supply } from "@thirstline/core";

/** What lets nothing pass at all: the vents, or a part by name; null when something can. */
export function shutBy(supply: Supply): string | null {
  const closed = supply.tanks.map((tank) =>
    tank.vent.kind === "blocked" ? "the tank vent" : tank.path && shutPart(tank.path),
  );
  const tanks = closed.every((by) => by !== null) ? (closed[0] ?? null) : null;
  return tanks ?? shutPart(supply.suction) ?? (supply.delivery && shutPart(supply.delivery));
}

/** The first part that shuts a circuit; a bank is shut only when every branch is. */
function shutPart(circuit: Circuit): string | null {
  switch (circuit.kind) {
    case "series":
      return circuit.items.reduce<string | null>((found, item) => found ?? shutPart(item), null);
    case "parallel": {
      const shut = circuit.branches.map(shutPart);
      return shut.every((by) => by !== null) ? shut.join(" and ") : null;
    }
    case "filter":
      return circuit.blocked || circuit.restriction === Infinity ? (circuit.name ?? "a filter") : null;
    default:
      return null;
  }
}
