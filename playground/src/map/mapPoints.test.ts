import { check } from "@thirstline/study";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { mapPoints } from "./mapPoints.js";
import { unsureRanges } from "./unsureRanges.js";

test("mapPoints(system, temperatures) puts the ceilings where check does", () => {
  const system = demo("heron-finer.yaml");
  const temperatures = [263.15, 288.15];
  const points = mapPoints(system, temperatures);
  const due = check(system, { temperatures }).points;
  expect(points.map(({ atChange }) => atChange.low)).toEqual(due.map(({ ceilings }) => ceilings.atChange.flow.low));
  expect(points.map(({ clean }) => clean)).toEqual(due.map(({ ceilings }) => ceilings.clean.flow.low));
  expect(points[0]?.atChange.low).toBeLessThan(points[1]?.atChange.low ?? 0);
});

test("mapPoints(system, temperatures) is unsure below the cloud point", () => {
  expect(mapPoints(demo("heron.yaml"), [253.15, 263.15]).map(({ unsure }) => unsure)).toEqual([true, false]);
});

const point = (temperature: number, unsure: boolean) => ({
  temperature,
  unsure,
  clean: 1,
  atChange: { low: 1, high: 1 },
});

test("unsureRanges(points, cloudPoint) ends exactly at the cloud point, and half way where data end", () => {
  const points = [point(250, true), point(254, true), point(258, false), point(262, false), point(266, true)];
  expect(unsureRanges(points, 257)).toEqual([
    { from: 250, to: 257, wax: true },
    { from: 264, to: 266, wax: false },
  ]);
  expect(unsureRanges(points, null)[0]).toEqual({ from: 250, to: 256, wax: false });
  expect(unsureRanges([point(250, false)], 240)).toEqual([]);
});
