import { closeBracket } from "../../closeBracket.js";
import { type Rates, Step, type Vector } from "./dormandPrince.js";

/** What a way may not go beyond. No margin rises along it. */
export interface Bounds {
  /** Whether every margin is 0 or more at a state. */
  holds(state: Vector): boolean;
  /** The least of the margins that are below 0 at a state, as a function of the state. */
  brokenAt(state: Vector): (state: Vector) => number;
}

/** How far a way was followed. */
export interface Followed {
  /** s */
  readonly time: number;
  readonly state: Vector;
  /** whether it ended on a bound, or where states make no sense beyond */
  readonly broken: boolean;
  /** size of the last step, s: a good first one for a way that goes on like this; null for a straight way */
  readonly step: number | null;
}

/** Error of a step over the largest figure: a life is then known far closer than its inputs ever are. */
const TOLERANCE = 1e-10;

/** How closely the moment is found, s: a hundredth of a millionth of an hour. */
const CLOSE = 3.6e-5;

/**
 * Follows a state whose rates depend on it alone for a time, s, or to the first bound.
 *
 * Where the rates at the end of one straight step are those at its start, they are constant on the way (elements in
 * series, equal branches) and the way is that line. Else Dormand and Prince's pair of fifth order keeps each step's error
 * below 1e-10 of the largest figure, and the way ends within the first step that goes over a bound.
 *
 * @param rates of change; smooth where it returns true
 * @param start state; not changed
 * @param first step to try, s, of a way known to be curved; null where nothing is known
 */
export function follow(rates: Rates, start: Vector, time: number, bounds: Bounds, first: number | null): Followed {
  const slope = new Float64Array(start.length);
  if (!rates(start, slope)) return { time: 0, state: start, broken: true, step: null };
  if (first !== null) return curved(rates, start, slope, time, bounds, first);
  const straight = (at: number) => start.map((value, place) => value + at * (slope[place] as number));
  const last = new Float64Array(start.length);
  const end = straight(time);
  const sense = rates(end, last);
  if (sense && same(slope, last)) {
    if (bounds.holds(end)) return { time, state: end, broken: false, step: null };
    const met = lastOf(bounds.brokenAt(end), straight, time, 0);
    return { time: met, state: straight(met), broken: true, step: null };
  }
  return curved(rates, start, slope, time, bounds, firstStep(slope, last, time, sense));
}

function curved(
  rates: Rates,
  start: Vector,
  startSlope: Vector,
  time: number,
  bounds: Bounds,
  first: number,
): Followed {
  let at = 0;
  let state = start;
  let slope = startSlope;
  let size = Math.min(first, time);
  let before = 1e-4;
  let refused = false;
  while (at < time) {
    const left = time - at;
    const taken = Math.min(size, left);
    const step = Step.taken(rates, state, slope, taken);
    const miss = step === null ? Infinity : Math.max(step.error / TOLERANCE, 1e-10);
    if (step === null || miss > 1) {
      size = taken * Math.max(0.1, 0.9 * miss ** -0.2);
      // Steps shrink to nothing only at the edge of what makes sense.
      if (size < 1e-12 * time) return { time: at, state, broken: true, step: size };
      refused = true;
      continue;
    }
    if (!bounds.holds(step.to)) {
      const met = endWithin(rates, step, slope, bounds);
      return { time: at + met.time, state: met.state, broken: true, step: size };
    }
    // Steadied by the error before, after K. Gustafsson, ACM Trans. Math. Softw. 17 (1991) 533.
    const growth = (0.9 * before ** 0.04) / miss ** 0.17;
    size = Math.max(size, taken) * Math.min(refused ? 1 : 6, Math.max(0.2, growth));
    before = Math.max(miss, 1e-4);
    refused = false;
    at = taken === left ? time : at + taken;
    state = step.to;
    slope = step.slope;
  }
  return { time, state, broken: false, step: size };
}

/**
 * A size for the first step, from how far the rates change by the end: over which they change by about a tenth, since a
 * step of fifth order is then about as close as is asked.
 */
function firstStep(slope: Vector, last: Vector, time: number, sense: boolean): number {
  if (!sense) return 0.01 * time;
  let most = 0;
  let change = 0;
  for (let at = 0; at < slope.length; at++) {
    most = Math.max(most, Math.abs(slope[at] as number));
    change = Math.max(change, Math.abs((last[at] as number) - (slope[at] as number)));
  }
  return time * Math.min(1, Math.max(1e-3, (0.1 * most) / change));
}

/** The last moment within a step, s from its start, and the state then, at which the bounds its end breaks still hold. */
function endWithin(rates: Rates, step: Step, slope: Vector, bounds: Bounds): { time: number; state: Vector } {
  const margin = bounds.brokenAt(step.to);
  const within = (time: number) => step.within(time);
  const exact = (time: number) =>
    time > 0 ? (Step.taken(rates, step.from, slope, time)?.to ?? within(time)) : step.from;
  let time = lastOf(margin, within, step.size, 0);
  let state = exact(time);
  // Between its ends a step is known less well than there: what a step to this very moment shows is put right.
  for (let round = 0; round < 6; round++) {
    const better = lastOf(margin, within, step.size, margin(state) - margin(within(time)));
    if (Math.abs(better - time) <= CLOSE) return { time, state };
    time = better;
    state = exact(time);
  }
  time = lastOf(margin, exact, step.size, 0);
  return { time, state: exact(time) };
}

/** The last time from 0 to an end at which a margin, put right by `off`, is 0 or more on a way; below 0 at the end. */
function lastOf(margin: (state: Vector) => number, way: (time: number) => Vector, end: number, off: number): number {
  const value = (time: number) => {
    const found = margin(way(time)) + off;
    return Number.isNaN(found) ? -Infinity : found;
  };
  const low = { at: 0, value: value(0) };
  const high = { at: end, value: value(end) };
  if (!(low.value >= 0)) return 0;
  if (high.value >= 0) return end;
  return closeBracket(value, low, high, Math.max(1e-12, CLOSE / end)).low;
}

function same(a: Vector, b: Vector): boolean {
  return a.every((value, at) => Math.abs(value - (b[at] as number)) <= 1e-14 * Math.abs(value));
}
