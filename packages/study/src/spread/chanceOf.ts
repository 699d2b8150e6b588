import { SETS } from "./drawsOf.js";

/**
 * How likely something is, from draws in order of their index, and the standard error of that: how far the independently
 * turned sets of draws disagree. Draws that are NaN are left out.
 */
export function chanceOf(
  draws: Float64Array,
  is: (draw: number) => boolean,
): { readonly chance: number; readonly chanceError: number } {
  const chances = Array.from({ length: SETS }, (_, set) => {
    const own = draws.filter((draw, at) => at % SETS === set && !Number.isNaN(draw));
    return { share: own.reduce((sum, draw) => sum + (is(draw) ? 1 : 0), 0) / own.length, size: own.length };
  }).filter(({ size }) => size > 0);
  const chance = chances.reduce((sum, one) => sum + one.share, 0) / Math.max(1, chances.length);
  const variance = chances.reduce((sum, one) => sum + (one.share - chance) ** 2, 0) / Math.max(1, chances.length - 1);
  return { chance, chanceError: Math.sqrt(variance / Math.max(1, chances.length)) };
}
