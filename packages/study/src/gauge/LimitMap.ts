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
  /** resistances between which it is: at the one all holds, at the other no more */
  readonly between: readonly [number, number];
  readonly by: LifeEnd;
  /** K */
  readonly temperature: number;
}

/** Where limits are met at one demand. */
export interface MetAtDemand {
  /** over the file's */
  readonly demand: number;
  readonly first: Met;
  /** by every limit at every point */
  readonly all: readonly Met[];
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
  private readonly met: readonly MetAtDemand[];

  constructor(facts: LimitFacts) {
    this.met = DEMANDS.map((demand) => metAt(facts, demand));
  }

  /** @param demand over the file's */
  at(demand: number): Met {
    const [one, other] = this.around(demand);
    const [left, right] = [one.first, other.first];
    const part = (demand - one.demand) / (other.demand - one.demand);
    const near = part < 0.5 ? left : right;
    if (left.ratio === Infinity || right.ratio === Infinity) return near;
    return { ...near, ratio: Math.max(1, left.ratio + part * (right.ratio - left.ratio)) };
  }

  /** What was worked out at the demands on either side. */
  around(demand: number): readonly [MetAtDemand, MetAtDemand] {
    let place = 0;
    while (place < DEMANDS.length - 2 && demand > (DEMANDS[place + 1] as number)) place++;
    return [this.met[place] as MetAtDemand, this.met[place + 1] as MetAtDemand];
  }
}

function metAt(facts: LimitFacts, demand: number): MetAtDemand {
  const all = facts.points.flatMap((point) => judged(facts, point, demand));
  const unmet: Met = {
    ratio: Infinity,
    between: [Infinity, Infinity],
    by: { kind: "limit", limit: "vacuum at change" },
    temperature: facts.points[0]?.temperature ?? 0,
  };
  return { demand, first: all.reduce((first, one) => (one.ratio < first.ratio ? one : first), unmet), all };
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
    const between = usedUp(at);
    return { ratio: (between[0] + between[1]) / 2, between, by, temperature };
  });
}

/** Halvings of the stretch within which a margin is used up: a hundredth of a part of it is near enough. */
const HALVINGS = 7;

/** The stretch in which the least resistance lies at which a margin is used up; Infinity where it never is. */
function usedUp(margin: (ratio: number) => number): readonly [number, number] {
  const first = tableRatios.findIndex((ratio) => !(margin(ratio) > 0));
  if (first < 0) return [Infinity, Infinity];
  if (first === 0) return [1, 1];
  let [low, high] = [tableRatios[first - 1] as number, tableRatios[first] as number];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (margin(middle) > 0) low = middle;
    else high = middle;
  }
  return [low, high];
}
