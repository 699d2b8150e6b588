import { fitAt, fitLeastSquares } from "./fitLeastSquares.js";
import type { LeastSquaresFit } from "./LeastSquares.js";
import { placeAt, polish } from "./polish.js";
import { solveDamped } from "./solveDamped.js";

/** A model that is a sum of columns, each times a parameter of its own; the columns depend on further parameters. */
export interface Separable {
  /** columns at the other parameters, each as long as the readings */
  readonly columns: (others: readonly number[]) => readonly ArrayLike<number>[];
  readonly readings: ArrayLike<number>;
  /** of the other parameters only: those the columns are multiplied by follow from them */
  readonly starts: readonly (readonly number[])[];
}

/** So much damping lets columns that are alike share their part, and moves no figure that is printed. */
const HARDLY = 1e-24;

/**
 * Least squares with variable projection: at every trial of the other parameters the multipliers are solved for outright,
 * so that only the other parameters are searched, and no start is needed for the multipliers.
 *
 * Each start is also tried ten and a hundred times smaller, since a rate that is far too fast leaves flat columns from which
 * no way leads. In the end all parameters are polished together, so that their covariance is that of the whole model.
 *
 * @returns parameters: the multipliers in the order of the columns, then the others
 * @see G. H. Golub and V. Pereyra, SIAM J. Numer. Anal. 10 (1973) 413
 */
export function fitSeparable({ columns, readings, starts }: Separable): LeastSquaresFit {
  const projected = (others: readonly number[]) =>
    missed(columns(others), readings, multipliers(columns(others), readings));
  const tried = starts.flatMap((start) => [1, 0.1, 0.01].map((factor) => start.map((value) => value * factor)));
  const rough = fitLeastSquares({ misses: projected, starts: tried });
  const own = multipliers(columns(rough.parameters), readings);
  const misses = (all: readonly number[]) => missed(columns(all.slice(own.length)), readings, all.slice(0, own.length));
  const problem = { misses, starts: [[...own, ...rough.parameters]] };
  const scale = (problem.starts[0] as number[]).map((value) => Math.abs(value) || 1);
  return fitAt(problem, polish(problem, placeAt(misses, problem.starts[0] as number[]), scale));
}

function multipliers(columns: readonly ArrayLike<number>[], readings: ArrayLike<number>): number[] {
  const rows = Array.from({ length: readings.length }, (_, row) =>
    Float64Array.from(columns, (column) => column[row] as number),
  );
  const wanted = Float64Array.from(readings, (value) => -value);
  return solveDamped(rows, wanted, 0) ?? solveDamped(rows, wanted, HARDLY) ?? columns.map(() => 0);
}

function missed(
  columns: readonly ArrayLike<number>[],
  readings: ArrayLike<number>,
  times: readonly number[],
): Float64Array {
  return Float64Array.from(readings, (value, row) => {
    let sum = -value;
    for (let at = 0; at < columns.length; at++)
      sum += (times[at] as number) * ((columns[at] as ArrayLike<number>)[row] as number);
    return sum;
  });
}
