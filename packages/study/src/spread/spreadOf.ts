import type { LifeSpread } from "../life/LifeAnswer.js";
import { SETS } from "./drawsOf.js";

/**
 * The 10, 50 and 90 % lives of many draws, and the chance of meeting a limit before an interval.
 *
 * @param lives s, in order of index; draws that made no system are left out and counted
 * @param interval s; null when none is stated, and then the chance is 0
 */
export function spreadOf(lives: Float64Array, interval: number | null): LifeSpread {
  const known = lives.filter((life) => !Number.isNaN(life)).sort();
  const quantile = (share: number) => known[Math.min(known.length - 1, Math.floor(share * known.length))] ?? Number.NaN;
  const early = (life: number) => (interval !== null && life < interval ? 1 : 0);
  const chances = Array.from({ length: SETS }, (_, set) => {
    const own = lives.filter((life, at) => at % SETS === set && !Number.isNaN(life));
    return own.reduce((sum, life) => sum + early(life), 0) / Math.max(1, own.length);
  });
  const chance = chances.reduce((sum, one) => sum + one, 0) / SETS;
  const variance = chances.reduce((sum, one) => sum + (one - chance) ** 2, 0) / (SETS - 1);
  return {
    low: quantile(0.1),
    middle: quantile(0.5),
    high: quantile(0.9),
    chance,
    chanceError: Math.sqrt(variance / SETS),
    draws: known.length,
  };
}
