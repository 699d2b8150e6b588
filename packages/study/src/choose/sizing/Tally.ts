import type { Found, Picked } from "./SearchKinds.js";
import type { SizeFailure } from "./SizeAnswer.js";

/** What fails by one thing: how many, the first that did, and the one that came nearest to not failing. */
export interface Failed {
  count: number;
  readonly example: Picked;
  nearest: Picked;
  /** of the nearest; less is nearer */
  miss: number;
}

/** What a search has found so far, what the rest fails by, and how each was judged. */
export class Tally {
  readonly found: Found[] = [];
  readonly failed = new Map<SizeFailure, Failed>();
  /** ruled out with others, since what they begin with already fails */
  spared = 0;
  bySums = 0;
  byModel = 0;
  /** followed to the end of their life */
  lives = 0;
  /** judged or ruled out */
  done = 0;

  /** @param miss how far it is from not failing, in a measure of that failure's own */
  fail(by: SizeFailure, picked: Picked, count: number, miss: number): void {
    const known = this.failed.get(by);
    if (!known) this.failed.set(by, { count, example: picked, nearest: picked, miss });
    else {
      known.count += count;
      if (miss >= known.miss) return;
      known.miss = miss;
      known.nearest = picked;
    }
  }
}
