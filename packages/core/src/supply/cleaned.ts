import type { Circuit } from "../circuit/index.js";
import type { Supply } from "./Supply.js";

/** The same supply with every element clean; a plugged one is clean too, one that is shut off stays shut. */
export function cleaned(supply: Supply): Supply {
  return {
    ...supply,
    tanks: supply.tanks.map((tank) => ({ ...tank, path: tank.path && cleanedCircuit(tank.path) })),
    suction: cleanedCircuit(supply.suction),
    delivery: supply.delivery && cleanedCircuit(supply.delivery),
  };
}

/** The same circuit with every element clean. */
export function cleanedCircuit(circuit: Circuit): Circuit {
  switch (circuit.kind) {
    case "series":
      return { ...circuit, items: circuit.items.map(cleanedCircuit) };
    case "parallel":
      return { ...circuit, branches: circuit.branches.map(cleanedCircuit) };
    case "filter":
      return { ...circuit, restriction: 1 };
    default:
      return circuit;
  }
}
