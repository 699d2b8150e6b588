import type { Run } from "./Run.js";

/** The working figures of a bank's split, kept so that solving it again allocates nothing. */
export class Split {
  /** the branches that can pass flow */
  readonly runs: readonly Run[];
  /** what each needs at no flow besides its own friction, Pa */
  readonly heads: Float64Array;
  /** flow of each, m3/s */
  readonly flows: Float64Array;
  /** friction of each, Pa */
  readonly drops: Float64Array;
  /** derivative of each drop, Pa s/m3 */
  readonly slopes: Float64Array;
  /** flow to split, m3/s */
  total = 0;
  /** the drop they share, Pa, and its derivative by the total flow, Pa s/m3 */
  drop = 0;
  slope = 0;
  /** whether flows and drop are the split to rounding */
  settled = false;

  constructor(runs: readonly Run[], heads: readonly number[]) {
    this.runs = runs;
    this.heads = Float64Array.from(heads);
    this.flows = new Float64Array(runs.length);
    this.drops = new Float64Array(runs.length);
    this.slopes = new Float64Array(runs.length);
  }
}
