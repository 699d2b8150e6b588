import type { Run } from "./Run.js";
import type { BracketEnd, Split } from "./Split.js";

/** One unit in the last place, relative. */
const ULP = 2 ** -52;

/** Ends no further apart than this, relative, count as one drop: rounding. */
const CLOSE = 8 * ULP;

/**
 * The split of a flow over branches of any kind, found by closing a bracket on the shared drop: valves may stay shut,
 * heads may differ, a branch may run backwards, and a line may stand on the step of the early passage. Slower than
 * Newton's method on the flows, and unable to fail.
 *
 * One rounding of the drop can be worth more than the whole flow where friction is tiny beside heads or opening
 * pressures. So the answer is taken between the flows at both ends of the closed bracket: mass is kept, no branch leaves
 * what its drop allows, and equal branches carry the same.
 *
 * @param split `total` says what to split; takes the answer: flows, shared drop and slope
 */
export function splitByBracket(split: Split): void {
  const { runs, total, below, above } = split;
  split.settled = true;
  split.kinked = true;
  const carriers = total < 0 ? runs.filter((run) => !run.oneWay).length : runs.length;
  if (total <= 0 && runs.every((run) => run.oneWay)) {
    rest(split);
    return;
  }
  let drop = bracket(split, total / carriers);
  for (let round = 0; round < 300 && widthOf(split) > CLOSE; round++) {
    // Turned round, so that a drop that is not a number is replaced too. A long search halves every other round.
    if (!(drop > below.drop && drop < above.drop) || (round > 12 && round % 2 === 0)) drop = middle(below, above);
    if (!(drop > below.drop && drop < above.drop)) break;
    const end = workOut(split, drop);
    // One rounding further than Newton's step, so that the other end comes close as well.
    const further = 2 * ULP * Math.abs(drop);
    drop += (total - end.carried) / end.ease + (end === below ? further : -further);
  }
  if (Number.isNaN(below.carried)) workOut(split, below.drop, below);
  if (Number.isNaN(above.carried)) workOut(split, above.drop, above);
  takeBetween(split);
}

/** A check valve in every branch and nothing to carry forward. */
function rest(split: Split): void {
  const { runs, heads, flows, total } = split;
  const openings = runs.map((run, at) => (heads[at] as number) + run.friction(0));
  flows.fill(0);
  // At no flow the first of them is about to open; nothing drives any of them backwards.
  split.drop = total < 0 ? -Infinity : Math.min(...openings);
  split.slope = Infinity;
}

/**
 * Sets the ends to drops at which the branches certainly carry too little and too much: where every branch that can carry
 * its even share carries less than that, or more.
 *
 * @returns the drop Newton's method would try from the even share
 */
function bracket({ runs, heads, flows, total, below, above }: Split, share: number): number {
  let low = Infinity;
  let high = -Infinity;
  let carried = 0;
  let ease = 0;
  runs.forEach((run, at) => {
    const head = heads[at] as number;
    const rests = share < 0 && run.oneWay;
    const drop = head + run.friction(rests ? 0 : share);
    low = Math.min(low, drop);
    flows[at] = share;
    if (rests) return;
    high = Math.max(high, drop);
    carried += share - drop / run.slope;
    ease += 1 / run.slope;
  });
  // A rounding to spare at either end, where a share may be smaller than the rounding of its drop.
  below.drop = low - 2 * ULP * Math.abs(low);
  above.drop = high + 2 * ULP * Math.abs(high);
  below.carried = Number.NaN;
  above.carried = Number.NaN;
  return (total - carried) / ease;
}

/** Works out what the branches carry at a drop, and puts it at the end of the bracket where it belongs. */
function workOut(split: Split, drop: number, side?: BracketEnd): BracketEnd {
  const { runs, heads, flows, total } = split;
  let carried = 0;
  let ease = 0;
  for (let at = 0; at < runs.length; at++) {
    const run = runs[at] as Run;
    const flow = run.flowOfFriction(drop - (heads[at] as number), flows[at]);
    flows[at] = flow;
    carried += flow;
    ease += 1 / run.slope;
  }
  const end = side ?? (carried < total ? split.below : split.above);
  end.drop = drop;
  end.carried = carried;
  end.ease = ease;
  end.flows.set(flows);
  return end;
}

/** Width of the bracket, relative to its larger end. */
function widthOf({ below, above }: Split): number {
  return (above.drop - below.drop) / Math.max(Math.abs(below.drop), Math.abs(above.drop));
}

/** Middle of the bracket: the geometric one while its ends have one sign and differ in size. */
function middle(below: BracketEnd, above: BracketEnd): number {
  const [low, high] = [below.drop, above.drop];
  if (low > 0 && high > 4 * low) return Math.sqrt(low) * Math.sqrt(high);
  if (high < 0 && low < 4 * high) return -Math.sqrt(-low) * Math.sqrt(-high);
  return low + (high - low) / 2;
}

/** The split between the ends of the closed bracket at which the branches carry the total. */
function takeBetween(split: Split): void {
  const { flows, total, below, above } = split;
  const gap = above.carried - below.carried;
  const share = gap > 0 ? Math.min(1, Math.max(0, (total - below.carried) / gap)) : 0;
  for (let at = 0; at < flows.length; at++) {
    const low = below.flows[at] as number;
    flows[at] = low + share * ((above.flows[at] as number) - low);
  }
  split.drop = below.drop + share * (above.drop - below.drop);
  split.slope = 1 / (below.ease + share * (above.ease - below.ease));
}
