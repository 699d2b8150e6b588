import { InputError } from "@thirstline/core";
import type { System, SystemSpread } from "../system/index.js";

/** From this ratio of the ends on a figure is drawn by its factor: even over its logarithm. */
const FACTOR = 1.5;

/**
 * A system as it may be: every figure with a spread drawn somewhere between its ends, and no spread left.
 *
 * Even between the ends; even over the logarithm where both are above zero and one is more than 1.5 times the other, as
 * what is known by its factor only. So the draw 0.5 need not be the figure the system holds.
 *
 * @param system from `readSystem`; it stays as it is
 * @param at one number for each of its `spreads`, in their order, 0 for the low end to 1 for the high; of figures that
 *   share a group the first one's counts for all
 * @throws InputError for another count of numbers, or one outside 0 to 1
 * @example
 * withDraw(system, (system.spreads ?? []).map(() => Math.random()))
 */
export function withDraw(system: System, at: readonly number[]): System {
  const { spreads = [], ...rest } = system;
  if (at.length !== spreads.length) {
    throw new InputError("withDraw", "at", `${spreads.length} numbers, one for each spread`, at.length);
  }
  at.forEach((draw, index) => {
    if (!(draw >= 0 && draw <= 1)) throw new InputError("withDraw", `at[${index}]`, "between 0 and 1", draw);
  });
  return spreads.reduce<System>((drawn, spread, index) => {
    const value = drawnFrom(spread, at[spread.group ?? index] ?? Number.NaN);
    return replaced(drawn, spread.path, value) as System;
  }, rest);
}

/** Both ends come out to the last figure, and rounding leads no draw past one. */
function drawnFrom({ low, high }: SystemSpread, at: number): number {
  const byFactor = low > 0 && high > FACTOR * low;
  const value = byFactor ? low ** (1 - at) * high ** at : low * (1 - at) + high * at;
  return Math.min(high, Math.max(low, value));
}

/** A copy of plain data with another figure at a path; what does not lie on the path is shared. */
function replaced(data: unknown, path: SystemSpread["path"], figure: number): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return figure;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  copy[step] = replaced(copy[step], rest, figure);
  return copy;
}
