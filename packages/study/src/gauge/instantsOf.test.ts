import { type FuelState, fuelState, SupplyModel } from "@thirstline/core";
import { type Built, build, type GaugeReading } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { type InstantFacts, instantsOf, supplyAt } from "./instantsOf.js";

const HOUR = 3600;
const pre = (ratio: number) => new Map(["prefilter A", "prefilter B"].map((name) => [name, ratio]));
const factsOf = (more: Partial<InstantFacts> = {}, system = demoSystem("heron")): InstantFacts =>
  ({
    built: build(system),
    path: { at: pre },
    others: () => new Map([["fine filter", 1]]),
    gaugeError: null,
    ...more,
  }) as unknown as InstantFacts;
const noted = {
  row: 1,
  line: 2,
  hours: 0,
  vacuum: 6e3,
  feedPressure: 65e3,
  load: 0.7,
  temperature: 280,
  depth: 0.5,
  changed: false,
};
const timed = (reading: Partial<GaugeReading>) => [{ reading: reading as GaugeReading, time: 5 * HOUR }];
const one = (side: "suction" | "delivery", reading: object = noted, facts = factsOf()) => {
  const [instant] = instantsOf(side, timed(reading), facts);
  if (!instant) throw new Error("a reading");
  return instant;
};
/** What core says that gauges read. */
const readAt = (
  built: Built,
  {
    depth,
    temperature,
    demand,
    restrict,
  }: {
    depth: number;
    temperature: number;
    demand: (full: number, fuel: FuelState) => number;
    restrict: ReadonlyMap<string, number>;
  },
) => {
  const fuel = fuelState(built.fuel, { temperature });
  const model = new SupplyModel(supplyAt(built, depth), { fuel, passage: "smooth", end: "middle" });
  model.restrict(restrict);
  const { burn, return: back } = built.demand(fuel);
  return model.state(demand(burn + back, fuel));
};
const without = (...keys: (keyof typeof noted)[]) =>
  Object.fromEntries(Object.entries(noted).filter(([key]) => !keys.includes(key as keyof typeof noted)));

test("instantsOf(side, readings, facts) has what the side's own gauge read, so turned that soil makes it grow", () => {
  expect(one("suction")).toMatchObject({ reading: noted, time: 5 * HOUR, read: 6e3, temperature: 280 });
  expect(one("delivery").read).toBe(-65e3);
  expect(instantsOf("suction", timed(without("vacuum")), factsOf())).toEqual([]);
  expect(instantsOf("delivery", timed(without("feedPressure")), factsOf())).toEqual([]);
});

test("instantsOf(side, readings, facts) with no pump has one gauge, noted either way", () => {
  const facts = factsOf({ path: { at: () => new Map() } as unknown as InstantFacts["path"] }, demoSystem("generator"));
  expect(one("suction", { ...without("vacuum"), feedPressure: 4e3 }, facts).read).toBe(-4e3);
  expect(one("suction", { ...noted, vacuum: -3e3 }, facts).read).toBe(-3e3);
  expect(instantsOf("suction", timed(without("vacuum", "feedPressure")), facts)).toEqual([]);
  expect(instantsOf("delivery", timed(noted), facts)).toEqual([]);
});

test("instantsOf(suction) holds a reading against the model at its load, temperature and level", () => {
  const { built } = factsOf();
  const { table } = one("suction");
  for (const [share, ratio] of [
    [1, 1],
    [0.7, 1],
    [1.4, 3.3],
  ] as const) {
    const state = readAt(built, {
      depth: 0.5,
      temperature: 280,
      demand: (full) => share * 0.7 * full,
      restrict: new Map([...pre(ratio), ["fine filter", 1]]),
    });
    expect(table.at(share, ratio)).toBeCloseTo(state.vacuum, 6);
  }
});

test("instantsOf(suction) takes full load, the file's temperature and a half-full tank where nothing is noted", () => {
  const { built } = factsOf();
  const { table, temperature } = one("suction", without("load", "temperature", "depth"));
  expect(temperature).toBeCloseTo(288.15, 9);
  // Half-way between 1.1 and 0.2 m.
  const given = { depth: 0.65, temperature: 288.15, demand: (full: number) => full, restrict: pre(1) };
  expect(table.at(1, 1)).toBeCloseTo(readAt(built, given).vacuum, 6);
});

test("instantsOf(suction) goes by a flow that is noted before the load", () => {
  const { built } = factsOf();
  const { table } = one("suction", { ...noted, flow: 5e-5 });
  const given = { depth: 0.5, temperature: 280, demand: () => 5e-5, restrict: pre(1) };
  expect(table.at(1, 1)).toBeCloseTo(readAt(built, given).vacuum, 6);
});

test("instantsOf(side, readings, facts) has the other side's elements as they were then", () => {
  const asked: number[] = [];
  const others = (time: number) => {
    asked.push(time);
    return new Map([["fine filter", 4]]);
  };
  const facts = factsOf({ others });
  const { table } = one("delivery", without("vacuum"), {
    ...facts,
    path: { at: () => new Map(pre(2)) } as unknown as InstantFacts["path"],
  });
  expect(asked).toEqual([5 * HOUR]);
  const restrict = new Map([...pre(2), ["fine filter", 4]]);
  const state = readAt(facts.built, { depth: 0.5, temperature: 280, demand: (full) => 0.7 * full, restrict });
  expect(table.at(1, 1)).toBeCloseTo(-(state.feedPressure ?? Number.NaN), 6);
});

test("instantsOf(delivery) lets the vacuum that was read stand in for the reckoned one", () => {
  const facts = factsOf({
    path: { at: (ratio: number) => new Map([["fine filter", ratio]]) } as unknown as InstantFacts["path"],
    others: () => pre(1),
  });
  const given = {
    depth: 0.5,
    temperature: 280,
    demand: (full: number) => 0.7 * full,
    restrict: new Map([...pre(1), ["fine filter", 2.2]]),
  };
  const { vacuum, feedPressure } = readAt(facts.built, given);
  // With more vacuum read than reckoned the pump, whose relief goes to its inlet, gives so much less.
  const less = 6e3 - vacuum;
  expect(one("delivery", noted, facts).table.at(1, 2.2)).toBeCloseTo(-(feedPressure ?? 0) + less, 6);
  expect(one("delivery", without("vacuum"), facts).table.at(1, 2.2)).toBeCloseTo(-(feedPressure ?? 0), 6);
});

test("instantsOf(delivery) does not, where relief to the tank holds the pump's outlet whatever its inlet does", () => {
  const heron = demoSystem("heron");
  const toTank = { ...heron, pump: { ...heron.pump, reliefTo: "tank" } } as typeof heron;
  const facts = factsOf({}, toTank);
  const at = (reading: object) => one("delivery", reading, facts).table.at(1, 1);
  expect(at(noted)).toBeCloseTo(at(without("vacuum")), 9);
});

test("instantsOf(side, readings, facts) takes gauge, load and temperature to be off as is usual", () => {
  expect(one("suction").noise).toMatchObject({ gauge: 500, demand: 0.05 });
  expect(one("suction", without("load")).noise.demand).toBe(0.15);
  expect(one("suction", { ...without("load"), flow: 5e-5 }).noise.demand).toBe(0.05);
  expect(one("suction", noted, factsOf({ gaugeError: 200 })).noise.gauge).toBe(200);
  // Two gauges stand behind a feed pressure with a vacuum.
  expect(one("delivery", noted, factsOf({ gaugeError: 200 })).noise.gauge).toBeCloseTo(282.843, 3);
  expect(one("delivery", without("vacuum")).noise.gauge).toBe(500);
});

test("instantsOf(side, readings, facts) takes a noted temperature for 2 K off and the file's for 6, by what that does to viscosity", () => {
  const { built } = factsOf();
  const viscosity = (temperature: number) => {
    const { density, kinematicViscosity } = fuelState(built.fuel, { temperature });
    return density * kinematicViscosity;
  };
  expect(one("suction").noise.viscosity).toBeCloseTo(Math.log(viscosity(280) / viscosity(282)), 9);
  const taken = one("suction", without("temperature")).noise.viscosity;
  expect(taken).toBeCloseTo(Math.log(viscosity(288.15) / viscosity(294.15)), 9);
});

test("instantsOf(side, readings, facts) holds what no gauge reads at 100 bar, either way", () => {
  const heron = demoSystem("heron");
  const shut = factsOf({}, { ...heron, tanks: heron.tanks.map((tank) => ({ ...tank, vent: { kind: "blocked" } })) });
  expect(one("suction", noted, shut).table.at(1, 1)).toBe(1e7);
  expect(one("suction").table.at(1, 1e4)).toBe(1e7);
  expect(one("suction", { ...noted, depth: 2000 }).table.at(1, 1)).toBe(-1e7);
  const fine = factsOf({
    path: { at: (ratio: number) => new Map([["fine filter", ratio]]) } as unknown as InstantFacts["path"],
  });
  expect(one("delivery", without("vacuum"), fine).table.at(1, 1e4)).toBe(1e7);
});

test("supplyAt(built, depth) has its tanks at a noted level, or half-way between full and low", () => {
  const { built } = factsOf();
  const depths = (depth?: number) => supplyAt(built, depth).tanks.map((tank) => tank.depth);
  expect(depths(0.9)).toEqual([0.9]);
  expect(depths()).toEqual([expect.closeTo(0.65, 12)]);
  const { suction, pump, delivery, ambientPressure, tanks } = supplyAt(built, undefined);
  expect({ suction, pump, delivery, ambientPressure }).toEqual({
    suction: built.suction,
    pump: built.pump,
    delivery: built.delivery,
    ambientPressure: built.ambientPressure,
  });
  expect(tanks[0]).toMatchObject({ vent: built.tanks[0]?.vent, path: built.tanks[0]?.path, name: "port tank" });
});
