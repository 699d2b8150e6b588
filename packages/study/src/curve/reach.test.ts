import {
  type Circuit,
  cleaned,
  filter,
  fuelState,
  line,
  parallel,
  SupplyModel,
  series,
  solve,
  tank,
} from "@thirstline/core";
import { build, type System } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { plain } from "../../../../tests/support/plainSupply.js";
import { partsOf } from "../check/partsOf.js";
import { curve } from "./curve.js";
import { curveState } from "./curveState.js";
import { dueAt } from "./Due.js";
import { dueSupply } from "./dueSupply.js";
import { mapFilters } from "./mapFilters.js";
import { pastDue } from "./pastDue.js";
import { reach } from "./reach.js";
import { terminalDrops } from "./terminalDrops.js";

const ceilingsOf = (clean: number, atChange: number) =>
  ({ clean: { flow: { high: clean } }, atChange: { flow: { high: atChange } } }) as unknown as Parameters<
    typeof reach
  >[0]["ceilings"];
const reachOf = (clean: number, atChange: number) =>
  reach({ ceilings: ceilingsOf(clean, atChange), demand: { burn: 1, return: 1, total: 2 } });

test.each([
  ["beyond the further of two ceilings", 3, 5, 5],
  ["beyond the demand where both lie before it", 1, 1.5, 2],
  ["beyond a ceiling of four demands", 8, 3, 8],
  ["not so far as one beyond four demands", 8.1, 3, 3],
  ["beyond the demand where no ceiling is near", 9, Infinity, 2],
])("reach(point) is 15 %% %s", (_, clean, atChange, furthest) => {
  expect(reachOf(clean, atChange)).toBeCloseTo(1.15 * furthest, 12);
});

const element = (name: string, terminalDrop?: number) => ({
  part: "filter",
  name,
  ...(terminalDrop === undefined ? {} : { terminalDrop }),
});

test("terminalDrops(system) has each stated drop by name: of tanks' paths, banks and both sides", () => {
  const system = {
    tanks: [{ path: [element("tank", 1), element("no word")] }],
    suction: [element("A", 2), { part: "rise" }, { part: "bank", branches: [[element("B", 3)], [element("C", 0)]] }],
    delivery: [element("fine", 4)],
  } as unknown as System;
  expect([...terminalDrops(system)]).toEqual([
    ["tank", 1],
    ["A", 2],
    ["B", 3],
    ["C", 0],
    ["fine", 4],
  ]);
  const { delivery: _, ...open } = system;
  expect(terminalDrops(open as System).has("fine")).toBe(false);
});

const own = (name: string, more: object = {}) =>
  filter({
    name,
    clean: { drop: 4e3, flow: 3e-5, dynamicViscosity: 830 * 3e-6 },
    ...more,
  });
const hose = line({ length: 1, bore: 0.012, roughness: 1e-6 });
const supply = {
  ...plain,
  tanks: [tank({ depth: 0.2, path: series(own("tank filter")) })],
  suction: series(hose, parallel(own("A"), series(own("B")))),
  delivery: series(own("fine")),
};
const fuel = fuelState({ density: 830, kinematicViscosity: 3e-6 });
const restrictions = (of: Parameters<typeof partsOf>[0]) =>
  new Map(partsOf(of).flatMap((part) => (part.kind === "filter" ? [[part.name, part.restriction]] : [])));

test("mapFilters(supply, change) puts every filter through, wherever it stands, and leaves all else", () => {
  const seen: (string | undefined)[] = [];
  const changed = mapFilters(supply, (one) => {
    seen.push(one.name);
    return { ...one, restriction: 2 };
  });
  expect(seen).toEqual(["tank filter", "A", "B", "fine"]);
  expect(restrictions(changed)).toEqual(new Map([...restrictions(supply)].map(([name]) => [name, 2])));
  expect(mapFilters(supply, (one) => one)).toEqual(supply);
  const bare = { ...plain, delivery: null };
  expect(mapFilters(bare, (one) => ({ ...one, restriction: 2 }))).toEqual(bare);
});

test("dueAt(built, drops, asked) is at the file's own temperature and demand, or at the demand asked for", () => {
  const built = build(demoSystem("heron"));
  const drops = new Map([["fine filter", 7e4]]);
  const { burn, return: back } = built.demand(fuelState(built.fuel, { temperature: 288.15 }));
  const due = dueAt(built, drops, null);
  expect(due.drops).toBe(drops);
  expect(due.fuel).toEqual(fuelState(built.fuel, { temperature: 288.15 }));
  expect(due.demand).toBeCloseTo(burn + back, 12);
  expect(dueAt(built, drops, 5e-5).demand).toBeCloseTo(5e-5, 15);
});

const dueOf = (drops: readonly (readonly [string, number])[], demand = 6e-5) => ({
  drops: new Map(drops),
  fuel,
  demand,
});

test("dueSupply(supply, due, end) soils each element with a stated drop until it shows it at its own clean flow", () => {
  // At 6e-5 m3/s A and B get half each and cost 4 kPa clean; the tank filter and the fine filter get all, and cost 8.
  const soiled = dueSupply(
    supply,
    dueOf([
      ["A", 20e3],
      ["fine", 40e3],
    ]),
    "middle",
  );
  const found = restrictions(soiled);
  expect(found.get("A")).toBeCloseTo(5, 6);
  expect(found.get("fine")).toBeCloseTo(5, 6);
  expect([found.get("B"), found.get("tank filter")]).toEqual([1, 1]);
});

test("dueSupply(supply, due, end) leaves an element clean that costs more than its drop, carries nothing, or is shut", () => {
  const clean = (suction: Circuit, drop: number, demand?: number) =>
    restrictions(dueSupply({ ...supply, suction: series(suction) }, dueOf([["A", drop]], demand), "middle")).get("A");
  expect(clean(own("A"), 7.9e3)).toBe(1);
  expect(clean(own("A"), 8.1e3)).toBeGreaterThan(1);
  expect(clean(own("A"), 20e3, 0)).toBe(1);
  expect(clean(own("A", { blocked: true }), 20e3)).toBe(1);
  // What it held before is no matter.
  expect(clean(own("A", { restriction: 9 }), 16e3)).toBeCloseTo(2, 6);
});

test("pastDue(supply, due) names each element that shows its terminal drop or more, as it is", () => {
  const soiled = { ...supply, suction: series(own("A", { restriction: 3 })) };
  const drop = solve(own("A", { restriction: 3 }), fuel).drop(6e-5);
  expect(drop).toBeCloseTo(24e3, 3);
  const said = (limit: number) =>
    pastDue(
      soiled,
      dueOf([
        ["A", limit],
        ["fine", 40e3],
      ]),
    );
  expect(said(20e3)).toEqual([{ code: "past terminal drop", part: "A", drop, terminalDrop: 20e3 }]);
  expect(said(drop)).toHaveLength(1);
  expect(said(drop + 1)).toEqual([]);
  expect(pastDue(soiled, dueOf([]))).toEqual([]);
});

test("pastDue(supply, due) does not speak of an element that is shut", () => {
  const shut = { ...supply, suction: series(own("A", { blocked: true })) };
  expect(pastDue(shut, dueOf([["A", 1]]))).toEqual([]);
});

test("curveState(models, demand, spread) has ends where something is spread, most resistance being least feed pressure", () => {
  const flows = Float64Array.of(0, 4e-5);
  const modelOf = (suction: Circuit) =>
    new SupplyModel({ ...supply, suction: series(suction) }, { fuel, passage: "smooth", end: "middle" });
  const models = {
    low: modelOf(own("A")),
    middle: modelOf(own("A", { restriction: 2 })),
    high: modelOf(own("A", { restriction: 3 })),
  };
  const at = (model: SupplyModel) => [...flows].map((flow) => model.state(flow));
  const vacuums = (model: SupplyModel) => Float64Array.from(at(model), ({ vacuum }) => vacuum);
  const feeds = (model: SupplyModel) => Float64Array.from(at(model), ({ feedPressure }) => feedPressure ?? Number.NaN);
  expect(curveState(models, flows, true)).toEqual({
    vacuum: { middle: vacuums(models.middle), band: { low: vacuums(models.low), high: vacuums(models.high) } },
    feedPressure: { middle: feeds(models.middle), band: { low: feeds(models.high), high: feeds(models.low) } },
  });
  expect(curveState(models, flows, false)).toEqual({
    vacuum: { middle: vacuums(models.middle), band: null },
    feedPressure: { middle: feeds(models.middle), band: null },
  });
});

test("curveState(models, demand, spread) is none where nothing passes, before the pump or behind it", () => {
  const stateOf = (more: object) => {
    const middle = new SupplyModel({ ...supply, ...more }, { fuel, passage: "smooth", end: "middle" });
    return curveState({ low: middle, middle, high: middle }, Float64Array.of(1e-5), false);
  };
  const shut = series(own("A", { blocked: true }));
  expect(stateOf({ suction: shut })).toBeNull();
  expect(stateOf({ delivery: shut })).toBeNull();
  expect(stateOf({})).not.toBeNull();
});

test("curveState(models, demand, spread) has gaps beyond what a pump can move, and no feed pressure of a pulse pump", () => {
  const feedsOf = (pump: object) => {
    const middle = new SupplyModel({ ...supply, pump } as typeof supply, { fuel, passage: "smooth", end: "middle" });
    const feed = curveState(
      { low: middle, middle, high: middle },
      Float64Array.of(1e-5, 3e-5, 5e-5),
      false,
    )?.feedPressure;
    return feed && [...feed.middle].map(Number.isNaN);
  };
  const points = [
    { flow: 0, rise: 9e4 },
    { flow: 2e-5, rise: 7e4 },
    { flow: 3e-5, rise: 5e4 },
  ];
  expect(feedsOf({ kind: "curve", points })).toEqual([false, false, true]);
  expect(feedsOf({ ...plain.pump, flow: 3e-5 })).toEqual([false, false, true]);
  expect(feedsOf({ kind: "none" })).toEqual([false, false, false]);
  expect(feedsOf({ kind: "pulse", flow: 5e-5, suction: 3e4 })).toBeNull();
});

test("curve(system, options) names the system, its pump and what the suction line follows", () => {
  const of = (name: string, pump: object = {}) => {
    const system = demoSystem(name);
    const { points: _, ...answer } = curve({ ...system, pump: { ...system.pump, ...pump } } as System, { points: 2 });
    return answer;
  };
  const heron = {
    question: "curve",
    system: "Heron, port engine",
    pump: "fixed",
    suctionFollows: "demand",
    atChange: null,
  };
  expect(of("heron")).toEqual(heron);
  expect(of("heron", { reliefTo: "tank" })).toEqual({ ...heron, suctionFollows: "pump" });
  expect(of("generator")).toMatchObject({ pump: "none", suctionFollows: "demand" });
  expect(of("workboat").pump).toBe(demoSystem("workboat").pump.kind);
});

test("curve(system, options) has as many demands as asked, from none to its end, and the point of the demand asked for", () => {
  const system = demoSystem("heron");
  const { points } = curve(system, { temperatures: [281.15, 288.15], demand: 5e-5, to: 1e-4, points: 5 });
  expect(points.map(({ temperature }) => temperature)).toEqual([281.15, 288.15]);
  const [one] = points;
  expect([...(one?.demand ?? [])]).toEqual([0, 0.25e-4, 0.5e-4, 0.75e-4, 1e-4].map((flow) => expect.closeTo(flow, 15)));
  expect(one?.duty.demand).toBeCloseTo(5e-5, 15);
  expect(one?.duty.vacuum.middle).toBeCloseTo(one?.clean?.vacuum.middle[2] ?? Number.NaN, 6);
  expect(one?.duty.suctionFlow).toBeCloseTo(5e-5, 15);
  expect(one).toMatchObject({
    unanswered: [],
    cautions: [{ code: "return heat ignored" }],
    feedLimit: 25e3,
    vacuumLimits: { clean: 20e3, atChange: 40e3 },
  });
});

test("curve(system, options) soils elements due at the demand asked for", () => {
  const { delivery: _, ...system } = demoSystem("pickup-staged");
  const suction = system.suction.map((part) => (part.part === "filter" ? { ...part, terminalDrop: 2e4 } : part));
  const asked = { demand: 3e-5, points: 2 };
  const [point] = curve({ ...system, suction }, asked).points;
  const model = new SupplyModel(cleaned({ ...plain, suction: build(system).suction }), {
    fuel: fuelState(build(system).fuel, { temperature: system.temperature }),
    passage: "smooth",
    end: "middle",
  });
  const { vacuum, vacuumAtChange } = point?.duty ?? {};
  const element = partsOf(model.supply).find(({ kind }) => kind === "filter");
  if (!element) throw new Error("an element");
  const clean = solve(element, model.fuel).drop(3e-5);
  expect((vacuumAtChange?.middle ?? 0) - (vacuum?.middle ?? 0)).toBeCloseTo(2e4 - clean, 3);
});

test.each([
  [{ points: 10_002 }, "curve requires points to be a whole number from 2 to 10001, got 10002"],
  [{ to: 0 }, "curve requires to to be more than 0 m3/s, got 0"],
  [{ to: Infinity }, "curve requires to to be more than 0 m3/s, got Infinity"],
])("curve(system, %o) refuses what lies beyond its bounds", (options, message) => {
  expect(() => curve(demoSystem("heron"), options)).toThrow(message);
});

test("curve(system, options) takes the least and the most points it allows", () => {
  const { clean } = curve(demoSystem("generator"), { points: 2 }).points[0] ?? {};
  expect(clean?.vacuum.middle).toHaveLength(2);
  expect(curve(demoSystem("generator"), { points: 10_001, to: 1e-5 }).points[0]?.demand).toHaveLength(10_001);
});
