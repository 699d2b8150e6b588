import type { Circuit } from "./Circuit.js";

/** Whether any filter of a circuit is other than clean. */
export function isSoiled(circuit: Circuit): boolean {
  switch (circuit.kind) {
    case "series":
      return circuit.items.some(isSoiled);
    case "parallel":
      return circuit.branches.some(isSoiled);
    case "filter":
      return circuit.restriction !== 1;
    default:
      return false;
  }
}
