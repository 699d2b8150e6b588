/** Flows that differ by less than this, over the total, split alike: no more than the search for a split rounds. */
const ALIKE = 1e-12;

/** A split of flows and what it led to. */
export interface KnownSplit {
  /** flows over the total, in an order of the caller's */
  readonly split: number[];
  /** what each filter catches, kg/s over a demand of 1 m3/s, by name */
  readonly rates: Map<string, number>;
}

/**
 * What splits of flows led to: the last one worked out, whichever load it was, and the last of each load. Where flows are
 * linear all loads split alike; where they are not, each splits as it did before as long as nothing fills.
 */
export class SplitMemory {
  private readonly known: KnownSplit[] = [];
  private readonly last: KnownSplit = { split: [], rates: new Map() };

  /** What is known of a split of a load, or null where it has to be worked out; then `keep` takes what came of it. */
  find(split: readonly number[], load: number): KnownSplit | null {
    if (alike(split, this.last.split)) return this.last;
    const own = this.known[load];
    return own && alike(split, own.split) ? own : null;
  }

  keep(split: readonly number[], rates: ReadonlyMap<string, number>, load: number): void {
    const own = this.known[load] ?? { split: [], rates: new Map() };
    this.known[load] = own;
    for (const one of [own, this.last]) {
      one.split.length = split.length;
      for (let at = 0; at < split.length; at++) one.split[at] = split[at] as number;
      for (const [name, rate] of rates) one.rates.set(name, rate);
    }
  }
}

function alike(one: readonly number[], other: readonly number[]): boolean {
  if (one.length !== other.length) return false;
  for (let at = 0; at < one.length; at++) {
    // Turned round: a share that is no number is never like another.
    if (!(Math.abs((one[at] as number) - (other[at] as number)) <= ALIKE)) return false;
  }
  return true;
}
