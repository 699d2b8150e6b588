import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { inverse, Matrix } from "ml-matrix";
import type { LeastSquares, LeastSquaresFit } from "./LeastSquares.js";
import { type Place, placeAt, polish } from "./polish.js";
import { slopesOf } from "./slopesOf.js";

/** How hard to look. */
export interface Effort {
  /** steps of the library from each start; fewer do where starts are good */
  readonly steps: number;
  /** whether to go on until the last figures stand still */
  readonly toTheLast: boolean;
}

const USUAL: Effort = { steps: 40, toTheLast: true };

/**
 * The least sum of squared misses, by Levenberg and Marquardt's method from every start, then polished to the last figures.
 *
 * The library takes parameters of like size and misses of like size, so both are scaled for it; it may leave a good place
 * for a worse one, so what it finds counts only where it is better than the start. The fits of all starts compete.
 * Checked against the certified values of NIST's reference problems in tests/published/gauge.
 *
 * @param problem misses, each over its standard deviation; starts; bounds
 * @param effort how hard to look
 * @returns the best fit of all starts
 * @see K. Levenberg, Q. Appl. Math. 2 (1944) 164; D. W. Marquardt, J. SIAM 11 (1963) 431
 * @example
 * fitLeastSquares({ misses: ([slope = 0]) => Float64Array.from([2, 4], (y, at) => slope * (at + 1) - y), starts: [[1]] })
 */
export function fitLeastSquares(problem: LeastSquares, effort: Effort = USUAL): LeastSquaresFit {
  let best: Place | null = null;
  for (const start of problem.starts) {
    const scale = scaleOf(start);
    const first = placeAt(problem.misses, start);
    const tried = fromLibrary(problem, first, scale, effort.steps);
    const found = polish(problem, tried.sum < first.sum ? tried : first, scale, effort.toTheLast);
    if (best === null || found.sum < best.sum) best = found;
  }
  if (best === null) throw new TypeError("fitLeastSquares requires one start or more");
  return fitAt(problem, best);
}

/** Everything known of a fit at some parameters. */
export function fitAt(problem: LeastSquares, { parameters, misses, sum }: Place): LeastSquaresFit {
  const slopes = slopesOf(problem.misses, parameters, scaleOf(parameters));
  return {
    parameters,
    sum,
    misses,
    slopes,
    covariance: covarianceOf(slopes, parameters.length),
    freedom: misses.length - parameters.length,
  };
}

function fromLibrary(
  { misses, lower, upper }: LeastSquares,
  first: Place,
  scale: readonly number[],
  steps: number,
): Place {
  const unscaled = (scaled: readonly number[]) => scaled.map((value, at) => value * (scale[at] as number));
  const size = first.sum > 0 && Number.isFinite(first.sum) ? Math.sqrt(first.sum) : 1;
  const zeros = new Float64Array(first.misses.length);
  const bounds = (given: readonly number[] | undefined) =>
    given === undefined ? undefined : given.map((value, at) => value / (scale[at] as number));
  const [minValues, maxValues] = [bounds(lower), bounds(upper)];
  const { parameterValues } = levenbergMarquardt(
    { x: zeros.map((_, at) => at), y: zeros },
    (scaled) => {
      const found = misses(unscaled(scaled));
      // A miss that is no number would end the search; a very large one turns it round.
      return (at) => (Number.isFinite(found[at]) ? (found[at] as number) / size : 1e3);
    },
    {
      initialValues: first.parameters.map((value, at) => value / (scale[at] as number)),
      damping: 1e-2,
      maxIterations: steps,
      errorTolerance: 1e-14,
      centralDifference: true,
      gradientDifference: 1e-5,
      ...(minValues === undefined ? {} : { minValues }),
      ...(maxValues === undefined ? {} : { maxValues }),
    },
  );
  return placeAt(misses, unscaled(parameterValues));
}

function scaleOf(parameters: readonly number[]): number[] {
  return parameters.map((value) => (value === 0 ? 1 : Math.abs(value)));
}

function covarianceOf(slopes: readonly Float64Array[], count: number): number[][] {
  const lengths = Array.from({ length: count }, (_, at) => {
    const length = Math.sqrt(slopes.reduce((sum, row) => sum + (row[at] as number) ** 2, 0));
    return length > 0 ? length : 1;
  });
  const scaled = new Matrix(slopes.map((row) => lengths.map((length, at) => (row[at] as number) / length)));
  const product = scaled.transpose().mmul(scaled);
  // By singular values where two parameters do the same: their common spread is then large, not an error.
  const own = inverse(product, true);
  return lengths.map((one, at) => lengths.map((other, place) => own.get(at, place) / (one * other)));
}
