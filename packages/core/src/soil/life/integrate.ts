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
  return curvedWay(rates, start, time);
}

/** The curved way, worked out once step by step; what lies within a step is one shorter step from its start. */
function curvedWay(rates: Rates, start: Vector, time: number): (time: number) => Vector | null {
  const stops: { readonly at: number; readonly state: Vector }[] = [{ at: 0, state: start }];
  let step = time;
  let lost = false;
  const goOn = () => {
    const { at, state } = stops.at(-1) as (typeof stops)[number];
    const left = time - at;
    const taken = Math.min(step, left);
    const tried = dormandPrince(rates, state, taken);
    const scale = tried === null ? 8 : (tried.error / TOLERANCE) ** 0.2;
    if (tried !== null && scale <= 1) stops.push({ at: taken === left ? time : at + taken, state: tried.state });
    step = taken * Math.min(4, Math.max(0.1, 0.9 / Math.max(scale, 1e-3)));
    lost = step < 1e-12 * time;
  };
  return (at) => {
    while (!lost && (stops.at(-1)?.at ?? 0) < at) goOn();
    const from = stops.findLast((stop) => stop.at <= at);
    if (!from || (stops.at(-1)?.at ?? 0) < at) return null;
    return from.at === at ? from.state : (dormandPrince(rates, from.state, at - from.at)?.state ?? null);
  };
}

/** Error of a step over the largest figure: a life is then known far closer than its inputs ever are. */
const TOLERANCE = 1e-10;

function same(a: Vector, b: Vector): boolean {
  return a.every((value, at) => Math.abs(value - (b[at] as number)) <= 1e-14 * Math.abs(value));
}

function dormandPrince(rates: Rates, state: Vector, step: number): { state: Vector; error: number } | null {
  const slopes = [new Float64Array(state.length)];
  if (!rates(state, slopes[0] as Vector)) return null;
  let reached: Vector = state;
  for (const weights of STAGES) {
    reached = state.map(
      (value, at) =>
        value + step * weights.reduce((sum, weight, stage) => sum + weight * (slopes[stage]?.[at] ?? 0), 0),
    );
    const slope = new Float64Array(state.length);
    if (!rates(reached, slope)) return null;
    slopes.push(slope);
  }
  const largest = reached.reduce((most, value) => Math.max(most, Math.abs(value)), Number.MIN_VALUE);
  const error = reached.reduce((most, _, at) => {
    const own = step * ERROR.reduce((sum, weight, stage) => sum + weight * (slopes[stage]?.[at] ?? 0), 0);
    return Math.max(most, Math.abs(own) / largest);
  }, 0);
  return { state: reached, error };
}
