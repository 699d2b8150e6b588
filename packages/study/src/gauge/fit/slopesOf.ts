import type { Misses } from "./LeastSquares.js";

/** Step of a central difference over a parameter's size: where rounding and curvature cost alike. */
const STEP = Math.cbrt(Number.EPSILON);

/**
 * Derivatives of misses by parameters from central differences, a row a miss: good to some ten figures, and to some four for
 * a parameter that stands at 0, as at a start.
 */
export function slopesOf(misses: Misses, parameters: readonly number[], scale: readonly number[]): Float64Array[] {
  const columns = parameters.map((value, at) => {
    const step = STEP * Math.max(Math.abs(value), 1e-6 * (scale[at] ?? 1));
    const moved = (by: number) => misses(parameters.map((one, place) => (place === at ? one + by : one)));
    const [up, down] = [moved(step), moved(-step)];
    // What was really stepped, after rounding.
    const width = value + step - (value - step);
    return up.map((one, row) => (one - (down[row] as number)) / width);
  });
  const rows = columns[0]?.length ?? 0;
  return Array.from({ length: rows }, (_, row) => Float64Array.from(columns, (column) => column[row] as number));
}
