import type { LeastSquares, Misses } from "./LeastSquares.js";
import { slopesOf } from "./slopesOf.js";
import { solveDamped } from "./solveDamped.js";

/** Moves tried at most: where the last figures count, and where they do not. */
const MOST = 400;
const FEW = 8;
/** A move that wins less than this of the sum is the last: where the last figures count, and where they do not. */
const LITTLE = 1e-15;
const ENOUGH = 1e-4;

/** Parameters with their misses. */
export interface Place {
  readonly parameters: readonly number[];
  readonly misses: Float64Array;
  readonly sum: number;
}

/**
 * Goes on from a place to the least sum nearby: damped Gauss-Newton steps that never take a worse place, so that the last
 * figures come out which a general minimiser leaves.
 */
export function polish(problem: LeastSquares, from: Place, scale: readonly number[], toTheLast = true): Place {
  let place = from;
  let damping = 1e-3;
  let slopes = slopesOf(problem.misses, place.parameters, scale);
  for (let tried = 0; tried < (toTheLast ? MOST : FEW); tried++) {
    const move = solveDamped(slopes, place.misses, damping);
    const next = move && placeAt(problem.misses, held(problem, place.parameters, move));
    if (!next || !(next.sum < place.sum)) {
      if (damping > 1e12 || (next && place.sum - next.sum === 0 && damping < 1e-8)) break;
      damping = Math.max(damping * 8, 1e-9);
      continue;
    }
    const won = 1 - next.sum / place.sum;
    const moved = next.parameters.some(
      (value, at) => Math.abs(value - (place.parameters[at] ?? 0)) > 1e-13 * Math.abs(value),
    );
    place = next;
    if (place.sum === 0 || !moved || (toTheLast ? won < LITTLE && damping < 1e-6 : won < ENOUGH)) break;
    damping = damping < 1e-14 ? 0 : damping / 16;
    slopes = slopesOf(problem.misses, place.parameters, scale);
  }
  return toTheLast ? settled(problem, place, scale) : place;
}

/** Near the least the sum no longer tells places apart; undamped steps go on to where the slope of it vanishes. */
function settled(problem: LeastSquares, from: Place, scale: readonly number[]): Place {
  let place = from;
  for (let step = 0; step < 12; step++) {
    const move = solveDamped(slopesOf(problem.misses, place.parameters, scale), place.misses, 0);
    const next = move && placeAt(problem.misses, held(problem, place.parameters, move));
    if (!next || !(next.sum <= place.sum * (1 + 1e-12))) break;
    const still = next.parameters.every(
      (one, at) => Math.abs(one - (place.parameters[at] ?? 0)) <= 1e-12 * Math.abs(one),
    );
    place = next;
    if (still) break;
  }
  return place;
}

/** Misses and their sum at some parameters; a sum of Infinity where a miss is no number. */
export function placeAt(misses: Misses, parameters: readonly number[]): Place {
  const found = misses(parameters);
  let sum = 0;
  for (const one of found) sum += one * one;
  return { parameters, misses: found, sum: Number.isFinite(sum) ? sum : Infinity };
}

function held({ lower, upper }: LeastSquares, parameters: readonly number[], move: readonly number[]): number[] {
  return parameters.map((value, at) =>
    Math.min(upper?.[at] ?? Infinity, Math.max(lower?.[at] ?? -Infinity, value + (move[at] as number))),
  );
}
