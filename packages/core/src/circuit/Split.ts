import type { Run } from "./Run.js";

/** One end of the bracket in which the shared drop is searched. */
export interface BracketEnd {
  /** Pa */
  drop: number;
  /** by all branches together at that drop, m3/s; NaN before it is worked out */
  carried: number;
  /** derivative of `carried` by the drop, m3/s per Pa */
  ease: number;
  /** of each branch at that drop, m3/s */
  readonly flows: Float64Array;
}

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
  /** whether the slope may jump close by, since a branch rests or a line stands on a step */
  kinked = false;
  /** where the branches carry too little, and enough; see `splitByBracket` */
  readonly below: BracketEnd;
  readonly above: BracketEnd;

  constructor(runs: readonly Run[], heads: readonly number[]) {
    this.runs = runs;
    this.heads = Float64Array.from(heads);
    this.flows = new Float64Array(runs.length);
    this.drops = new Float64Array(runs.length);
    this.slopes = new Float64Array(runs.length);
    this.below = { drop: 0, carried: 0, ease: 0, flows: new Float64Array(runs.length) };
    this.above = { drop: 0, carried: 0, ease: 0, flows: new Float64Array(runs.length) };
  }
}
