import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { bleedPoints } from "./bleedPoints.js";
import { cardNames, changedOf } from "./changedOf.js";

const heron = demoSystem("heron");
const riseOf = (height: number): SystemPart => ({ part: "rise", height }) as SystemPart;
const pointsOf = (system: System, ...names: string[]) => bleedPoints(system, changedOf(system, names));
const deliveryOf = (...parts: SystemPart[]): System => ({ ...heron, delivery: [...(heron.delivery ?? []), ...parts] });

test("bleedPoints(heron, all) goes from the prefilters over the pump to the end", () => {
  const points = pointsOf(heron);
  expect(points.slice(0, 4)).toEqual(["prefilter A", "prefilter B", "the lift pump's outlet", "fine filter"]);
  expect(points).toHaveLength(5);
});

test("bleedPoints(heron, changed) begins at the first changed one: behind the pump no air has come through it", () => {
  expect(pointsOf(heron, "fine filter")).toEqual(pointsOf(heron).slice(3));
  expect(pointsOf(heron, "fine filter", "prefilter B")).toEqual(pointsOf(heron).slice(1));
});

test("bleedPoints(system, changed) has no pump to bleed where there is none", () => {
  expect(pointsOf(demoSystem("generator")).join()).not.toContain("pump");
});

test("bleedPoints(system, changed) has the high point where a path that has climbed falls again, by what stands before it", () => {
  expect(pointsOf(deliveryOf(riseOf(0.4), riseOf(-0.3)))).toContain("the high point after fine filter");
});

test.each([
  ["climbs only", [riseOf(0.4), riseOf(0.2)]],
  ["falls only", [riseOf(-0.4), riseOf(-0.2)]],
  ["runs level after it has climbed", [riseOf(0.4), riseOf(0)]],
  ["ran level before it falls", [riseOf(0), riseOf(-0.3)]],
] as const)("bleedPoints(system, changed) has no high point where the path %s", (_, parts) => {
  expect(pointsOf(deliveryOf(...parts)).join()).not.toContain("high point");
});

test("changedOf(system, names) refuses a name that is no filter, and lists those there are", () => {
  expect(() => changedOf(heron, ["prefilter A", "prefilter C"])).toThrow(
    'one of "prefilter A", "prefilter B", "fine filter"',
  );
  expect(cardNames(heron)).toEqual(["prefilter A", "prefilter B", "fine filter"]);
});

test("bleedPoints(system, changed) finds the high point whatever stands between the climb and the fall", () => {
  const hose = { part: "line", name: "top hose", length: 1, bore: 0.01, roughness: 0 } as SystemPart;
  expect(pointsOf(deliveryOf(riseOf(0.4), hose, riseOf(-0.3)))).toContain("the high point after top hose");
});
