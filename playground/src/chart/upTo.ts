/**
 * Ends of an upright axis: from 0, or the least figure, to a bit over all figures and limits.
 *
 * @param most whether the limits are the most allowed; then figures far beyond twice the highest are cut off
 */
export function upTo(
  values: readonly number[],
  limits: readonly number[],
  most: boolean,
): { from: number; to: number } {
  const top = Math.max(...values, ...limits, 0);
  const high = most && limits.length > 0 ? Math.min(top, 2 * Math.max(...limits)) : top;
  return { from: Math.min(0, ...values), to: Math.max(high * 1.08, 1e-9) };
}
