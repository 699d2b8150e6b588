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

const flat = (day: number, value: number, isNew = false): MeterReading => ({ day, value, isNew });
const meterOf = (readings: readonly MeterReading[], duty: number | null = null) => Meter.of(readings, duty) as Meter;

test("Meter.of([], duty) starts from nothing, and counts from there both ways", () => {
  const meter = meterOf([], 4);
  expect([meter.at(10), meter.at(-10)]).toEqual([40, -40]);
  expect([meter.dayWhen(40), meter.dayWhen(-40)]).toEqual([10, -10]);
});

test("at(day) is on the reading of its day, straight between, and at the rate of use outside", () => {
  const meter = meterOf([flat(100, 0), flat(110, 20), flat(130, 120)]);
  expect(meter.rate.perDay).toBe(4);
  expect([90, 100, 105, 110, 120, 130, 140].map((day) => meter.at(day))).toEqual([-40, 0, 10, 20, 70, 120, 160]);
});

test("dayWhen(total) is the day at(day) comes to it, before the first reading as well", () => {
  const meter = meterOf([flat(100, 0), flat(110, 20), flat(130, 120)]);
  expect([-40, 0, 10, 20, 70, 120, 160].map((total) => meter.dayWhen(total))).toEqual([
    90, 100, 105, 110, 120, 130, 140,
  ]);
  expect(meter.dayWhen(160, 2)).toBe(150);
  expect(meter.dayWhen(-40, 2)).toBe(80);
  expect([meter.dayWhen(160, 0), meter.dayWhen(-40, 0)]).toEqual([Infinity, 100]);
});

test("Meter.of(readings, duty) looks back a year from the last reading, that day included", () => {
  const rate = (from: number) => meterOf([flat(0, 0), flat(from, 1000), flat(1000, 2000)]).rate.perDay;
  expect(rate(1000 - 365)).toBeCloseTo(1000 / 365, 12);
  // A day sooner it is left out, and a reading by itself tells nothing.
  expect(Meter.of([flat(0, 0), flat(1000 - 366, 1000), flat(1000, 2000)], null)).toBeNull();
});

test("Meter.of(readings, duty) takes a rate of two weeks and more", () => {
  expect(meterOf([flat(0, 0), flat(14, 28)]).rate).toMatchObject({ perDay: 2, from: "log" });
  expect(Meter.of([flat(0, 0), flat(13, 28)], null)).toBeNull();
});

test("Meter.of(readings, duty) puts steps together until they are four weeks, and leaves what is left over", () => {
  const rate = (...days: readonly number[]) => {
    const ends = days.map((_, at) => days.slice(0, at + 1).reduce((sum, one) => sum + one, 0));
    return meterOf([flat(0, 0), ...ends.map((day, at) => flat(day, (at + 1) * 100))]).rate;
  };
  // 200 in 28 days, and 100 in 28; the last 10 days are no month.
  expect(rate(14, 14, 28, 10)).toMatchObject({ least: 100 / 28, most: 200 / 28 });
  expect(rate(14, 13, 28)).toMatchObject({ least: null, most: null });
});

test("Meter.of(readings, duty) counts the last of several readings on a day, and a new meter from where it starts", () => {
  const twice = meterOf([flat(0, 0), flat(20, 100), flat(20, 120), flat(40, 220)]);
  expect(twice.points).toEqual([
    { day: 0, total: 0 },
    { day: 20, total: 120 },
    { day: 40, total: 220 },
  ]);
  // 5 a day while neither was read: 10 days, 50, and the new one starts at 30.
  const renewed = meterOf([flat(0, 0), flat(20, 100), flat(30, 30, true), flat(40, 80)]);
  expect(renewed.points).toEqual([
    { day: 0, total: 0 },
    { day: 20, total: 100 },
    { day: 30, total: 150 },
    { day: 40, total: 200 },
  ]);
});

test("dayWhen(total) before a first reading counts back from what that showed", () => {
  const meter = meterOf([flat(100, 50), flat(120, 90)]);
  expect([meter.dayWhen(50), meter.dayWhen(40), meter.dayWhen(30)]).toEqual([100, 95, 90]);
});

test("Meter.of(readings, duty) puts a new meter behind the last of many readings", () => {
  const readings = [flat(0, 0), flat(10, 50), flat(20, 100), flat(30, 150), flat(40, 0, true), flat(50, 50)];
  expect(meterOf(readings).at(50)).toBe(250);
});
