import type { Circuit } from "./Circuit.js";

/**
 * How far a circuit climbs from end to end, m. In a bank every branch climbs as far, so the first one tells.
 */
export function netRise(circuit: Circuit): number {
  switch (circuit.kind) {
    case "rise":
      return circuit.height;
    case "series":
      return circuit.items.reduce((sum, item) => sum + netRise(item), 0);
    case "parallel":
      return circuit.branches[0] ? netRise(circuit.branches[0]) : 0;
    default:
      return 0;
  }
}
