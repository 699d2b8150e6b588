import type { LifeSpread } from "../life/LifeAnswer.js";
import { chanceOf } from "./chanceOf.js";
import { quantilesOf } from "./quantilesOf.js";

/**
 * The 10, 50 and 90 % lives of many draws, and the chance of meeting a limit before an interval.
 *
 * @param lives s, in order of index; draws that made no system are left out and counted
 * @param interval s, usual and at most; null when none is stated, and then the chance is 0
 */
export function spreadOf(
  lives: Float64Array,
  interval: { readonly time: number; readonly atMost: number } | null,
): LifeSpread {
  const known = lives.filter((life) => !Number.isNaN(life));
  const before = (time: number) => chanceOf(lives, (life) => life < time);
  const atMost = interval && interval.atMost > interval.time ? before(interval.atMost) : null;
  return {
    ...quantilesOf(lives),
    ...(interval ? before(interval.time) : { chance: 0, chanceError: 0 }),
    atMost,
    draws: known.length,
  };
}
