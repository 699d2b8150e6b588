import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import type { PartRow } from "./CheckAnswer.js";
import { check } from "./check.js";

const heron = demoSystem("heron");
const hose = (name: string): SystemPart => ({ part: "line", name, length: 1, bore: 0.019, roughness: 0 });
const pair = (name: string): SystemPart => ({ part: "bank", name, branches: [[hose("one")], [hose("other")]] });
const rowsOf = (suction: readonly SystemPart[]): readonly PartRow[] =>
  check({ ...heron, suction }).points[0]?.suction ?? [];

test("check(system) names banks by their branches, numbered from the second on, as parts of one name are", () => {
  const names = rowsOf([pair("left"), hose("hose"), pair("right")]).map(({ name, depth }) => [name, depth]);
  expect(names).toEqual([
    ["port tank", 0],
    ["2 in parallel", 0],
    ["one", 1],
    ["other", 1],
    ["hose", 0],
    ["2 in parallel (2)", 0],
    ["one (2)", 1],
    ["other (2)", 1],
    ["fuel's motion at the pump", 0],
  ]);
});

test("check(system) gives each row its share of all that costs, which come to one; the tank's head has none", () => {
  const [tank, ...rest] = rowsOf(heron.suction);
  expect(tank).toMatchObject({ name: "port tank", kind: "tank", share: 0 });
  // 0.2 m of fuel of some 840 kg/m3 at the low level.
  const density = -(tank?.drop ?? 0) / 9.80665 / 0.2;
  expect(density).toBeGreaterThan(820);
  expect(density).toBeLessThan(860);
  const main = rest.filter(({ depth }) => depth === 0);
  expect(main.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
});

test("check(system, { demand }) takes burn and return in proportion", () => {
  const at = (demand?: number) => check(heron, demand === undefined ? {} : { demand }).points[0]?.demand;
  const whole = at();
  const half = at((whole?.total ?? 0) / 2);
  expect(half?.total).toBeCloseTo((whole?.total ?? 0) / 2, 15);
  expect(half?.burn).toBeCloseTo((whole?.burn ?? 0) / 2, 15);
  expect(half?.return).toBeCloseTo((whole?.return ?? 0) / 2, 15);
  expect((half?.burn ?? 0) + (half?.return ?? 0)).toBeCloseTo(half?.total ?? 0, 15);
});

test("check(system) is the question's answer, and its verdict the worst of its points", () => {
  const answer = check(heron, { temperatures: [288.15, 250] });
  expect(answer).toMatchObject({
    question: "check",
    system: "Heron, port engine",
    pump: "fixed",
    limitSource: "operator's manual",
    verdict: "cannot say",
  });
  expect(answer.points.map(({ verdict }) => verdict)).toEqual(["holds", "cannot say"]);
  expect(check(heron, { temperatures: [] }).verdict).toBe("cannot say");
  const silent = { ...heron, limits: { vacuumClean: 20e3, vacuumAtChange: 40e3 } } as System;
  expect(check(silent).limitSource).toBeNull();
});
