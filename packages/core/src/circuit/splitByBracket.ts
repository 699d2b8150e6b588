import { closeBracket } from "../closeBracket.js";
import type { Split } from "./Split.js";

/**
 * The split of a flow over branches of any kind, found by closing a bracket on the shared drop: valves may stay shut,
 * heads may differ, and a branch may run backwards. Slower than Newton's method and unable to fail.
 *
 * @param split `total` says what to split; takes the answer: flows, shared drop and slope
 */
export function splitByBracket(split: Split): void {
  const { total } = split;
  split.settled = true;
  const [low, high] = bracket(split, total);
  if (low === -Infinity) {
    // Backward flow with a one-way valve in every branch: nothing drives it.
    split.flows.fill(0);
    split.drop = -Infinity;
    split.slope = Infinity;
    return;
  }
  const lowMiss = missAt(split, low, total);
  const highMiss = missAt(split, high, total);
  split.drop = low;
  if (lowMiss < 0 && highMiss > 0) {
    // What is left of the total falls as the drop grows.
    const left = (drop: number) => -missAt(split, drop, total);
    split.drop = closeBracket(left, { at: low, value: -lowMiss }, { at: high, value: -highMiss }, 2 ** -52).low;
  } else if (lowMiss < 0) split.drop = high;
  settle(split);
}

/** Drops at which the branches certainly carry too little and too much. */
function bracket({ runs, heads }: Split, total: number): [number, number] {
  let low = Infinity;
  let high = -Infinity;
  runs.forEach((run, at) => {
    const head = heads[at] as number;
    const alone = head + run.friction(total);
    // At rest a one-way branch needs its opening pressure to start, but holds at any drop below.
    const rest = head + run.friction(0);
    if (total < 0 && run.oneWay) {
      high = Math.max(high, rest);
      return;
    }
    low = Math.min(low, alone, rest, head);
    high = Math.max(high, alone, rest);
  });
  return low === Infinity ? [-Infinity, high] : [low, high];
}

/** How much more than the total the branches carry at a shared drop; leaves their flows. */
function missAt({ runs, heads, flows }: Split, drop: number, total: number): number {
  let sum = -total;
  runs.forEach((run, at) => {
    const flow = run.flowOfFriction(drop - (heads[at] as number));
    flows[at] = flow;
    sum += flow;
  });
  return sum;
}

/**
 * The last rounding of the drop can still be worth a noticeable flow where friction is tiny beside the heads. What is
 * left over is handed to the branches in proportion to how easily they take it.
 */
function settle(split: Split): void {
  const { runs, flows, slopes, total } = split;
  const left = -missAt(split, split.drop, total);
  let conductance = 0;
  runs.forEach((run, at) => {
    const flow = flows[at] as number;
    run.friction(flow);
    slopes[at] = flow === 0 && run.oneWay ? Infinity : run.slope;
    conductance += 1 / (slopes[at] as number);
  });
  if (conductance > 0 && conductance < Infinity) {
    flows.forEach((flow, at) => {
      flows[at] = flow + left / (slopes[at] as number) / conductance;
    });
  }
  split.slope = 1 / conductance;
}
