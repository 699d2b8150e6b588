import type { System } from "@thirstline/spec/system";
import { quasiRandom } from "./quasiRandom.js";

/** Draws come in this many independently turned sets, whose disagreement tells the standard error. */
export const SETS = 10;

/**
 * A draw by its index: one number from 0 to 1 for each spread of the system. Spreads of one group share theirs, since
 * they are one unknown. Index i belongs to set i modulo `SETS`.
 */
export function drawsOf(system: System, seed: number): (index: number) => number[] {
  const spreads = system.spreads ?? [];
  const groups = [...new Set(spreads.map((spread, at) => spread.group ?? at))];
  const place = spreads.map((spread, at) => groups.indexOf(spread.group ?? at));
  const sets = Array.from({ length: SETS }, (_, set) => quasiRandom(seed * SETS + set, groups.length));
  return (index) => {
    const point = sets[index % SETS]?.(Math.floor(index / SETS)) ?? [];
    return place.map((at) => point[at] ?? 0.5);
  };
}
