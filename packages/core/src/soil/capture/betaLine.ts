import type { BetaPoint } from "./Capture.js";

/** Natural logarithm of beta at a size, m. */
export type BetaLine = (size: number) => number;

/**
 * Log beta straight in size between points. Below the first, the slope of the first two down to beta 1; but where that
 * would leave beta above 1 at size 0, and for one point alone, the straight line to beta 1 at size 0. Above the last,
 * held.
 *
 * A published element with beta 2 at 10 um and 75 at 25 um so has 5.26 at 14 and 22.4 at 20 um.
 *
 * @param points by rising size
 * @param steeper how many times as steep the line below the first point is; for the band of a single point
 */
export function betaLine(points: readonly BetaPoint[], steeper = 1): BetaLine {
  const sizes = points.map(({ size }) => size);
  const logs = points.map(({ beta }) => Math.log(beta));
  const [firstSize = 0, secondSize] = sizes;
  const [firstLog = 0, secondLog = 0] = logs;
  const next = secondSize === undefined ? 0 : (secondLog - firstLog) / (secondSize - firstSize);
  const start = Math.max(next, firstLog / firstSize) * steeper;
  const last = points.length - 1;
  return (size) => {
    if (size <= firstSize) return Math.max(0, firstLog - start * (firstSize - size));
    const above = sizes.findIndex((one) => one >= size);
    if (above === -1) return logs[last] ?? 0;
    const [size0 = 0, size1 = 0] = [sizes[above - 1], sizes[above]];
    const [log0 = 0, log1 = 0] = [logs[above - 1], logs[above]];
    return log0 + ((log1 - log0) * (size - size0)) / (size1 - size0);
  };
}
