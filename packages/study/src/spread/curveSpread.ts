import { type System, withDraw } from "@thirstline/spec/system";
import type { CurveAnswer } from "../curve/CurveAnswer.js";
import { type CurveOptions, curve } from "../curve/curve.js";
import { drawsOf } from "./drawsOf.js";
import { ifPossible } from "./ifPossible.js";
import type { Slice } from "./lifeDraws.js";
import { quantilesOf } from "./quantilesOf.js";
import { suctionUnknowns } from "./suctionUnknowns.js";

/** The 10 and 90 % of a curve with clean elements, at each of its demands, Pa; NaN where most draws have no figure. */
export interface CurveSpread {
  readonly vacuum: { readonly low: Float64Array; readonly high: Float64Array };
  readonly feedPressure: { readonly low: Float64Array; readonly high: Float64Array } | null;
}

/** How a curve is drawn: its own reach and points, so that the points of all draws stand over one another. */
export type CurveDrawOptions = CurveOptions & Required<Pick<CurveOptions, "to" | "points">>;

/** What many draws make of `curve`, one after another: for each temperature all vacuums, then all feed pressures. */
export function curveDraws(system: System, options: CurveDrawOptions, slice: Slice): Float64Array {
  const { points, temperatures = [0] } = options;
  const unknowns = suctionUnknowns(system);
  const draw = drawsOf(unknowns.count, slice.seed);
  const width = 2 * points * temperatures.length;
  const into = new Float64Array(width * (slice.to - slice.from)).fill(Number.NaN);
  for (let at = slice.from; at < slice.to; at++) {
    const answer = ifPossible(null, () => curve(withDraw(system, unknowns.places(draw(at))), options));
    if (answer) put(answer, points, into, width * (at - slice.from));
  }
  return into;
}

function put({ points }: CurveAnswer, length: number, into: Float64Array, from: number): void {
  points.forEach(({ clean }, place) => {
    if (!clean) return;
    into.set(clean.vacuum.middle, from + 2 * length * place);
    if (clean.feedPressure) into.set(clean.feedPressure.middle, from + 2 * length * place + length);
  });
}

/** The spread at each temperature, from all draws in order of their index. */
export function curveSpreadOf(draws: Float64Array, temperatures: number, points: number): CurveSpread[] {
  const width = 2 * points * temperatures;
  return Array.from({ length: temperatures }, (_, place): CurveSpread => {
    const ends = (from: number) => {
      const found = Array.from({ length: points }, (_, point) =>
        quantilesOf(
          Float64Array.from({ length: draws.length / width }, (_, at) => draws[at * width + from + point] as number),
        ),
      );
      return { low: Float64Array.from(found, ({ low }) => low), high: Float64Array.from(found, ({ high }) => high) };
    };
    const feed = ends(2 * points * place + points);
    return { vacuum: ends(2 * points * place), feedPressure: feed.low.every(Number.isNaN) ? null : feed };
  });
}
