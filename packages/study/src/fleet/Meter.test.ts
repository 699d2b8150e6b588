import { expect, test } from "vitest";
import { dayOf } from "./day.js";
import { Meter, type MeterReading } from "./Meter.js";

const read = (date: string, value: number, isNew = false): MeterReading => ({ day: dayOf(date), value, isNew });

test("Meter.of(readings, duty) takes its rate from the last year of the log", () => {
  const meter = Meter.of([read("2024-01-01", 0), read("2026-01-01", 100), read("2026-02-10", 300)], 99);
  expect(meter?.rate).toEqual({ perDay: 5, least: null, most: null, from: "log" });
  expect(meter?.at(dayOf("2026-02-20"))).toBe(350);
  expect(meter?.dayWhen(350)).toBe(dayOf("2026-02-20"));
  expect(meter?.dayWhen(200)).toBe(dayOf("2026-01-21"));
});

test("Meter.of(readings, duty) takes the duty's rate where the log has less than two weeks", () => {
  expect(Meter.of([read("2026-01-01", 0), read("2026-01-10", 90)], 4)?.rate).toMatchObject({ perDay: 4, from: "duty" });
  expect(Meter.of([], 4)?.rate.from).toBe("duty");
  expect(Meter.of([read("2026-01-01", 0)], null)).toBeNull();
});

test("Meter.of(readings, duty) tells the slowest and the fastest month", () => {
  const meter = Meter.of([read("2026-01-01", 0), read("2026-01-31", 30), read("2026-03-02", 120)], null);
  expect(meter?.rate).toEqual({ perDay: 2, least: 1, most: 3, from: "log" });
});

test("Meter.of(readings, duty) counts on over a new meter, at the rate of use while none was read", () => {
  const meter = Meter.of(
    [read("2026-01-01", 1000), read("2026-01-21", 1100), read("2026-01-23", 0, true), read("2026-02-02", 50)],
    null,
  );
  expect(meter?.rate.perDay).toBe(5);
  expect(meter?.at(dayOf("2026-02-02"))).toBe(1160);
});

test("dayWhen(total) of a machine that stands still never comes", () => {
  const meter = Meter.of([read("2026-01-01", 1000), read("2026-02-21", 1000)], 3);
  expect(meter?.rate.perDay).toBe(0);
  expect(meter?.dayWhen(1001)).toBe(Infinity);
  expect(meter?.dayWhen(1000)).toBe(dayOf("2026-01-01"));
});
