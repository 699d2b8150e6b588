import { readReadings } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demo } from "../../file/demos.test-support.js";
import type { Course } from "./Course.js";
import { gaugePlot } from "./gaugePlot.js";
import { axesOf, timescale } from "./timescale.js";
import { workGauge } from "./workGauge.js";

const texts = import.meta.glob<string>("../../../../packages/spec/demo/readings/heron-loading.csv", {
  query: "?raw",
  import: "default",
  eager: true,
});
const read = readReadings(Object.values(texts)[0] ?? "", { file: "heron-loading.csv" });
const readings = "readings" in read ? read.readings : [];
const told = workGauge(demo("heron.yaml"), readings);
const courses: readonly Course[] = told.kind === "gauge" ? told.courses : [];
const delivery = courses.find(({ side }) => side === "delivery");
if (delivery === undefined) throw new Error("the demonstration has feed pressures");

const valueAt = ({ line }: Course, of: "low" | "middle" | "high", time: number) => {
  const times = line?.time ?? [];
  const after = times.findIndex((one) => one >= time);
  return line?.[of][after] ?? Number.NaN;
};

test("courseOf(…) comes to the limit when the answer says so, at the middle and at both ends", () => {
  const { crossing, limit } = delivery;
  expect(limit).toBe(25_000);
  const ends = [
    ["high", crossing?.low],
    ["middle", crossing?.middle],
    ["low", crossing?.high],
  ] as const;
  // The drawn course is a chain of short straight pieces; each of its ends lies within one of them.
  for (const [of, time] of ends)
    expect(Math.abs(valueAt(delivery, of, time ?? Number.NaN) - 25_000)).toBeLessThan(1500);
});

test("courseOf(…) has every reading, about the course, and those of one gauge in the vacuum's own course", () => {
  expect(courses.map(({ side, points, earlier }) => [side, points.length, earlier.length])).toEqual([
    ["suction", 24, 0],
    ["delivery", 24, 0],
  ]);
  for (const course of courses) {
    const off = course.points.map(({ full, time }) => (full ?? Number.NaN) - valueAt(course, "middle", time));
    expect(Math.abs(off.reduce((sum, one) => sum + one, 0) / off.length)).toBeLessThan(600);
  }
});

test("gaugePlot(course, readings, how) stands over the meter's hours, in the units asked for", () => {
  expect(axesOf(delivery, readings)).toEqual(["hours"]);
  const at = timescale("hours", delivery, readings);
  expect(at(delivery.now)).toBeCloseTo(11813, 6);
  const plot = gaugePlot(delivery, readings, { axis: "hours", shown: "as read", units: "us", pump: "fixed" });
  expect(plot.points.at(-1)?.y).toBeCloseTo(63_000 / 6894.757293168, 9);
  expect([plot.y.symbol, plot.line, plot.expected.length]).toEqual(["psi", null, 24]);
});

test("timescale(axis, course, readings) goes by the readings' own days, and on as they went on the whole", () => {
  const dated = readings.slice(0, 3).map((one, at) => ({ ...one, date: `2026-03-${["01", "02", "05"][at]}` }));
  const course = { ...delivery, points: delivery.points.slice(0, 3).map((one, at) => ({ ...one, time: at * 3600 })) };
  expect(axesOf(course, dated)).toEqual(["hours", "date"]);
  const day = timescale("date", course, dated);
  const first = Date.parse("2026-03-01T00:00:00Z") / 864e5;
  expect([0, 1800, 3600, 5400, 7200, 10_800].map((time) => day(time) - first)).toEqual([0, 0.5, 1, 2.5, 4, 6]);
});
