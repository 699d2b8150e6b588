import type { Circuit, Part, Supply } from "@thirstline/core";

/** Every part of a supply, tanks' paths first, in the order the fuel meets them. */
export function partsOf(supply: Supply): Part[] {
  const paths = [...supply.tanks.map(({ path }) => path), supply.suction, supply.delivery];
  return paths.flatMap((path) => (path === null ? [] : partsIn(path)));
}

function partsIn(circuit: Circuit): Part[] {
  switch (circuit.kind) {
    case "series":
      return circuit.items.flatMap(partsIn);
    case "parallel":
      return circuit.branches.flatMap(partsIn);
    default:
      return [circuit];
  }
}
