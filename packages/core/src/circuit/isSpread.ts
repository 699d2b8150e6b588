import { isSpread as bandIsSpread } from "../parts/Band.js";
import type { Circuit } from "./Circuit.js";

/** Whether any part of a circuit is known only as a band: an estimated medium, or a strainer. */
export function isSpread(circuit: Circuit): boolean {
  switch (circuit.kind) {
    case "series":
      return circuit.items.some(isSpread);
    case "parallel":
      return circuit.branches.some(isSpread);
    case "filter":
      return bandIsSpread(circuit.medium.linear);
    default:
      return circuit.kind === "strainer";
  }
}
