import { quasiRandom } from "./quasiRandom.js";

/** Draws come in this many independently turned sets, whose disagreement tells the standard error. */
export const SETS = 10;

/**
 * A draw by its index: `count` numbers from 0 to 1. Index i belongs to set i modulo `SETS`.
 *
 * @param seed of the whole; the same seed gives the same draws to the bit
 */
export function drawsOf(count: number, seed: number): (index: number) => number[] {
  const sets = Array.from({ length: SETS }, (_, set) => quasiRandom(seed * SETS + set, count));
  return (index) => sets[index % SETS]?.(Math.floor(index / SETS)) ?? [];
}
