/** How far a figure of a system may lie from the one it holds. */
export interface SystemSpread {
  /** where the figure stands in the system, such as ["deliveredFuel", "solids"] */
  readonly path: readonly (string | number)[];
  /** ends, in the figure's own SI unit, low under high */
  readonly low: number;
  readonly high: number;
  /**
   * The place in `spreads` of the first of several figures that are one unknown, on each of them: figures that come of
   * one text of the file, as those of two elements of one product do. Left out of a figure that stands alone.
   */
  readonly group?: number;
}
