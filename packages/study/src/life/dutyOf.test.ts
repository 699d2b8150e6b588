import { fuelState } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { litresAnHour, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import { dutyOf } from "./dutyOf.js";
import { freeWaterAt } from "./freeWaterAt.js";

const HOUR = 3600;
const YEAR = 4 * 250 * HOUR;
const WAXED = 243.15;
const found = (duty: object = {}, more: Partial<System> = {}) => {
  const system = { ...plainSystem, ...more, duty: { hoursADay: 4, daysAYear: 250, ...duty } } as System;
  const of = dutyOf(system, build(system));
  if (!of) throw new Error("no duty");
  return of;
};
const season = (name: string, share: number, temperature: number) => ({ name, share, temperature });
const near = (flow: number) => expect.closeTo(flow * litresAnHour, 12);

test("dutyOf(system without a duty) is none", () => {
  const { duty: _, ...idle } = plainSystem;
  expect(dutyOf(idle, build(idle))).toBeNull();
});

test("dutyOf(system) without seasons and loads is full load all the year at the file's temperature, and says so", () => {
  const { year, seasons, phases, points, cautions } = found(
    {},
    { demand: { burn: 200 * litresAnHour, return: 50 * litresAnHour } },
  );
  expect(year).toBe(YEAR);
  expect(seasons.map(({ name, temperature }) => [name, temperature])).toEqual([["all year", WARM]]);
  expect(phases).toHaveLength(1);
  expect(phases[0]).toMatchObject({
    duration: YEAR,
    loads: [{ share: 1, demand: { burn: near(200), return: near(50) } }],
  });
  expect(points).toMatchObject([{ temperature: WARM, demand: near(250), fuel: { density: 830 } }]);
  expect(cautions).toEqual([{ code: "full load assumed" }]);
});

test("dutyOf(system) has for each season its share of the year, its fuel, and burn and return at each load", () => {
  const seasons = [season("warm", 0.75, 293.15), season("cold", 0.25, 268.15)];
  const loads = [
    { load: 0.4, share: 0.3 },
    { load: 1, share: 0.7 },
  ];
  const { phases, cautions, ...rest } = found(
    { seasons, loads },
    { demand: { burn: 200 * litresAnHour, return: 50 * litresAnHour } },
  );
  expect(phases.map(({ duration }) => duration)).toEqual([0.75 * YEAR, 0.25 * YEAR]);
  expect(phases.map(({ fuel }) => fuel.temperature)).toEqual([293.15, 268.15]);
  expect(phases[0]?.loads).toEqual([
    { share: 0.3, demand: { burn: near(80), return: near(20) } },
    { share: 0.7, demand: { burn: near(200), return: near(50) } },
  ]);
  expect(rest.seasons.map(({ phase }) => phase)).toEqual(phases);
  expect(cautions).toEqual([]);
});

test("dutyOf(system) has the water that is free at each season's temperature", () => {
  const wet = { deliveredFuel: { ...plainSystem.deliveredFuel, water: 0.2 } };
  const { phases } = found({ seasons: [season("warm", 0.5, 300), season("cold", 0.5, 268.15)] }, wet);
  const free = (temperature: number) =>
    freeWaterAt({ ...plainSystem, ...wet }, fuelState(build(plainSystem).fuel, { temperature }), temperature).free;
  expect(phases.map(({ freeWater }) => freeWater)).toEqual([free(300), free(268.15)]);
  expect(free(268.15)).toBeGreaterThan(free(300));
});

describe("dutyOf(system).points", () => {
  test("are full demand at each temperature, the file's own among them, once each and coldest first", () => {
    const seasons = [season("warm", 0.5, 300), season("cold", 0.25, 268.15), season("as cold", 0.25, 268.15)];
    const loads = [{ load: 0.5, share: 1 }];
    const { points } = found({ seasons, loads });
    expect(points.map(({ temperature }) => temperature)).toEqual([268.15, WARM, 300]);
    for (const { temperature, fuel, demand } of points) {
      expect(fuel.temperature).toBe(temperature);
      expect(demand).toEqual(near(200));
    }
  });

  test("are none where the fuel is not judged, which is said of each such season and of the file's own", () => {
    const seasons = [season("winter", 0.5, WAXED), season("summer", 0.5, 300)];
    const { points, phases, cautions } = found({ seasons, loads: [{ load: 1, share: 1 }] }, { temperature: WAXED });
    expect(points.map(({ temperature }) => temperature)).toEqual([300]);
    expect(phases).toHaveLength(2);
    expect(cautions).toEqual([
      { code: "season not judged", season: "winter", temperature: WAXED },
      { code: "season not judged", season: "the file's own", temperature: WAXED },
    ]);
  });
});

describe("dutyOf(system).phases begin where the elements were new", () => {
  const seasons = [season("one", 0.25, 290), season("two", 0.5, 291), season("three", 0.25, 292)];
  const pieces = (starts: string | undefined, date: string | undefined, own = seasons) =>
    found(
      { seasons: own, ...(starts === undefined ? {} : { starts }) },
      { service: { interval: 1, last: date === undefined ? {} : { date } } },
    ).phases.map(({ fuel, duration }) => [fuel.temperature, duration / YEAR]);
  const whole = seasons.map(({ temperature, share }) => [temperature, share]);
  const near = (share: number) => expect.closeTo(share, 9);

  test("at the first where no day is stated, or none that is a day", () => {
    expect(pieces(undefined, "2026-07-02")).toEqual(whole);
    expect(pieces("2026-01-01", undefined)).toEqual(whole);
    expect(pieces("2026-01-01", "some day")).toEqual(whole);
    expect(found({ seasons, starts: "2026-01-01" }, { service: undefined } as object).phases).toHaveLength(3);
  });

  test("in the middle of a season, of which the rest comes first and what had gone by last", () => {
    // 182 days of 365.25 on.
    const gone = 182 / 365.25;
    expect(pieces("2026-01-01", "2026-07-02")).toEqual([
      [291, near(0.75 - gone)],
      [292, near(0.25)],
      [290, near(0.25)],
      [291, near(gone - 0.25)],
    ]);
    expect(pieces("2026-01-01", "2026-01-02")).toEqual([
      [290, near(0.25 - 1 / 365.25)],
      [291, near(0.5)],
      [292, near(0.25)],
      [290, near(1 / 365.25)],
    ]);
    expect(pieces("2026-01-01", "2026-12-31")[0]).toEqual([292, near(1.25 / 365.25)]);
  });

  test("as well years after or before the first day of the duty", () => {
    expect(pieces("2022-01-01", "2026-01-01")).toEqual(whole);
    const before = 1 - 182 / 365.25;
    expect(pieces("2026-07-02", "2026-01-01")).toEqual([
      [291, near(0.75 - before)],
      [292, near(0.25)],
      [290, near(0.25)],
      [291, near(before - 0.25)],
    ]);
  });

  test("with a whole season where one begins that day, give or take the rounding of a date", () => {
    const share = 182 / 365.25;
    for (const sliver of [0, 1e-8, -1e-8]) {
      const own = [season("one", share + sliver, 290), season("two", 1 - share - sliver, 291)];
      expect(pieces("2026-01-01", "2026-07-02", own)).toEqual([
        [291, near(1 - share - sliver)],
        [290, near(share + sliver)],
      ]);
    }
  });

  test("without a season of no time", () => {
    expect(pieces(undefined, undefined, [season("never", 0, 290), season("always", 1, 291)])).toEqual([[291, 1]]);
  });
});
