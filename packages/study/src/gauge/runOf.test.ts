import type { GaugeReading, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { type RunReadings, runOf } from "./runOf.js";

const HOUR = 3600;
const atHours = (hours: readonly number[], changed: readonly number[] = []): GaugeReading[] =>
  hours.map((one, at) => ({ row: at + 1, line: null, hours: one * HOUR, changed: changed.includes(at) }));
const onDates = (dates: readonly string[]): GaugeReading[] =>
  dates.map((date, at) => ({ row: at + 1, line: null, date, changed: false }));
const systemOf = (last?: object, duty: object | undefined = { hoursADay: 9, daysAYear: 300 }) =>
  ({ duty, service: last && { last } }) as unknown as System;
const found = (readings: readonly GaugeReading[], system = systemOf(), stated = 1) => {
  const run = runOf(readings, system, stated);
  if ("code" in run) throw new Error(run.code);
  return run;
};
const hoursOf = ({ readings }: RunReadings) => readings.map(({ time }) => time / HOUR);
const unknown = { known: false };
const lastChange = { known: true, ratio: 1, by: "last change" };
const noted = { known: true, ratio: 1, by: "change in the readings" };

test("runOf(readings, system, stated) begins at the first reading where nothing is known of a change", () => {
  const readings = atHours([100, 130, 200]);
  for (const system of [systemOf(), systemOf({}), { ...systemOf(), service: undefined } as unknown as System]) {
    const run = found(readings, system);
    expect(run).toMatchObject({ start: unknown, earlier: 0, meter: 100 * HOUR });
    expect(hoursOf(run)).toEqual([0, 30, 100]);
    expect(run.readings.map(({ reading }) => reading)).toEqual(readings);
  }
});

test("runOf(readings, system, stated) begins with the soil that the file states, where it states any", () => {
  expect(found(atHours([100]), systemOf(), 2.5).start).toEqual({ known: true, ratio: 2.5, by: "stated" });
  expect(found(atHours([100]), systemOf(), 1).start).toEqual(unknown);
});

test("runOf(readings, system, stated) begins at the last change noted in the readings", () => {
  const run = found(atHours([100, 130, 200, 240], [1, 2]), systemOf(), 3);
  expect(run).toMatchObject({ start: noted, earlier: 2, meter: 200 * HOUR });
  expect(hoursOf(run)).toEqual([0, 40]);
  expect(found(atHours([100, 130], [0])).start).toEqual(noted);
});

test("runOf(readings, system, stated) begins at the last change of the file, with time since then", () => {
  const run = found(atHours([100, 130, 200, 240]), systemOf({ hours: 120 * HOUR }), 3);
  expect(run).toMatchObject({ start: lastChange, earlier: 1, meter: 120 * HOUR });
  expect(hoursOf(run)).toEqual([10, 80, 120]);
  expect(found(atHours([100, 130]), systemOf({ hours: 130 * HOUR }))).toMatchObject({ earlier: 1 });
});

test("runOf(readings, system, stated) goes by the later of a change noted and that of the file", () => {
  const readings = atHours([100, 130, 200, 240], [1]);
  expect(found(readings, systemOf({ hours: 129 * HOUR }))).toMatchObject({ start: noted, earlier: 1 });
  expect(found(readings, systemOf({ hours: 130 * HOUR })).start).toEqual(noted);
  expect(found(readings, systemOf({ hours: 150 * HOUR }))).toMatchObject({ start: lastChange, earlier: 2 });
});

test("runOf(readings, system, stated) passes over a change of the file after the last reading", () => {
  const late = systemOf({ hours: 500 * HOUR });
  expect(found(atHours([100, 130]), late)).toMatchObject({ start: unknown, earlier: 0 });
  expect(found(atHours([100, 130], [1]), late)).toMatchObject({ start: noted, earlier: 1 });
});

test("runOf(readings, system, stated) takes dates for running time by the duty, evenly over the calendar", () => {
  const run = found(onDates(["2026-01-01", "2026-01-02", "2027-01-01"]));
  expect(run).toMatchObject({ meter: null, start: unknown });
  // 2700 h in 365.25 days.
  const [first = -1, day = 0, year = 0] = hoursOf(run);
  expect(first).toBe(0);
  expect(day).toBeCloseTo(2700 / 365.25, 6);
  expect(year).toBeCloseTo((365 / 365.25) * 2700, 6);
});

test("runOf(readings, system, stated) by dates goes by the date of the last change", () => {
  const dates = onDates(["2026-01-01", "2026-02-01", "2026-03-01"]);
  const run = found(dates, systemOf({ date: "2026-01-22", hours: 5 * HOUR }));
  expect(run).toMatchObject({ start: lastChange, earlier: 1, meter: null });
  expect(hoursOf(run)[0]).toBeCloseTo((10 / 365.25) * 2700, 6);
  expect(found(dates, systemOf({ hours: 5 * HOUR })).start).toEqual(unknown);
  // By hours it goes by those.
  expect(found(atHours([100, 130]), systemOf({ date: "2026-01-22" })).start).toEqual(unknown);
});

test("runOf(readings, system, stated) cannot put dates in time without a duty, nor some hours and some dates", () => {
  const { duty: _, ...idle } = systemOf();
  expect(runOf(onDates(["2026-01-01"]), idle as System, 1)).toEqual({ code: "no duty for dates" });
  const mixed = [...onDates(["2026-01-01"]), ...atHours([100])];
  expect(runOf(mixed, systemOf(), 1)).toEqual({ code: "hours and dates mixed" });
});

test("runOf(readings, system, stated) goes by hours where every reading has both", () => {
  const both = atHours([100, 130]).map((one) => ({ ...one, date: "2026-01-01" }));
  expect(hoursOf(found(both))).toEqual([0, 30]);
  expect(found([])).toEqual({ readings: [], start: unknown, earlier: 0, meter: 0 });
});
