import type { OwnLaw } from "../parts/law/index.js";
import type { Run } from "./Run.js";
import { Split } from "./Split.js";
import { splitByBracket } from "./splitByBracket.js";
import { splitByNewton } from "./splitByNewton.js";

/**
 * A bank under one fuel state: how a flow splits over its branches, and the friction they share.
 *
 * Branches may start at different heads (separate tanks); `heads` then says what each needs at no flow, Pa, and the
 * shared drop is relative to the same zero. In an ordinary bank the common head is kept by the series around it.
 */
export class Bank implements OwnLaw {
  slope = 0;
  /** whether nothing can pass at all */
  readonly shut: boolean;
  private readonly size: number;
  private readonly openAt: readonly number[];
  private readonly split: Split;
  private readonly simple: boolean;
  private total = 0;

  constructor(runs: readonly Run[], heads: readonly number[] = runs.map(() => 0)) {
    this.size = runs.length;
    this.openAt = runs.flatMap((run, at) => (run.shut ? [] : [at]));
    this.shut = this.openAt.length === 0;
    const openRuns = runs.filter((run) => !run.shut);
    const openHeads = heads.filter((_, at) => this.openAt.includes(at));
    this.split = new Split(openRuns, openHeads);
    // One-way valves and unequal heads may leave a branch at rest, which Newton's method cannot see coming.
    this.simple = openRuns.every((run) => !run.oneWay) && openHeads.every((head) => head === openHeads[0]);
  }

  /** Shared drop, Pa, at a total flow, m3/s; leaves the derivative in `slope` and the split for `flows`. */
  at(total: number, warm = false): number {
    if (this.shut) {
      this.slope = Infinity;
      return total < 0 ? -Infinity : Infinity;
    }
    const from = warm && this.simple && total !== 0 ? this.total : 0;
    this.total = total;
    if (!(this.simple && splitByNewton(this.split, total, from))) splitByBracket(this.split, total);
    this.slope = this.split.slope;
    return this.split.drop;
  }

  /** Flow of each branch at a total flow, m3/s; a shut branch carries 0. */
  flows(total: number): Float64Array {
    this.at(total);
    const flows = new Float64Array(this.size);
    this.openAt.forEach((at, place) => {
      flows[at] = this.split.flows[place] ?? 0;
    });
    return flows;
  }
}
