/**
 * Weighted misses of a model at some parameters, each over its standard deviation; what is least is their sum of squares.
 * Every call gives an array of its own.
 */
export type Misses = (parameters: readonly number[]) => Float64Array;

/** A problem of least squares. */
export interface LeastSquares {
  readonly misses: Misses;
  /** where to look from; one or more */
  readonly starts: readonly (readonly number[])[];
  /** parameters stay within; all numbers when left out */
  readonly lower?: readonly number[];
  readonly upper?: readonly number[];
}

/** What was found. */
export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  /** sum of squared misses */
  readonly sum: number;
  readonly misses: Float64Array;
  /** derivative of each miss by each parameter: a row a miss */
  readonly slopes: readonly Float64Array[];
  /** inverse of the slopes' product with themselves; times the misses' variance it is the parameters' covariance */
  readonly covariance: readonly (readonly number[])[];
  /** misses less parameters */
  readonly freedom: number;
}
