import { fitOne, type Weighed } from "../../packages/study/src/gauge/fitAll.js";
import type { Instant, Run } from "../../packages/study/src/gauge/Instant.js";
import { RatioTable } from "../../packages/study/src/gauge/RatioTable.js";
import type { SideFit } from "../../packages/study/src/gauge/SideFit.js";
import { flat } from "../../packages/study/src/gauge/shapes.js";
import type { Term } from "../../packages/study/src/gauge/Term.js";

// Runs of readings whose model is a straight line, so that what is fitted to them can be worked out by hand.

/** A gauge that reads 1 kPa for each time as much resistance as clean, whatever the demand. */
export const level = new RatioTable((_demand, ratio) => 1000 * ratio);
/** The same in proportion to the demand. */
export const proportional = new RatioTable((demand, ratio) => 1000 * demand * ratio);

const noise = { gauge: 100, demand: 0.05, viscosity: 0.02 };

/** A reading an hour, row 1 at time 0, in fuel at 288 K. */
export function instantsOf(
  reads: readonly number[],
  more: (at: number) => Partial<Instant> = () => ({}),
  table = level,
): Instant[] {
  return reads.map((read, at) => ({
    reading: { row: at + 1, line: at + 2, changed: false },
    time: at * 3600,
    read,
    table,
    temperature: 288,
    noise,
    ...more(at),
  }));
}

/** A run of new elements. */
export function newRun(instants: readonly Instant[]): Run {
  return { instants, start: { known: true, ratio: 1, by: "last change" } };
}

/** A run with each reading known to 100 Pa. */
export function weighedOf(run: Run, more: Partial<Weighed> = {}): Weighed {
  return {
    run,
    zeroSpread: 0,
    sigmas: Float64Array.from(run.instants, () => 100),
    prior: { weight: 4, sum: 4 },
    ...more,
  };
}

/** A side as it is with no growth and the terms given, their sizes fitted: what takes a moment, since no law competes. */
export function sideWith(weighed: Weighed, terms: readonly Term[], trend = false): SideFit {
  const best = fitOne(weighed, flat, terms, []);
  if (!best) throw new Error("too few readings");
  const soil = { weighed, trend, best, laws: [], draws: [], ratio: { low: 1, middle: 1, high: 1 } };
  return { weighed, explained: { terms, evidence: [], fits: [best], soil: [] }, soil, soilWithout: null };
}
