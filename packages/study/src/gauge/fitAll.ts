import { fitLeastSquares } from "./fit/fitLeastSquares.js";
import type { LeastSquaresFit } from "./fit/LeastSquares.js";
import type { Instant, Run } from "./Instant.js";
import { type RunModel, runModel } from "./runModel.js";
import { flat, type Shape, shapes } from "./shapes.js";
import type { Term } from "./Term.js";

/** A run with how far its readings are taken to be off. */
export interface Weighed {
  readonly run: Run;
  /** Pa, one standard deviation, of what all readings are off by alike */
  readonly zeroSpread: number;
  /** of each reading, Pa */
  readonly sigmas: Float64Array;
  /** what was known of the sigmas before the readings spoke: as so many readings, with so large a sum of squared misses */
  readonly prior: { readonly weight: number; readonly sum: number };
}

/** A model fitted to a run. */
export interface Fitted {
  readonly model: RunModel;
  readonly fit: LeastSquaresFit;
  /** sum of squared misses of the readings alone */
  readonly sum: number;
  /** twice the negative logarithm of the likelihood, the sigmas' common scale averaged out; the file's own errors counted */
  readonly deviance: number;
  /** Akaike's criterion with the correction for few readings; the least is best */
  readonly score: number;
}

/** Few steps will do from starts that are good. */
const EFFORT = { steps: 3, toTheLast: false } as const;

const allShapes = [flat, ...shapes];

/** Every candidate law fitted to a run, and no growth at all; those with more constants than readings allow are left out. */
export function fitAll(
  weighed: Weighed,
  terms: readonly Term[] = [],
  sizes: readonly number[] = [],
  among: readonly Shape[] = allShapes,
): Fitted[] {
  return among.flatMap((shape) => fitOne(weighed, shape, terms, sizes) ?? []);
}

/** One shape of growth fitted to a run; null where there are too few readings for it. */
export function fitOne(
  weighed: Weighed,
  shape: Shape,
  terms: readonly Term[],
  sizes: readonly number[],
): Fitted | null {
  const { run, zeroSpread, sigmas } = weighed;
  const model = runModel(run, zeroSpread, shape, terms);
  if (correction(weighed, model) === null) return null;
  const fit = fitLeastSquares(model.problem(sigmas, startsOf(run, model, sizes)), EFFORT);
  return fittedAt(weighed, model, fit);
}

function fittedAt(weighed: Weighed, model: RunModel, fit: LeastSquaresFit): Fitted {
  const sum = fit.misses.subarray(0, weighed.sigmas.length).reduce((total, one) => total + one * one, 0);
  const deviance = devianceOf(weighed, sum, fit.parameters);
  return { model, fit, sum, deviance, score: deviance + (correction(weighed, model) ?? 0) };
}

/** See `Fitted.deviance`. */
export function devianceOf({ sigmas, prior }: Weighed, sum: number, [demand = 0, zero = 0]: readonly number[]): number {
  return (sigmas.length + prior.weight) * Math.log(prior.sum + sum) + demand * demand + zero * zero;
}

/**
 * What Akaike's criterion adds for constants, with Hurvich and Tsai's correction; null where readings are too few for any.
 * The file's own two errors come with what is known of them, so they count as two readings more and as constants not at all.
 *
 * @see C. M. Hurvich and C.-L. Tsai, Biometrika 76 (1989) 297
 */
function correction({ sigmas, prior }: Weighed, { shape, growing, terms }: RunModel): number | null {
  const constants = constantsOf({ shape, growing, terms });
  const left = sigmas.length + prior.weight - constants - 1;
  return left > 0 && sigmas.length >= growing ? 2 * constants + (2 * constants * (constants + 1)) / left : null;
}

/** Constants that Akaike's criterion counts. */
export function constantsOf({ shape, growing, terms }: Pick<RunModel, "shape" | "growing" | "terms">): number {
  return growing + (shape.mix === null ? 0 : 1) + terms.length;
}

/** Starts from a straight line through what each reading would mean by itself. */
function startsOf({ instants, start }: Run, { shape, terms }: RunModel, sizes: readonly number[]): number[][] {
  const line = lineOf(instants);
  const first = instants[0]?.time ?? 0;
  const last = instants.at(-1)?.time ?? 0;
  const begun = start.known ? start.ratio : Math.max(1.05, line(first));
  const ended = Math.max(begun + 0.05, line(last));
  const grown = [...(shape === flat ? [] : [Math.log(ended - begun)]), ...(start.known ? [] : [Math.log(begun - 1)])];
  return [[0, 0, ...grown, ...terms.map((_, at) => sizes[at] ?? 0)]];
}

/** Resistance over clean by a straight line in time, from readings one by one. */
export function lineOf(instants: readonly Instant[]): (time: number) => number {
  const points = instants.map((one) => ({
    time: one.time,
    ratio: apparentRatio(one),
    weight: one.table.slope(1, 1) ** 2,
  }));
  const total = points.reduce((sum, { weight }) => sum + weight, 0);
  const mean = (of: (point: (typeof points)[number]) => number) =>
    points.reduce((sum, point) => sum + point.weight * of(point), 0) / total;
  const time = mean((point) => point.time);
  const ratio = mean((point) => point.ratio);
  const spread = mean((point) => (point.time - time) ** 2);
  const slope = spread > 0 ? mean((point) => (point.time - time) * (point.ratio - ratio)) / spread : 0;
  return (at) => ratio + slope * (at - time);
}

/** The resistance over clean at which the model reads what was read; below 1 where clean elements would read more. */
function apparentRatio({ table, read }: Instant): number {
  let [low, high] = [1, 1e4];
  const atClean = table.at(1, 1);
  if (read <= atClean) return Math.max(0, 1 + (read - atClean) / Math.max(1e-9, table.slope(1, 1)));
  for (let step = 0; step < 40; step++) {
    const middle = Math.sqrt(low * high);
    if (table.at(1, middle) < read) low = middle;
    else high = middle;
  }
  return low;
}
