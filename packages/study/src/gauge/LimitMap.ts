import { filterProfiles, fuelState, type LifeEnd, type Limits, marginsOf, SupplyModel } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import { supplyOf } from "../check/supplyOf.js";
import { tableRatios } from "./RatioTable.js";

/** A point at which limits are judged. */
export interface LimitPoint {
  /** K */
  readonly temperature: number;
}

/** The resistance over clean at which a limit is met, and which. */
export interface Met {
  /** of the leading element; Infinity where none is met */
  readonly ratio: number;
  readonly by: LifeEnd;
  /** K */
  readonly temperature: number;
}

/** What limits are found from. */
export interface LimitFacts {
  readonly built: Built;
  readonly limits: Limits;
  readonly points: readonly LimitPoint[];
  readonly terminals: ReadonlyMap<string, number>;
  /** resistance over clean of every element at that of the lead */
  readonly restrictions: (ratio: number) => ReadonlyMap<string, number>;
}

/** Demands over the file's at which it is worked out. */
const DEMANDS = [0.75, 0.85, 1, 1.15, 1.35] as const;

/**
 * The resistance at which the first limit is met at full demand and the worst duty point, tanks low, for any error of the
 * file's demand: as `life` judges it, worked out at a few demands and taken straight between.
 */
export class LimitMap {
  private readonly met: readonly Met[];

  constructor(facts: LimitFacts) {
    this.met = DEMANDS.map((demand) => metAt(facts, demand));
  }

  /** @param demand over the file's */
  at(demand: number): Met {
    let place = 0;
    while (place < DEMANDS.length - 2 && demand > (DEMANDS[place + 1] as number)) place++;
    const [left, right] = [this.met[place] as Met, this.met[place + 1] as Met];
    const from = DEMANDS[place] as number;
    const part = (demand - from) / ((DEMANDS[place + 1] as number) - from);
    const near = part < 0.5 ? left : right;
    if (left.ratio === Infinity || right.ratio === Infinity) return near;
    return { ...near, ratio: Math.max(1, left.ratio + part * (right.ratio - left.ratio)) };
  }
}

function metAt(facts: LimitFacts, demand: number): Met {
  const points = facts.points.map((point) => judged(facts, point, demand));
  const unmet: Met = {
    ratio: Infinity,
    by: { kind: "limit", limit: "vacuum at change" },
    temperature: facts.points[0]?.temperature ?? 0,
  };
  return points.flat().reduce((first, one) => (one.ratio < first.ratio ? one : first), unmet);
}

/** Each limit at one point: the resistance at which its margin is used up. */
function judged(facts: LimitFacts, { temperature }: LimitPoint, factor: number): Met[] {
  const { built, limits, terminals, restrictions } = facts;
  const fuel = fuelState(built.fuel, { temperature });
  const model = new SupplyModel(supplyOf(built), { fuel, passage: "early", end: "middle" });
  const { burn, return: back } = built.demand(fuel);
  const demand = factor * (burn + back);
  const margins = [...marginsOf(model, limits)]
    .filter(([limit]) => limit !== "vacuum clean")
    .map(([limit, margin]) => ({ by: { kind: "limit", limit } as LifeEnd, margin: () => margin(demand) }));
  const drops = [...terminals].map(([element, terminal]) => ({
    by: { kind: "terminal drop", element } as LifeEnd,
    margin: () =>
      terminal - (filterProfiles(model.descent(demand)).find(({ part }) => part.name === element)?.drop ?? 0),
  }));
  return [...margins, ...drops].map(({ by, margin }): Met => {
    const at = (ratio: number) => {
      model.restrict(restrictions(ratio));
      return margin();
    };
    return { ratio: usedUp(at), by, temperature };
  });
}

/** Halvings of the stretch within which a margin is used up: a hundredth of a part of it is near enough. */
const HALVINGS = 7;

/** The least resistance at which a margin is used up; Infinity where it never is. */
function usedUp(margin: (ratio: number) => number): number {
  const first = tableRatios.findIndex((ratio) => !(margin(ratio) > 0));
  if (first < 0) return Infinity;
  if (first === 0) return 1;
  let [low, high] = [tableRatios[first - 1] as number, tableRatios[first] as number];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (margin(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
