import { InputError } from "../InputError.js";
import type { Solved } from "./solve.js";

/**
 * Drops at many flows, for a curve. It allocates nothing when `into` is given.
 *
 * @param solved from `solve`
 * @param flows m3/s
 * @param into takes the drops, Pa; as long as `flows`
 * @returns `into`, or a new array
 * @throws InputError when the lengths differ or a flow is not a finite number
 * @example
 * sweep(solved, Float64Array.of(0, 1e-5, 2e-5))
 */
export function sweep(solved: Solved, flows: Float64Array, into = new Float64Array(flows.length)): Float64Array {
  if (into.length !== flows.length) throw new InputError("sweep", "into", `${flows.length} long`, into.length);
  for (let at = 0; at < flows.length; at++) {
    if (!Number.isFinite(flows[at]))
      throw new InputError("sweep", `flows[${at}]`, "a finite number of m3/s", flows[at]);
  }
  solved.drops(flows, into);
  return into;
}
