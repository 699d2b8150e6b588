import { fuelState, type LimitName, marginsOf, SupplyModel } from "@thirstline/core";
import { build, type System } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { supplyOf } from "../check/supplyOf.js";
import { type LimitFacts, LimitMap } from "./LimitMap.js";
import { tableRatios } from "./RatioTable.js";

const COLD = 263.15;
const names = ["prefilter A", "prefilter B"];
const suction = (ratio: number) => new Map(names.map((name) => [name, ratio]));
const factsOf = (more: Partial<LimitFacts> = {}, system: System = demoSystem("heron")): LimitFacts => {
  const built = build(system);
  return {
    built,
    limits: built.limits,
    points: [{ temperature: COLD }],
    terminals: new Map(),
    restrictions: suction,
    ...more,
  };
};
const modelAt = ({ built }: LimitFacts, temperature: number) => {
  const fuel = fuelState(built.fuel, { temperature });
  const { burn, return: back } = built.demand(fuel);
  return { full: burn + back, model: new SupplyModel(supplyOf(built), { fuel, passage: "early", end: "middle" }) };
};
/** How far from a limit the file's supply is, with its prefilters so restricted. */
const marginAt = (facts: LimitFacts, limit: LimitName, demand: number, ratio: number, temperature = COLD) => {
  const { full, model } = modelAt(facts, temperature);
  model.restrict(facts.restrictions(ratio));
  return marginsOf(model, facts.limits).get(limit)?.(demand * full) ?? Number.NaN;
};

test("new LimitMap(facts).at(1) is where the first limit is met, and which", () => {
  const facts = factsOf();
  const met = new LimitMap(facts).at(1);
  expect(met.temperature).toBe(COLD);
  if (met.by.kind !== "limit") throw new Error("a limit");
  const [low, high] = met.between;
  expect(marginAt(facts, met.by.limit, 1, low)).toBeGreaterThan(0);
  expect(marginAt(facts, met.by.limit, 1, high)).toBeLessThanOrEqual(0);
  expect(met.ratio).toBeCloseTo((low + high) / 2, 9);
  for (const limit of ["vacuum at change", "feed pressure", "vapour", "pump capacity"] as const) {
    expect(marginAt(facts, limit, 1, low), limit).toBeGreaterThan(0);
  }
});

test("new LimitMap(facts) finds each limit to a 128th part of a stretch of its table, seven halvings", () => {
  const { all } = new LimitMap(factsOf({ points: [{ temperature: COLD }, { temperature: 293.15 }] })).around(1)[0];
  const met = all.filter(({ ratio }) => ratio > 1 && ratio < Infinity);
  expect(met.length).toBeGreaterThan(1);
  for (const { between } of met) {
    const after = tableRatios.findIndex((ratio) => ratio > between[0]);
    const stretch = (tableRatios[after] ?? 0) - (tableRatios[after - 1] ?? 0);
    expect((128 * (between[1] - between[0])) / stretch).toBeCloseTo(1, 9);
  }
});

test("new LimitMap(facts) does not ask the limit for clean elements", () => {
  const { all } = new LimitMap(factsOf()).around(1)[0];
  const limits = all.map(({ by }) => (by.kind === "limit" ? by.limit : by.kind));
  expect(limits).toContain("vacuum at change");
  expect(limits).not.toContain("vacuum clean");
});

test("new LimitMap(facts) judges every point, and the worst counts", () => {
  const points = [{ temperature: 293.15 }, { temperature: COLD }, { temperature: 281.15 }];
  const map = new LimitMap(factsOf({ points }));
  expect(map.at(1)).toEqual(new LimitMap(factsOf()).at(1));
  const [one] = map.around(1);
  expect(new Set(one.all.map(({ temperature }) => temperature))).toEqual(new Set([293.15, COLD, 281.15]));
  expect(one.first.ratio).toBe(Math.min(...one.all.map(({ ratio }) => ratio)));
});

test("new LimitMap(facts) asks each element's terminal drop too", () => {
  const facts = factsOf({ terminals: new Map([["prefilter B", 9e3]]) });
  const met = new LimitMap(facts).at(1);
  expect(met.by).toEqual({ kind: "terminal drop", element: "prefilter B" });
  const dropAt = (ratio: number) => {
    const { full, model } = modelAt(facts, COLD);
    model.restrict(suction(ratio));
    const clean = model.vacuum(full);
    // Both branches are alike, so that what one costs more all of the suction does.
    model.restrict(suction(1));
    return clean - model.vacuum(full);
  };
  const [low, high] = met.between;
  const more = dropAt(high) - dropAt(low);
  expect(more).toBeGreaterThan(0);
  expect(more).toBeLessThan(500);
  // An element that the file does not have drops nothing.
  const never = new LimitMap(factsOf({ terminals: new Map([["nobody's", 9e3]]) }));
  expect(never.around(1)[0].all.find(({ by }) => by.kind === "terminal drop")?.ratio).toBe(Infinity);
});

test("new LimitMap(facts).at(demand) meets limits the sooner, the more is asked", () => {
  const map = new LimitMap(factsOf());
  const ratios = [0.75, 0.85, 1, 1.15, 1.35].map((demand) => map.at(demand).ratio);
  for (const [at, one] of ratios.entries()) if (at > 0) expect(one).toBeLessThan(ratios[at - 1] as number);
});

test("new LimitMap(facts).at(demand) is straight between the demands it was worked out at", () => {
  const map = new LimitMap(factsOf());
  const [one, other] = map.around(0.9);
  expect([one.demand, other.demand]).toEqual([0.85, 1]);
  const [left, right] = [one.first, other.first];
  expect(map.at(0.88)).toEqual({ ...left, ratio: expect.closeTo(left.ratio + 0.2 * (right.ratio - left.ratio), 9) });
  expect(map.at(0.97)).toEqual({ ...right, ratio: expect.closeTo(left.ratio + 0.8 * (right.ratio - left.ratio), 9) });
  expect(map.at(0.85).ratio).toBeCloseTo(left.ratio, 9);
});

test("new LimitMap(facts).around(demand) goes on beyond both ends, and at(demand) never under clean", () => {
  const map = new LimitMap(factsOf());
  const between = (demand: number) => map.around(demand).map((one) => one.demand);
  expect([0.2, 0.75, 0.85, 0.86, 1.15, 1.2, 1.35, 3].map(between)).toEqual([
    [0.75, 0.85],
    [0.75, 0.85],
    [0.75, 0.85],
    [0.85, 1],
    [1, 1.15],
    [1.15, 1.35],
    [1.15, 1.35],
    [1.15, 1.35],
  ]);
  expect(map.at(30).ratio).toBe(1);
});

test("new LimitMap(facts) of a limit that clean elements break is met clean", () => {
  const met = new LimitMap(factsOf({ limits: { vacuumAtChange: 1 } })).at(1);
  expect(met).toMatchObject({ ratio: 1, between: [1, 1], by: { kind: "limit", limit: "vacuum at change" } });
});

test("new LimitMap(facts) meets nothing where nothing is judged", () => {
  const never = {
    ratio: Infinity,
    between: [Infinity, Infinity],
    by: { kind: "limit", limit: "vacuum at change" },
    temperature: 0,
  };
  expect(new LimitMap(factsOf({ points: [] })).at(1)).toEqual(never);
  // Nothing fouls: whatever holds clean holds for ever.
  const still = new LimitMap(factsOf({ restrictions: () => suction(1) }));
  expect(still.at(1)).toEqual({ ...never, temperature: COLD });
});

test("new LimitMap(facts).at(demand) takes the nearer of two demands as it is, where one of them meets no limit", () => {
  const free = new LimitMap(factsOf());
  const most = (free.at(0.85).ratio + free.at(1).ratio) / 2;
  // Elements that foul no further than that: a limit is met at the file's demand and more, and never at less.
  const map = new LimitMap(factsOf({ restrictions: (ratio) => suction(Math.min(most, ratio)) }));
  const [one, other] = map.around(0.9);
  expect(one.first.ratio).toBe(Infinity);
  expect(other.first.ratio).toBeCloseTo(free.at(1).ratio, 9);
  expect(map.at(0.9)).toBe(one.first);
  expect(map.at(0.95)).toBe(other.first);
  expect(map.at(0.8).ratio).toBe(Infinity);
});
