import type { Split } from "./Split.js";

/** Steps smaller than this, relative, leave an error of their square: below rounding. */
const CLOSE = 1e-8;

/**
 * The split of a flow over branches with friction only, by Newton's method on all branch flows and the shared drop at
 * once. Every round meets the total exactly, so mass is kept whatever the round's error in the drops.
 *
 * @param split flows may hold an earlier split of `from`
 * @param total flow to split, m3/s
 * @param from total of the split in `flows` to start from; 0 to start evenly
 * @returns whether it closed in; if not, the split is not to be used
 */
export function splitByNewton(split: Split, total: number, from: number): boolean {
  const { runs, flows, drops, slopes, heads } = split;
  const count = runs.length;
  for (let at = 0; at < count; at++) {
    flows[at] = from === 0 ? total / count : ((flows[at] as number) / from) * total;
  }
  for (let round = 0; round < 40; round++) {
    let conductance = 0;
    let carried = 0;
    for (let at = 0; at < count; at++) {
      const run = runs[at] as Split["runs"][number];
      const flow = flows[at] as number;
      const drop = run.friction(flow, round > 0);
      const perSlope = 1 / run.slope;
      drops[at] = drop;
      slopes[at] = run.slope;
      conductance += perSlope;
      carried += flow - drop * perSlope;
    }
    if (!(conductance > 0 && conductance < Infinity)) return total === 0 && atRest(split);
    const shared = (total - carried) / conductance;
    let far = total === 0;
    let lost = false;
    for (let at = 0; at < count; at++) {
      const flow = flows[at] as number;
      const next = flow + (shared - (drops[at] as number)) / (slopes[at] as number);
      // With friction only, every branch flows the way the total does.
      const kept = next * total > 0 ? next : flow / 8;
      if (kept !== next) lost = true;
      if (Math.abs(kept - flow) > CLOSE * Math.abs(kept)) far = true;
      flows[at] = kept;
    }
    if (total === 0) return atRest(split);
    if (!far && !lost) {
      split.drop = shared + (heads[0] as number);
      split.slope = 1 / conductance;
      return true;
    }
  }
  return false;
}

/** No total, no flow anywhere; the slope is that of the branches at rest. */
function atRest(split: Split): boolean {
  let conductance = 0;
  split.runs.forEach((run, at) => {
    run.friction(0);
    conductance += 1 / run.slope;
    split.flows[at] = 0;
  });
  split.drop = split.heads[0] as number;
  split.slope = 1 / conductance;
  return true;
}
