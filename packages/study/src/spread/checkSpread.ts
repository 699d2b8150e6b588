import { type System, withDraw } from "@thirstline/spec/system";
import type { CheckAnswer } from "../check/CheckAnswer.js";
import { type CheckOptions, check } from "../check/check.js";
import { chanceOf } from "./chanceOf.js";
import { drawsOf } from "./drawsOf.js";
import { ifPossible } from "./ifPossible.js";
import type { Slice } from "./lifeDraws.js";
import { quantilesOf } from "./quantilesOf.js";
import { suctionUnknowns } from "./suctionUnknowns.js";

/** The 10, 50 and 90 % of a figure. */
export interface Quantiles {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** What the spreads of a file make of one temperature's answer. */
export interface CheckSpread {
  /** vacuum with clean elements, Pa */
  readonly vacuum: Quantiles;
  /** gauge, Pa; null where it is not known */
  readonly feedPressure: Quantiles | null;
  /** ceiling over demand, minus one */
  readonly inHand: Quantiles;
  /** chance that a limit is broken, 0 to 1, and its standard error; null where no draw can say */
  readonly broken: { readonly chance: number; readonly chanceError: number } | null;
  readonly draws: number;
}

/** Figures kept of one temperature of one draw. */
const KEPT = 4;

/** Whether the spreads of a file bear on what `check` and `curve` say. */
export function isSuctionUncertain(system: System): boolean {
  return suctionUnknowns(system).count > 0;
}

/** What many draws make of `check`, one after another: for each temperature vacuum, feed pressure, in hand, and 1 if broken. */
export function checkDraws(system: System, options: CheckOptions, slice: Slice): Float64Array {
  const unknowns = suctionUnknowns(system);
  const draw = drawsOf(unknowns.count, slice.seed);
  const width = KEPT * (options.temperatures?.length ?? 1);
  const into = new Float64Array(width * (slice.to - slice.from)).fill(Number.NaN);
  for (let at = slice.from; at < slice.to; at++) {
    const figures = ifPossible(null, () => {
      const drawn = withDraw(system, unknowns.places(draw(at)));
      return figuresOf(check(drawn, options));
    });
    if (figures) into.set(figures, width * (at - slice.from));
  }
  return into;
}

function figuresOf({ points }: CheckAnswer): number[] {
  return points.flatMap(({ vacuum, feedPressure, inHand, verdict }) => [
    vacuum.middle,
    feedPressure?.middle ?? Number.NaN,
    inHand.middle,
    verdict === "cannot say" ? Number.NaN : verdict === "starves" ? 1 : 0,
  ]);
}

/** The spread at each temperature, from all draws in order of their index. */
export function checkSpreadOf(draws: Float64Array, temperatures: number): CheckSpread[] {
  const width = KEPT * temperatures;
  return Array.from({ length: temperatures }, (_, place): CheckSpread => {
    const column = (kept: number) =>
      Float64Array.from({ length: draws.length / width }, (_, at) => draws[at * width + place * KEPT + kept] as number);
    const [feed, broken] = [quantilesOf(column(1)), column(3)];
    return {
      vacuum: quantilesOf(column(0)),
      feedPressure: Number.isNaN(feed.middle) ? null : feed,
      inHand: quantilesOf(column(2)),
      broken: broken.every(Number.isNaN) ? null : chanceOf(broken, (one) => one === 1),
      draws: column(0).filter((one) => !Number.isNaN(one)).length,
    };
  });
}
