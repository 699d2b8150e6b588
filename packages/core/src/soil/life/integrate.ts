/** A set of figures that change together. */
export type Vector = Float64Array;

/** How they change: writes the rates at `state` into `rates`; false where the state makes no sense. */
export type Rates = (state: Vector, rates: Vector) => boolean;

// J. R. Dormand and P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19: nodes are not needed, the rates know no time.
const STAGES: readonly (readonly number[])[] = [
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
/** Fifth-order minus fourth-order weights. */
const ERROR = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];

/**
 * The way of a state whose rates depend on it alone: a function from a time, s, to the state then, or null where the way
 * leads into states that make no sense.
 *
 * Where the rates at the end of one straight step are those at its start, they are constant on the way (elements in
 * series, equal branches) and the way is that line. Else Dormand and Prince's pair of fifth order keeps each step's error
 * below 1e-10 of the largest figure.
 *
 * @param rates of change; smooth where it returns true
 * @param start state; not changed
 * @param time the longest that will be asked for, s
 */
export function wayFrom(rates: Rates, start: Vector, time: number): (time: number) => Vector | null {
  const first = new Float64Array(start.length);
  if (!rates(start, first)) return () => null;
  const straight = (at: number) => start.map((value, place) => value + at * (first[place] as number));
  const last = new Float64Array(start.length);
  if (rates(straight(time), last) && same(first, last)) return straight;
  return curvedWay(rates, { at: 0, state: start, slope: first }, time);
}

/** A place on a curved way, with how it goes on. */
interface Place {
  /** s */
  readonly at: number;
  readonly state: Vector;
  readonly slope: Vector;
}

/** The curved way, worked out once step by step; what lies within a step is one shorter step from its start. */
function curvedWay(rates: Rates, start: Place, time: number): (time: number) => Vector | null {
  const places = [start];
  const slopes = [start.slope, ...STAGES.map(() => new Float64Array(start.state.length))];
  let step = time;
  let lost = false;
  const goOn = () => {
    const from = places.at(-1) as Place;
    const left = time - from.at;
    const taken = Math.min(step, left);
    const tried = dormandPrince(rates, from, taken, slopes);
    const scale = tried === null ? 8 : (tried.error / TOLERANCE) ** 0.2;
    if (tried !== null && scale <= 1) {
      // The last stage stands where the step ends, so the next one need not ask again.
      const slope = (slopes[STAGES.length] as Vector).slice();
      places.push({ at: taken === left ? time : from.at + taken, state: tried.state, slope });
    }
    step = taken * Math.min(4, Math.max(0.1, 0.9 / Math.max(scale, 1e-3)));
    lost = step < 1e-12 * time;
  };
  return (at) => {
    while (!lost && (places.at(-1)?.at ?? 0) < at) goOn();
    const from = places.findLast((place) => place.at <= at);
    if (!from || (places.at(-1)?.at ?? 0) < at) return null;
    return from.at === at ? from.state : (dormandPrince(rates, from, at - from.at, slopes)?.state ?? null);
  };
}

/** Error of a step over the largest figure: a life is then known far closer than its inputs ever are. */
const TOLERANCE = 1e-10;

function same(a: Vector, b: Vector): boolean {
  return a.every((value, at) => Math.abs(value - (b[at] as number)) <= 1e-14 * Math.abs(value));
}

/** One step from a place; `slopes` takes the slope at each stage, the last of them where the step ends. */
function dormandPrince(
  rates: Rates,
  { state, slope }: Place,
  step: number,
  slopes: Vector[],
): { state: Vector; error: number } | null {
  const size = state.length;
  slopes[0] = slope;
  const reached = new Float64Array(size);
  for (let stage = 0; stage < STAGES.length; stage++) {
    const weights = STAGES[stage] as readonly number[];
    for (let at = 0; at < size; at++) reached[at] = (state[at] as number) + step * weighted(weights, slopes, at);
    if (!rates(reached, slopes[stage + 1] as Vector)) return null;
  }
  let largest = Number.MIN_VALUE;
  let error = 0;
  for (let at = 0; at < size; at++) largest = Math.max(largest, Math.abs(reached[at] as number));
  for (let at = 0; at < size; at++) error = Math.max(error, Math.abs(step * weighted(ERROR, slopes, at)) / largest);
  return { state: reached, error };
}

function weighted(weights: readonly number[], slopes: readonly Vector[], at: number): number {
  let sum = 0;
  for (let stage = 0; stage < weights.length; stage++) {
    sum += (weights[stage] as number) * ((slopes[stage] as Vector)[at] as number);
  }
  return sum;
}
