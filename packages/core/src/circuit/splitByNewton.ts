import type { Pace } from "../parts/law/index.js";
import type { Run } from "./Run.js";
import type { Split } from "./Split.js";

/** Steps smaller than this, relative, leave an error of their square: below rounding. */
const CLOSE = 1e-8;

/** The same where a slope may jump close by and a small step proves little. */
const KINKED_CLOSE = 2 ** -48;

/**
 * The split of a flow over branches with friction only, by Newton's method on all branch flows and the shared drop at
 * once. Every round meets the total exactly, so mass is kept whatever the round's error in the drops.
 *
 * @param split `total` says what to split; its flows are replaced
 * @returns whether it closed in; if not, the split is not to be used
 */
export function splitByNewton(split: Split): boolean {
  const { flows, total } = split;
  if (total === 0) return splitAtRest(split);
  for (let at = 0; at < flows.length; at++) flows[at] = total / flows.length;
  for (let round = 0; round < 40; round++) {
    newtonStep(split, round === 0 ? "first step" : "next step");
    if (split.settled) return true;
  }
  return false;
}

/**
 * One round of Newton's method from the flows in `split`, which must add up to something of the total's sign.
 * Leaves flows, shared drop, slope, and whether this settled the split to rounding.
 */
export function newtonStep(split: Split, pace: Pace): void {
  const { runs, flows, drops, slopes, total } = split;
  let conductance = 0;
  let carried = 0;
  let settled = true;
  let kinked = false;
  for (let at = 0; at < runs.length; at++) {
    const run = runs[at] as Run;
    const flow = flows[at] as number;
    run.flow = flow;
    run.update(pace);
    if (!run.settled) settled = false;
    if (run.kinked) kinked = true;
    drops[at] = run.drop;
    slopes[at] = run.slope;
    conductance += 1 / run.slope;
    carried += flow - run.drop / run.slope;
  }
  const shared = (total - carried) / conductance;
  const close = kinked ? KINKED_CLOSE : CLOSE;
  for (let at = 0; at < runs.length; at++) {
    const flow = flows[at] as number;
    const next = flow + (shared - (drops[at] as number)) / (slopes[at] as number);
    // With friction only, every branch flows the way the total does.
    const kept = next * total > 0 ? next : flow / 8;
    if (!(Math.abs(kept - flow) <= close * Math.abs(kept)) || kept !== next) settled = false;
    flows[at] = kept;
  }
  split.drop = shared;
  split.slope = 1 / conductance;
  split.settled = settled;
  split.kinked = kinked;
}

/** No total, no flow anywhere; the slope is that of the branches at rest. */
function splitAtRest(split: Split): boolean {
  let conductance = 0;
  split.runs.forEach((run, at) => {
    run.friction(0);
    conductance += 1 / run.slope;
    split.flows[at] = 0;
  });
  split.drop = 0;
  split.slope = 1 / conductance;
  split.settled = true;
  split.kinked = false;
  return true;
}
