import jStat from "jstat";

/**
 * How many standard errors a share of Student's distribution lies below.
 *
 * Agrees with printed tables to their last figure (tests/published/gauge).
 *
 * @param share 0 to 1, both excluded
 * @param freedom degrees of freedom, more than 0
 * @example
 * studentQuantile(0.95, 10) // 1.8125
 */
export function studentQuantile(share: number, freedom: number): number {
  return jStat.studentt.inv(share, freedom);
}
