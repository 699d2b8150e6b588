import { build } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { instantsOf } from "../../../../tests/support/gaugeRuns.js";
import type { Averaged } from "./averaged.js";
import { elementsNow, roomMap } from "./elementsNow.js";
import type { GaugeFacts } from "./gaugeFacts.js";
import { LimitMap } from "./LimitMap.js";
import { type FittedSide, type LeftFacts, leftOf, limitFacts } from "./leftOf.js";
import type { SideFit, SoilFit } from "./SideFit.js";
import { flat, type Shape, shapes } from "./shapes.js";
import { sideAnswer } from "./sideAnswer.js";

const HOUR = 3600;
const cake = shapes.find(({ law }) => law === "cake") as Shape;
const PRE = ["prefilter A", "prefilter B"];
const path = (names: readonly string[]) => ({
  names,
  lead: names[0] ?? "",
  at: (ratio: number) => new Map(names.map((name) => [name, ratio])),
});
const built = () => build(demoSystem("heron"));

/** A law of growth by so much of a load (which comes to four times clean) an hour. */
const stateOf = (rate: number, demand = 1, shape: Shape = cake) => ({
  demand,
  zero: 50,
  ratioAt: (time: number) => shape.ratio((rate * time) / HOUR),
  load: { start: 0, rate: rate / HOUR },
});
const drawOf = (rate: number, weight = 1, demand = 1): Averaged =>
  ({ state: stateOf(rate, demand), shape: cake, weight }) as unknown as Averaged;
const soilOf = (draws: readonly Averaged[], rate = 0.01, shape: Shape = cake): SoilFit =>
  ({
    best: { model: { shape, stateAt: () => stateOf(rate, 1, shape) }, fit: { parameters: [] } },
    draws,
    trend: true,
    ratio: { low: 1.5, middle: 2, high: 3 },
    laws: [],
  }) as unknown as SoilFit;
const factsOf = (more: Partial<LeftFacts> = {}): LeftFacts => {
  const one = built();
  return {
    built: one,
    limits: one.limits,
    points: [{ temperature: 263.15 }],
    terminals: new Map(),
    besideAt: () => new Map([["fine filter", 1]]),
    meter: 100 * HOUR,
    now: 10 * HOUR,
    ...more,
  };
};
const sideOf = (last = 10 * HOUR): FittedSide =>
  ({
    path: path(PRE),
    fit: { weighed: { run: { instants: [{ time: 0 }, { time: 1 }, { time: last }] } } },
  }) as unknown as FittedSide;
const metAt = (facts: LeftFacts) =>
  new LimitMap({ ...facts, restrictions: (ratio) => new Map([...path(PRE).at(ratio), ["fine filter", 1]]) }).at(1);

test("leftOf(side, soil, facts) is the time to the first limit, less what has gone", () => {
  const facts = factsOf();
  const met = metAt(facts);
  const hours = cake.load(met.ratio) / 0.01;
  const left = leftOf(sideOf(), soilOf([drawOf(0.01)]), facts);
  const middle = expect.closeTo((hours - 10) * HOUR, 3);
  expect(left).toEqual({
    low: middle,
    middle,
    high: middle,
    by: met.by,
    pointTemperature: 263.15,
    hourMeter: expect.closeTo((100 + hours) * HOUR, 3),
    sinceStart: 10 * HOUR,
  });
  expect(leftOf(sideOf(), soilOf([drawOf(0.01)]), { ...facts, meter: null })).toMatchObject({ hourMeter: null });
});

test("leftOf(side, soil, facts) takes every draw to its own limit, by its own demand", () => {
  const facts = factsOf();
  const draws = [drawOf(0.008, 0.3), drawOf(0.01, 0.4, 1.15), drawOf(0.012, 0.3)];
  const left = leftOf(sideOf(), soilOf(draws), facts);
  if ("code" in left) throw new Error(left.code);
  const map = new LimitMap({
    ...facts,
    restrictions: (ratio) => new Map([...path(PRE).at(ratio), ["fine filter", 1]]),
  });
  const hours = draws.map(({ state }) => cake.load(map.at(state.demand).ratio) / (state.load.rate * HOUR) - 10);
  const [low = 0, , high = 0] = hours.sort((one, other) => one - other);
  expect(left.low).toBeCloseTo(low * HOUR, 3);
  expect(left.high).toBeCloseTo(high * HOUR, 3);
});

test("leftOf(side, soil, facts) has no hours less than none", () => {
  const late = factsOf({ now: 1e6 * HOUR });
  expect(leftOf(sideOf(1e6 * HOUR), soilOf([drawOf(0.01)]), late)).toMatchObject({ low: 0, middle: 0, high: 0 });
});

test("leftOf(side, soil, facts) says why there are none", () => {
  expect(leftOf(sideOf(), soilOf([drawOf(0.01)]), factsOf({ points: [] }))).toEqual({
    code: "no temperature to judge",
  });
  // Half and more of the draws never come to a limit, or no limit is ever met.
  const never = { ...drawOf(0.01, 3), shape: flat };
  expect(leftOf(sideOf(), soilOf([drawOf(0.01), never]), factsOf())).toEqual({ code: "no limit" });
  const clean = { path: { ...path(PRE), at: () => path(PRE).at(1) }, fit: sideOf().fit } as unknown as FittedSide;
  expect(leftOf(clean, soilOf([drawOf(0.01)]), factsOf())).toEqual({ code: "no limit" });
});

test("leftOf(side, soil, facts) tells nobody when, with an interval three times its middle and the run", () => {
  const facts = factsOf();
  const load = cake.load(metAt(facts).ratio);
  /** Of draws that reach the limit after so many hours from now, the outer ones a fifth of the weight each. */
  const of = (hours: readonly [number, number, number], now: number) => {
    const draws = hours.map((one, at) => drawOf(load / (one + now), at === 1 ? 3 : 1));
    return leftOf(sideOf(now * HOUR), soilOf(draws), factsOf({ now: now * HOUR }));
  };
  expect(of([50, 100, 340], 10)).toMatchObject({ middle: expect.closeTo(100 * HOUR, 0) });
  expect(of([50, 100, 360], 10)).toEqual({
    code: "too wide",
    low: expect.closeTo(50 * HOUR, 0),
    high: expect.closeTo(360 * HOUR, 0),
  });
  // The same width is not too wide after a run of 120 hours.
  expect(of([50, 100, 360], 120)).toMatchObject({ middle: expect.closeTo(100 * HOUR, 0) });
  const draws = [drawOf(load / 60, 3), drawOf(load / 90, 3), { ...drawOf(0.01), shape: flat }];
  const endless = leftOf(sideOf(), soilOf(draws), facts);
  expect(endless).toMatchObject({ code: "too wide", high: null });
});

test("limitFacts(path, soil, facts) has the other side as it will be when the lead comes to a resistance, not before now", () => {
  const asked: number[] = [];
  const besideAt = (time: number) => {
    asked.push(time / HOUR);
    return new Map([["fine filter", 7]]);
  };
  const facts = factsOf({ besideAt });
  const { restrictions, ...rest } = limitFacts(path(PRE) as unknown as FittedSide["path"], soilOf([], 0.01), facts);
  const { built: ownBuilt, limits, points, terminals } = facts;
  expect(rest).toEqual({ built: ownBuilt, limits, points, terminals });
  expect(restrictions(4)).toEqual(
    new Map([
      ["fine filter", 7],
      ["prefilter A", 4],
      ["prefilter B", 4],
    ]),
  );
  restrictions(1.01);
  limitFacts(path(PRE) as unknown as FittedSide["path"], soilOf([], 0.01, flat), facts).restrictions(4);
  // A load of 1 after 100 hours; what lies before now is now, and so is what never comes.
  expect(asked).toEqual([expect.closeTo(100, 1), 10, 10]);
});

const gaugeFactsOf = (more: object = {}) =>
  ({
    ...factsOf(),
    limited: true,
    suction: path(PRE),
    delivery: path(["fine filter"]),
    gaugeError: null,
    ...more,
  }) as unknown as GaugeFacts;
const fitOf = (soil: SoilFit) =>
  ({
    soil,
    weighed: {
      run: { instants: instantsOf([1100, 1400, 2100], (at) => ({ time: at * 10 * HOUR })) },
      sigmas: Float64Array.of(1, 2, 30),
    },
  }) as unknown as SideFit;

test("elementsNow(facts, side, fit) has each element's share of the interval, its drops and how much of its room is gone", () => {
  const facts = gaugeFactsOf();
  const elements = elementsNow(facts, "suction", fitOf(soilOf([])));
  expect(elements.map(({ name }) => name)).toEqual(PRE);
  const [one, other] = elements;
  expect(one).toEqual({ ...other, name: "prefilter A" });
  expect(one?.ratio).toEqual({ low: 1.5, middle: 2, high: 3 });
  const [clean, now, used] = [one?.dropClean ?? 0, one?.drop ?? 0, one?.roomUsed ?? 0];
  // The medium's drop alone grows, and it is all there is of these elements.
  expect(now / clean).toBeCloseTo(2, 6);
  const met = roomMap(facts, "suction")?.at(1);
  expect(used).toBeCloseTo(1 / ((met?.ratio ?? 0) - 1), 6);
});

test("elementsNow(facts, side, fit) takes no element for cleaner than clean", () => {
  const soil = { ...soilOf([]), ratio: { low: 0.5, middle: 0.8, high: 1.2 } };
  const [one] = elementsNow(gaugeFactsOf(), "suction", fitOf(soil));
  expect(one).toMatchObject({ ratio: { low: 1, middle: 1, high: 1.2 }, roomUsed: 0 });
  expect(one?.drop).toBe(one?.dropClean);
});

test("elementsNow(facts, side, fit) knows no room without a limit, or without a temperature to judge", () => {
  for (const more of [{ limited: false }, { points: [] }]) {
    const facts = gaugeFactsOf(more);
    expect(roomMap(facts, "suction")).toBeNull();
    const [one] = elementsNow(facts, "suction", fitOf(soilOf([])));
    expect(one?.roomUsed).toBeNull();
    // At the file's own temperature then.
    expect(one?.dropClean).toBeLessThan(elementsNow(gaugeFactsOf(), "suction", fitOf(soilOf([])))[0]?.dropClean ?? 0);
  }
});

test("elementsNow(facts, side, fit) has all room used where clean elements break the limit", () => {
  const [one] = elementsNow(gaugeFactsOf({ limits: { vacuumAtChange: 1 } }), "suction", fitOf(soilOf([])));
  expect(one?.roomUsed).toBe(1);
});

test("elementsNow(facts, side, fit) knows no room of a limit that is never met", () => {
  const still = { ...path(PRE), at: () => path(PRE).at(1) };
  const [one] = elementsNow(gaugeFactsOf({ suction: still }), "suction", fitOf(soilOf([])));
  expect(one?.roomUsed).toBeNull();
});

test("sideAnswer(side, facts, fit, findings) has what was read and what is reckoned, as the gauge shows it", () => {
  const facts = gaugeFactsOf();
  const soil = {
    ...soilOf([]),
    laws: [
      { fitted: { model: { shape: cake } }, weight: 0.6 },
      { fitted: { model: { shape: { law: "cake-complete", mix: 0.5 } } }, weight: 0.3 },
      { fitted: { model: { shape: flat } }, weight: 0.1 },
    ],
  } as unknown as SoilFit;
  const answer = sideAnswer("suction", facts, fitOf(soil), []);
  expect(answer).toMatchObject({
    side: "suction",
    readings: 3,
    scatter: 30,
    gaugeError: { value: 500, by: "common practice" },
    demand: 1,
    zero: 50,
    trend: true,
    laws: [
      { law: "cake", mix: null, weight: 0.6 },
      { law: "cake-complete", mix: 0.5, weight: 0.3 },
    ],
  });
  expect(answer?.laws).toHaveLength(2);
  expect(answer?.elements.map(({ name }) => name)).toEqual(PRE);
  const { time, read, reckoned } = answer?.trace ?? { time: [], read: [], reckoned: [] };
  expect(time).toEqual([0, 10 * HOUR, 20 * HOUR]);
  expect(read).toEqual([1100, 1400, 2100]);
  // A kilopascal for each time clean, and the zero.
  expect(reckoned).toEqual([0, 0.1, 0.2].map((load) => expect.closeTo(1000 * cake.ratio(load) + 50, 6)));
  const turned = sideAnswer("delivery", facts, fitOf(soil), []);
  expect(turned?.zero).toBe(-50);
  expect(turned?.trace.read).toEqual([-1100, -1400, -2100]);
  expect(turned?.trace.reckoned).toEqual(reckoned.map((one) => -one));
  expect(turned?.elements.map(({ name }) => name)).toEqual(["fine filter"]);
});

test("sideAnswer(side, facts, fit, findings) says of elements only where soil or a jump is all there is", () => {
  const facts = gaugeFactsOf({ gaugeError: 200 });
  const of = (...codes: string[]) =>
    sideAnswer(
      "suction",
      facts,
      fitOf(soilOf([])),
      codes.map((code) => ({ code })) as unknown as Parameters<typeof sideAnswer>[3],
    );
  expect(of("loading", "jump")?.elements).toHaveLength(2);
  expect(of("loading", "cold")?.elements).toEqual([]);
  expect(of("cold")?.gaugeError).toEqual({ value: 200, by: "stated" });
  expect(sideAnswer("suction", facts, null, [])).toBeNull();
});
