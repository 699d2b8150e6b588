/**
 * A part, or a whole bank, whose drop is not a sum of constant, linear and quadratic terms.
 *
 * `at` returns the drop and leaves its derivative in `slope`. Drops never fall as flow grows. `warm` allows a bank to
 * start from its last split: the caller is closing in on one answer and flows have moved little.
 */
export interface OwnLaw {
  /** d drop / d flow at the flow `at` was last asked for, Pa s/m3 */
  slope: number;
  /**
   * @param flow m3/s, of either sign
   * @returns drop, Pa
   */
  at(flow: number, warm?: boolean): number;
}
