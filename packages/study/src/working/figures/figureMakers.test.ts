import type { System, SystemFuel } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem, unpredicted } from "../../../../../tests/support/fleets.js";
import { check } from "../../check/check.js";
import { curve } from "../../curve/curve.js";
import { life } from "../../life/life.js";
import type { Asked } from "../Asked.js";
import { proofOf } from "../proof.js";
import type { FigureMaker } from "./FigureMaker.js";
import { figureMakers, lifeMakers } from "./figureMakers.js";

const find = (makers: readonly FigureMaker[], name: string) => {
  const step = makers.find((one) => one.name === name)?.make() ?? null;
  if (step) expect([name, proofOf({ step }).misses]).toEqual([name, []]);
  return step;
};
const figure = (system: System, name: string, asked: Asked = {}) => find(figureMakers(system, asked), name);
const told = (system: System, name: string, asked: Asked = {}) => {
  const step = figure(system, name, asked);
  return step === null ? null : stepLines([step])[0];
};
const near = (value: number | null | undefined, digits = 6) =>
  value === null || value === undefined ? null : expect.closeTo(value, digits);

test.each<[demo: string, asked: Asked]>([
  ["heron", {}],
  ["generator", {}],
  ["dewatering", {}],
  ["pickup-single", { temperature: 270, demand: 2.5e-5 }],
])("figureMakers(system, asked) comes to check's figures, ends and all: %s, asked %j", (demo, asked) => {
  const system = demoSystem(demo);
  const { temperature, demand } = asked;
  const options = {
    ...(temperature === undefined ? {} : { temperatures: [temperature] }),
    ...(demand ? { demand } : {}),
  };
  const [point] = check(system, options).points;
  if (!point) throw new Error("nothing is checked");
  const of = (name: string) => figure(system, name, asked)?.value ?? null;
  const ends = (name: string) => [of(`${name}, low end`), of(name), of(`${name}, high end`)];
  const band = (
    one: { readonly low: number; readonly middle: number; readonly high: number } | null | undefined,
    digits = 6,
  ) => (one ? [near(one.low, digits), near(one.middle, digits), near(one.high, digits)] : [null, null, null]);
  expect(ends("vacuum")).toEqual(band(point.vacuum));
  expect(ends("vacuum now")).toEqual(band(point.vacuumNow ?? point.vacuum));
  expect(ends("feed pressure")).toEqual(band(point.feedPressure));
  expect(ends("lowest pressure")).toEqual(band(point.lowest?.pressure));
  expect(ends("ceiling clean")).toEqual(band(point.ceilings.clean.flow, 12));
  expect(ends("ceiling at change")).toEqual(band(point.ceilings.atChange.flow, 12));
  expect(ends("in hand")).toEqual(band(point.inHand));
  expect(ends("free for soil")).toEqual(band(point.riseFree));
  expect(of("velocity head")).toEqual(near(point.velocityHead));
  expect(of("demand")).toEqual(near(point.demand.total, 12));
  expect(of("suction flow")).toEqual(near(point.suctionFlow, 12));
  expect(of("fuel density")).toEqual(near(point.fuel.density));
  expect(of("clean limit")).toEqual(near(point.vacuumLimits.clean));
  expect(of("limit at change")).toEqual(near(point.vacuumLimits.atChange));
});

test("figureMakers(system, asked) at a demand of the curve comes to what the curve has there, elements due too", () => {
  const pickup = demoSystem("pickup-single");
  const system = {
    ...pickup,
    delivery: (pickup.delivery ?? []).map((part) => (part.part === "filter" ? { ...part, terminalDrop: 15e3 } : part)),
  };
  const [point] = curve(system, { to: 2e-5, points: 3 }).points;
  const asked = { at: 1e-5, to: 2e-5, points: 3 };
  const of = (name: string) => figure(system, name, asked)?.value;
  expect(of("vacuum")).toBeCloseTo(point?.clean?.vacuum.middle[1] ?? Number.NaN, 6);
  expect(of("feed pressure clean")).toBeCloseTo(point?.clean?.feedPressure?.middle[1] ?? Number.NaN, 6);
  expect(of("vacuum at change")).toBeCloseTo(point?.atChange?.vacuum.middle[1] ?? Number.NaN, 6);
  expect(of("feed pressure at change")).toBeCloseTo(point?.atChange?.feedPressure?.middle[1] ?? Number.NaN, 6);
  // Without a terminal drop nobody knows what elements show when they are due.
  const names = figureMakers(pickup, asked).map(({ name }) => name);
  expect(names).not.toContain("vacuum at change");
  expect(names).not.toContain("feed pressure at change");
});

test("figureMakers(system, asked) has rows as the elements are only where one is soiled, and keeps what it has made", () => {
  const heron = demoSystem("heron");
  const names = (system: System) => figureMakers(system, {}).map(({ name }) => name);
  expect(names(heron).some((name) => name.endsWith(" as it is"))).toBe(false);
  expect(names(demoSystem("generator-soiled"))).toContain("drop of bowl filter B10 as it is");
  expect(figureMakers(heron, {})).toBe(figureMakers(heron, {}));
  expect(figureMakers(heron, { at: 1e-5 })).not.toBe(figureMakers(heron, {}));
});

const withFuel = (fuel: SystemFuel): System => ({ ...demoSystem("pickup-single"), fuel });

test("figureMakers(system, asked) tells a fuel's cold points by the file, or by what is published of its kind", () => {
  const pickup = demoSystem("pickup-single");
  expect(told(pickup, "cloud point")).toBe("cloud point (temperature, K) | file fuel.cloud point | 261.15");
  expect(told(pickup, "CFPP")).toBe("CFPP (temperature, K) | file fuel.CFPP | 251.15");
  const summer = withFuel({ kind: "diesel", grade: "summer" });
  expect(told(summer, "cloud point")).toBeNull();
  expect(told(summer, "highest cloud point of its kind")).toMatch(
    /^highest cloud point of its kind \(temperature, K\) \| source published for summer diesel: .*; .* \| 277.15$/,
  );
  const winter = withFuel({ kind: "diesel", grade: "winter" });
  expect(told(winter, "cloud point")).toMatch(/\| source published for winter diesel: .* \| 266.15$/);
  expect(told(winter, "coldest fuel data")).toMatch(
    /^coldest fuel data \(temperature, K\) \| source published for .* \| 253.15$/,
  );
  expect(told(winter, "warmest fuel data")).toMatch(/\| 313.15$/);
});

test("figureMakers(system, asked) says of fuel above its data that nothing bounds it below", () => {
  const pickup = demoSystem("pickup-single");
  expect(told(pickup, "no bound below")).toBeNull();
  expect(told(pickup, "no bound below", { temperature: 320 })).toBe(
    "no bound below (temperature, K) | words the fuel is above its data, so no bound below matters: from 0 K on | 0".replace(
      "on | 0",
      "on:  | 0",
    ),
  );
});

test("figureMakers(system, asked) tells air freed under suction between the ends of its formula's data alone", () => {
  const workboat = demoSystem("pickup-single");
  const at = (temperature: number) => figure(workboat, "air freed under suction", { temperature });
  expect(at(280)).toMatchObject({ name: "air freed under suction", unit: "1" });
  expect(at(228)).not.toBeNull();
  expect(at(227.99)).toBeNull();
});

test("lifeMakers(system, asked) comes to life's figures", () => {
  const pickup = demoSystem("pickup-single");
  const answer = life(pickup);
  const of = (name: string) => find(lifeMakers(pickup, {}), name)?.value ?? null;
  expect(of("end of life")).toEqual(near(answer.end?.time));
  expect(of("year of duty")).toEqual(near(answer.year));
  expect(of("horizon")).toEqual(near(answer.horizon));
  expect(of("change")).toEqual(near(answer.change?.time));
  expect(of("service interval")).toEqual(near(answer.interval?.time));
  expect(of("longest interval")).toEqual(near(answer.interval?.atMost));
  expect(of("temperature it is judged at")).toEqual(near(answer.end?.pointTemperature));
  expect(of("fuel burnt at the end of life")).toEqual(near(answer.end?.burnt, 9));
  expect(of("years of duty at the change")).toEqual(near(answer.change?.years, 9));
  expect(of("distance at the change")).toEqual(near(answer.change?.distance));
  for (const { name, soil, drop, share } of answer.elements) {
    expect(of(`soil on ${name}`)).toEqual(near(soil, 9));
    expect(of(`drop of ${name} at the end`)).toEqual(near(drop));
    expect(of(`share of the rise of ${name}`)).toEqual(near(share));
  }
  const makers = lifeMakers(pickup, {});
  expect(makers.every(({ slow }) => slow)).toBe(true);
});

test("lifeMakers(system, asked) tells the way there, by moments of the trace or by running time", () => {
  const lorry = demoSystem("lorry");
  const { trace } = life(lorry);
  const at = (asked: Asked, name = "running time at a moment") => find(lifeMakers(lorry, asked), name);
  expect(lifeMakers(lorry, {}).some(({ name }) => name.endsWith("at a moment"))).toBe(false);
  for (const moment of [0, 1, trace.time.length - 1]) {
    expect(at({ moment })?.value).toBeCloseTo(trace.time[moment] ?? Number.NaN, 3);
    expect(at({ moment }, "vacuum at a moment")?.value).toBeCloseTo(trace.vacuum[moment] ?? Number.NaN, 4);
  }
  expect(stepLines([at({ moment: 0 })].flatMap((step) => step ?? []))[0]).toMatch("words the start:  | 0");
  // 1 320 h of a year, five months of it winter: after 600 h the summer has begun.
  const HOUR = 3600;
  const there = at({ after: 600 * HOUR });
  expect(there?.value).toBe(600 * HOUR);
  const shares = there?.origin.by === "formula" ? (there.origin.inputs[0]?.steps ?? []) : [];
  expect(shares.map(({ name, value }) => [name, Math.round(value / HOUR)])).toEqual([
    ["running time in winter", 550],
    ["running time in summer", 50],
  ]);
});

test("lifeMakers(system, asked) of a life that cannot be told has no year and no horizon to speak of", () => {
  const makers = lifeMakers(unpredicted(demoSystem("pickup-single")), {});
  const words = "none: the file leaves out something a life rests on";
  expect(stepLines(makers.flatMap(({ make }) => make() ?? []))).toEqual([
    `year of duty (running time, s) | words ${words}:  | 0`,
    `horizon (running time, s) | words ${words}:  | 0`,
  ]);
  expect(makers.map(({ group }) => group)).toEqual(["How long the elements last", "How long the elements last"]);
});
