import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem, unpredicted } from "../../../../tests/support/fleets.js";
import { check } from "../check/check.js";
import { mapParts } from "../choose/mapParts.js";
import { card } from "./card.js";
import { burns, endWord } from "./endWord.js";
import { isCock } from "./isCock.js";

const heron = unpredicted(demoSystem("heron"));
const generator = unpredicted(demoSystem("generator"));
const fuelled = (fuel: object): System => ({ ...heron, fuel: fuel as System["fuel"] });

test("card(system) is of all elements, at the file's own temperature, in metric units", () => {
  expect(card(heron)).toMatchObject({
    question: "card",
    system: "Heron, port engine",
    pump: "fixed",
    fuel: "diesel",
    temperature: 288.15,
    verdict: "card",
    left: [],
    cock: null,
    relief: 80e3,
    units: "metric",
    priming: { stroke: 25e-6, saidAllowed: false },
  });
});

test("card(system, { at }) lists the filters left as they are, and no screen", () => {
  const screen = { part: "strainer", name: "screen", aperture: 2e-4, wire: 1e-4, area: 1e-3 } as SystemPart;
  const system = { ...heron, suction: [screen, ...heron.suction] };
  const answer = card(system, { at: ["prefilter A"] });
  expect(answer.elements.map(({ name }) => name)).toEqual(["prefilter A"]);
  expect(answer.left).toEqual(["prefilter B", "fine filter"]);
});

test("card(system, options) takes what is asked before what the file says", () => {
  const asked = card(heron, { temperature: 280, prefill: "manual-allows", primer: 10e-6, units: "us" });
  expect(asked).toMatchObject({
    temperature: 280,
    units: "us",
    priming: { stroke: 10e-6, saidAllowed: true, allowed: ["prefilter A", "prefilter B", "fine filter"] },
  });
  expect(card({ ...heron, service: undefined } as unknown as System).priming.stroke).toBeNull();
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])(
  "card(system, { temperature: %d }) is refused",
  (temperature) => {
    expect(() => card(heron, { temperature })).toThrow(
      `card requires temperature to be more than 0 K, got ${temperature}`,
    );
  },
);

test("card(system) cannot say what to do where there is nothing to change", () => {
  const { suction, delivery } = heron;
  const bare = (parts: readonly SystemPart[]) => parts.filter(({ part }) => part !== "bank" && part !== "filter");
  const answer = card({ ...heron, suction: bare(suction), delivery: bare(delivery ?? []) });
  expect(answer).toMatchObject({ verdict: "cannot say", elements: [] });
  expect(answer.sections.map(({ name }) => name)).toEqual(["cautions"]);
});

test("card(system) has the nearest cock before the elements, and none behind them", () => {
  expect(card(generator).cock).toBe("tank cock");
  const [cock, ...rest] = generator.suction as readonly [SystemPart, ...SystemPart[]];
  const second = { ...cock, name: "second cock" } as SystemPart;
  expect(card({ ...generator, suction: [cock, second, ...rest] }).cock).toBe("second cock");
  expect(card({ ...generator, suction: [...rest, cock] }).cock).toBeNull();
});

test("card(system) reads gauges with its elements clean and the right way round, and the rest as the file has them", () => {
  const soiled = mapParts(heron, (part) =>
    part.part === "filter" ? { ...part, restriction: 5, reversed: true } : part,
  );
  const vacuum = (of: System, at?: string[]) => card(of, at ? { at } : {}).readings.at(-1)?.vacuum;
  expect(vacuum(soiled)).toEqual(vacuum(heron));
  const point = check(soiled, { temperatures: [288.15] }).points[0];
  expect(vacuum(soiled, ["fine filter"])).toEqual(point?.vacuumNow);
});

test("card(system).readings are at the duty's least load and at full demand, and check's figures there", () => {
  const { readings } = card(heron);
  const full = check(heron).points[0];
  const total = full?.demand.total ?? 0;
  expect(readings.map(({ load }) => load)).toEqual([0.4, 1]);
  expect(readings[1]).toEqual({ load: 1, demand: total, vacuum: full?.vacuum, feed: full?.feedPressure });
  const part = check(heron, { demand: 0.4 * total }).points[0];
  expect(readings[0]).toEqual({ load: 0.4, demand: 0.4 * total, vacuum: part?.vacuum, feed: part?.feedPressure });
});

test("card(system).readings are at full demand alone where no lower load is stated, and none where nothing passes", () => {
  const loadsOf = (of: System) => card(of).readings.map(({ load }) => load);
  const { duty } = heron;
  expect(loadsOf({ ...heron, duty: undefined } as unknown as System)).toEqual([1]);
  expect(loadsOf({ ...heron, duty: { ...duty, loads: undefined } } as unknown as System)).toEqual([1]);
  const loads = [{ load: 1, share: 1 }];
  expect(loadsOf({ ...heron, duty: { ...duty, loads } } as unknown as System)).toEqual([1]);
  const shut = mapParts(heron, (part) => (part.part === "filter" ? { ...part, blocked: true } : part));
  expect(loadsOf(shut)).toEqual([]);
});

test.each([
  [{ kind: "diesel" }, "diesel"],
  [{ kind: "biodiesel" }, "diesel"],
  [{ kind: "petrol" }, "petrol"],
  [{ kind: "premix" }, "petrol"],
  [{ kind: "measured", like: "petrol" }, "petrol"],
  [{ kind: "measured", like: "diesel" }, "diesel"],
] as const)("burns(system) of %j is %s, and its path ends where that is burnt", (fuel, name) => {
  const system = fuelled(fuel);
  expect(burns(system)).toBe(name);
  expect(endWord(system)).toBe(name === "petrol" ? "the engine" : "the injection pump");
  expect(endWord({ ...system, pump: { kind: "none" } as System["pump"] })).toBe("the engine");
});

test.each([
  ["fitting", "ball valve", true],
  ["fitting", "plug cock", true],
  ["fitting", "swing check valve", false],
  ["fitting", "elbow 90", false],
  ["fitting", undefined, false],
  ["line", undefined, false],
] as const)("isCock(a %s of kind %j) is %j", (part, kind, cock) => {
  expect(isCock({ part, name: "one", kind } as unknown as SystemPart)).toBe(cock);
});
