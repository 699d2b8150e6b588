import type { LeastSquares } from "./fit/LeastSquares.js";
import type { Instant, Run } from "./Instant.js";
import { fileNoise } from "./noise.js";
import { demandWeights } from "./RatioTable.js";
import type { Shape } from "./shapes.js";
import { flat, MOST } from "./shapes.js";
import { perDemand, type Term, termAt } from "./Term.js";

/** What a model of a run says at some parameters. */
export interface RunState {
  /** demand (and all friction with it) over what was noted, for all readings alike */
  readonly demand: number;
  /** what all readings are off by, Pa */
  readonly zero: number;
  /** resistance over clean of the lead at a running time, s */
  readonly ratioAt: (time: number) => number;
  /** loads of the shape: at time 0 (or the first reading), and a second on */
  readonly load: { readonly start: number; readonly rate: number };
}

/** A model of a run: parameters are the file's own errors in standard deviations, growth, start where unknown, then the terms'. */
export interface RunModel {
  readonly shape: Shape;
  readonly terms: readonly Term[];
  /** growth and start, without the file's own errors and the terms */
  readonly growing: number;
  readonly count: number;
  /** running time it grows from, s, and how long it has grown by the last reading, a second at least */
  readonly first: number;
  readonly span: number;
  readonly stateAt: (parameters: readonly number[]) => RunState;
  readonly problem: (sigmas: ArrayLike<number>, starts: readonly (readonly number[])[]) => LeastSquares;
}

/** How far the zero of all readings may be off, Pa, one standard deviation. */
export type ZeroSpread = number;

/** Logarithms of a growth worth following: less is none, more is beyond any gauge. */
const GROWTH = { lower: Math.log(1e-4), upper: Math.log(3000) };

/** The model of a run with one shape of growth and some terms. */
export function runModel(run: Run, zeroSpread: ZeroSpread, shape: Shape, terms: readonly Term[]): RunModel {
  const { instants, start } = run;
  const grows = shape !== flat;
  const growing = (grows ? 1 : 0) + (start.known ? 0 : 1);
  const count = 2 + growing + terms.length;
  const first = start.known ? 0 : (instants[0]?.time ?? 0);
  const span = Math.max(1, (instants.at(-1)?.time ?? 0) - first);
  const stateAt = (parameters: readonly number[]): RunState => {
    const begun = start.known ? start.ratio : 1 + Math.exp(parameters[grows ? 3 : 2] as number);
    const ended = grows ? begun + Math.exp(parameters[2] as number) : begun;
    const from = grows ? shape.load(begun) : 0;
    const rate = grows ? (shape.load(ended) - from) / span : 0;
    return {
      demand: Math.exp(fileNoise.demand * (parameters[0] as number)),
      zero: zeroSpread * (parameters[1] as number),
      ratioAt: grows ? (time) => shape.ratio(from + rate * (time - first)) : () => begun,
      load: { start: from - rate * first, rate },
    };
  };
  const misses = (sigmas: ArrayLike<number>) => (parameters: readonly number[]) => {
    const state = stateAt(parameters);
    const weights = demandWeights(state.demand);
    const found = new Float64Array(instants.length + 2);
    for (let at = 0; at < instants.length; at++) {
      const instant = instants[at] as Instant;
      const { read, table, time } = instant;
      let ratio = state.ratioAt(time);
      let off = 0;
      for (let place = 0; place < terms.length; place++) {
        const size = parameters[2 + growing + place] as number;
        const term = terms[place] as Term;
        if (term.kind === "thin") off -= at >= term.at ? size * perDemand(instant, state.demand, ratio) : 0;
        else if (term.kind === "outlier") off += term.at === at ? size * (sigmas[at] as number) : 0;
        else ratio += size * termAt(term, at, instant, ratio, span);
      }
      const reckoned = table.weighted(weights, Math.max(-MOST, Math.min(MOST, ratio))) + state.zero + off;
      found[at] = (reckoned - read) / (sigmas[at] as number);
    }
    found[instants.length] = parameters[0] as number;
    found[instants.length + 1] = parameters[1] as number;
    return found;
  };
  const bound = (side: "lower" | "upper") => {
    const far = side === "lower" ? -1 : 1;
    return [far * 6, far * 8, ...Array.from({ length: growing }, () => GROWTH[side]), ...terms.map(() => far * 1e3)];
  };
  return {
    shape,
    terms,
    growing,
    count,
    first,
    span,
    stateAt,
    problem: (sigmas, starts) => ({ misses: misses(sigmas), starts, lower: bound("lower"), upper: bound("upper") }),
  };
}
