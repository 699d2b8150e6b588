import type { Limits } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import { intervalOf, timeAtRatio } from "./averaged.js";
import type { GaugeReason, HoursLeft } from "./GaugeAnswer.js";
import { type LimitFacts, LimitMap, type LimitPoint } from "./LimitMap.js";
import type { SideFit, SoilFit } from "./SideFit.js";
import type { SidePath } from "./SidePath.js";

/** One side with its fit. */
export interface FittedSide {
  readonly path: SidePath;
  readonly fit: SideFit;
}

/** What running time left is worked out from. */
export interface LeftFacts {
  readonly built: Built;
  readonly limits: Limits;
  readonly points: readonly LimitPoint[];
  readonly terminals: ReadonlyMap<string, number>;
  /** all elements by what is known besides the side in question, at a running time, s */
  readonly besideAt: (time: number) => ReadonlyMap<string, number>;
  /** what the hour meter showed when the run began, s; null without one */
  readonly meter: number | null;
  /** hours the run's first reading lies after its beginning; 0 where the beginning is not known */
  readonly now: number;
}

/** An interval wider than so many times both its middle and the run so far tells nobody when to change. */
const WIDE = 3;

/**
 * Running time left to the first limit, nine times in ten between its ends, or why it cannot be told.
 *
 * The interval is made of draws of every candidate law by its Akaike weight: each law's constants and the file's own errors
 * drawn as the readings allow (see `drawsOfFit`), each draw followed to its own limit. So it holds which law it is, how far
 * its constants are known, what gauge, demand and temperature are off by at each reading, and what the file is off by
 * throughout. It does not hold a change of habits: dirtier fuel, more load, more hours a day at the limit's temperature.
 *
 * Elements of the other side fill meanwhile as their own best law says.
 */
export function leftOf({ path, fit }: FittedSide, soil: SoilFit, facts: LeftFacts): HoursLeft | GaugeReason {
  const { points, meter, now } = facts;
  if (points.length === 0) return { code: "no temperature to judge" };
  const { best } = soil;
  const map = new LimitMap(limitFacts(path, soil, facts));
  const met = map.at(best.model.stateAt(best.fit.parameters).demand);
  const left = intervalOf(soil.draws, (draw) => Math.max(0, timeAtRatio(draw, map.at(draw.state.demand).ratio) - now));
  if (met.ratio === Infinity || left.middle === Infinity) return { code: "no limit" };
  if (left.high - left.low > WIDE * Math.max(left.middle, now)) {
    return { code: "too wide", low: left.low, high: Number.isFinite(left.high) ? left.high : null };
  }
  return {
    ...left,
    by: met.by,
    pointTemperature: met.temperature,
    hourMeter: meter === null ? null : meter + now + left.middle,
    sinceStart: fit.weighed.run.instants.at(-1)?.time ?? 0,
  };
}

/** What the limits are found from: the side's elements as they fill, those of the other side as they will have filled then. */
export function limitFacts(path: SidePath, { best }: SoilFit, facts: LeftFacts): LimitFacts {
  const { built, limits, points, terminals, besideAt, now } = facts;
  const likeliest = { shape: best.model.shape, state: best.model.stateAt(best.fit.parameters) };
  const restrictions = (ratio: number) => {
    const time = timeAtRatio(likeliest, ratio);
    return new Map([...besideAt(Number.isFinite(time) ? Math.max(time, now) : now), ...path.at(ratio)]);
  };
  return { built, limits, points, terminals, restrictions };
}
