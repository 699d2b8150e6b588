import type { FittingLoss } from "../parts/fitting.js";
import type { Circuit } from "./Circuit.js";

/** Whether something in the circuit resists flow; a rise alone does not, nor does a fitting without loss. */
export function hasFriction(circuit: Circuit): boolean {
  switch (circuit.kind) {
    case "rise":
      return false;
    case "fitting":
      return fittingResists(circuit.loss);
    case "series":
      return circuit.items.some(hasFriction);
    default:
      return true;
  }
}

function fittingResists(loss: FittingLoss): boolean {
  if (loss.by === "k") return loss.k > 0;
  return loss.by === "equivalent length" || loss.k1 > 0 || loss.kInfinity > 0;
}
