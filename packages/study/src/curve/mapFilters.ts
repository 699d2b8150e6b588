import type { Circuit, Filter, Supply } from "@thirstline/core";

/** The same supply with every filter put through a function. */
export function mapFilters(supply: Supply, change: (filter: Filter) => Filter): Supply {
  const changed = (circuit: Circuit): Circuit => {
    switch (circuit.kind) {
      case "series":
        return { ...circuit, items: circuit.items.map(changed) };
      case "parallel":
        return { ...circuit, branches: circuit.branches.map(changed) };
      case "filter":
        return change(circuit);
      default:
        return circuit;
    }
  };
  return {
    ...supply,
    tanks: supply.tanks.map((tank) => ({ ...tank, path: tank.path && changed(tank.path) })),
    suction: changed(supply.suction),
    delivery: supply.delivery && changed(supply.delivery),
  };
}
