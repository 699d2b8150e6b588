import type { Run } from "./Run.js";
import type { Split } from "./Split.js";

/** Change of a flow in one round, relative, at which it is settled: slopes may jump, so a small step proves little. */
const CLOSE = 2 ** -48;

/** Rounds after which the bracket is the better way. */
const MOST_ROUNDS = 24;

/**
 * The split of a flow over branches of which some may rest behind check valves and some may start at heads of their own:
 * Newton's method on the flows of the open branches and the shared drop. A branch whose valve would run backward is taken
 * out, one whose valve the shared drop would open is let in, until nothing changes any more.
 *
 * Right wherever it settles, and where it does not, `splitByBracket` is there: it settles on all but a few per thousand.
 *
 * @param split `total` says what to split; its flows are replaced, or where `warm` taken as a start
 * @returns whether it settled; if not, the split is not to be used
 */
export function splitByOpenSet(split: Split, warm: boolean): boolean {
  if (split.total === 0 && isLevel(split)) return rest(split);
  if (!warm) start(split);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    step(split);
    if (!Number.isFinite(split.drop)) return false;
    if (split.settled) return true;
  }
  return false;
}

/** Whether all branches start at one head, so that nothing moves where nothing is to be carried. */
function isLevel({ heads }: Split): boolean {
  for (let at = 0; at < heads.length; at++) if (heads[at] !== 0) return false;
  return true;
}

/** No total, no flow anywhere: two-way branches at rest hold what drop there is at none. */
function rest(split: Split): boolean {
  const { runs, flows } = split;
  let conductance = 0;
  for (let at = 0; at < runs.length; at++) {
    const run = runs[at] as Run;
    flows[at] = 0;
    if (run.oneWay) continue;
    run.flow = 0;
    run.update("whole");
    conductance += 1 / run.slope;
  }
  split.drop = 0;
  split.slope = 1 / conductance;
  split.settled = true;
  split.kinked = true;
  return conductance > 0;
}

/** An even share for every branch that can carry flow this way. */
function start({ runs, flows, total }: Split): void {
  let carriers = 0;
  for (let at = 0; at < runs.length; at++) if (total > 0 || !(runs[at] as Run).oneWay) carriers += 1;
  for (let at = 0; at < runs.length; at++) {
    flows[at] = total <= 0 && (runs[at] as Run).oneWay ? 0 : total / carriers;
  }
}

function step(split: Split): void {
  const { runs, heads, flows, drops, slopes, total } = split;
  // Everything is counted from the least drop, so that mass is kept even where flows are worth less than its rounding.
  let least = Infinity;
  for (let at = 0; at < runs.length; at++) {
    const run = runs[at] as Run;
    if (isResting(run, flows[at] as number)) continue;
    run.flow = flows[at] as number;
    run.update("whole");
    const drop = (heads[at] as number) + run.drop;
    drops[at] = drop;
    slopes[at] = run.slope;
    least = Math.min(least, drop);
  }
  let conductance = 0;
  let missing = total;
  for (let at = 0; at < runs.length; at++) {
    const flow = flows[at] as number;
    if (isResting(runs[at] as Run, flow)) continue;
    const slope = slopes[at] as number;
    conductance += 1 / slope;
    missing += ((drops[at] as number) - least) / slope - flow;
  }
  const over = missing / conductance;
  let settled = true;
  for (let at = 0; at < runs.length; at++) {
    const run = runs[at] as Run;
    const flow = flows[at] as number;
    if (isResting(run, flow)) {
      const driving = least + over - (heads[at] as number);
      if (driving <= run.rest) continue;
      flows[at] = run.flowOfFriction(driving);
      settled = false;
      continue;
    }
    const next = flow + (over - ((drops[at] as number) - least)) / (slopes[at] as number);
    const kept = run.oneWay && !(next > 0) ? 0 : next;
    if (!(Math.abs(kept - flow) <= CLOSE * Math.abs(kept)) || kept !== next) settled = false;
    flows[at] = kept;
  }
  split.drop = least + over;
  split.slope = 1 / conductance;
  split.settled = settled;
  split.kinked = true;
}

/** Whether a branch is held shut by its valve and takes no part. */
function isResting(run: Run, flow: number): boolean {
  return run.oneWay && flow === 0;
}
