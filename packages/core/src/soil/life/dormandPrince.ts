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
 * Weights of the fourth-order way between the ends of a step. E. Hairer, S. P. Norsett, G. Wanner, Solving Ordinary
 * Differential Equations I (2nd ed. 1993), section II.6 (from memory; a property test holds its order).
 */
const BETWEEN = [
  -12715105075 / 11282082432,
  0,
  87487479700 / 32700410799,
  -10690763975 / 1880347072,
  701980252875 / 199316789632,
  -1453857185 / 822651844,
  69997945 / 29380423,
];

/** One step of a way, with what lies within it. */
export class Step {
  readonly from: Vector;
  readonly size: number;
  readonly to: Vector;
  /** estimated, over the largest figure at its end */
  readonly error: number;
  /** rates at its end */
  readonly slope: Vector;
  private readonly slopes: readonly Vector[];

  private constructor(from: Vector, size: number, to: Vector, slopes: readonly Vector[]) {
    this.from = from;
    this.size = size;
    this.to = to;
    this.slopes = slopes;
    this.slope = slopes[STAGES.length] as Vector;
    let largest = Number.MIN_VALUE;
    let error = 0;
    for (let at = 0; at < to.length; at++) largest = Math.max(largest, Math.abs(to[at] as number));
    for (let at = 0; at < to.length; at++) {
      error = Math.max(error, Math.abs(size * weighted(ERROR, slopes, at)) / largest);
    }
    this.error = error;
  }

  /** Takes a step of a size, s, from a state whose rates are known; null where it leads into states that make no sense. */
  static taken(rates: Rates, from: Vector, slope: Vector, size: number): Step | null {
    const slopes = [slope];
    let reached = from;
    for (const weights of STAGES) {
      reached = new Float64Array(from.length);
      for (let at = 0; at < from.length; at++)
        reached[at] = (from[at] as number) + size * weighted(weights, slopes, at);
      const found = new Float64Array(from.length);
      if (!rates(reached, found)) return null;
      slopes.push(found);
    }
    return new Step(from, size, reached, slopes);
  }

  /** The state some time after the start of the step, s, to the fourth order; never outside what its ends are. */
  within(time: number): Vector {
    const { from, size, to, slopes } = this;
    const share = time / size;
    const left = 1 - share;
    return from.map((start, at) => {
      const end = to[at] as number;
      const change = end - start;
      const first = size * ((slopes[0] as Vector)[at] as number) - change;
      const last = change - size * (this.slope[at] as number) - first;
      const bend = size * weighted(BETWEEN, slopes, at);
      const found = start + share * (change + left * (first + share * (last + left * bend)));
      // What is caught only grows; a rounding below nothing would be no state at all.
      return Math.min(Math.max(start, end), Math.max(Math.min(start, end), found));
    });
  }
}

function weighted(weights: readonly number[], slopes: readonly Vector[], at: number): number {
  let sum = 0;
  for (let stage = 0; stage < weights.length; stage++) {
    sum += (weights[stage] as number) * ((slopes[stage] as Vector)[at] as number);
  }
  return sum;
}
