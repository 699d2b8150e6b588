import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { nextOf } from "./nextOf.js";

const HOUR = 3600;
const YEAR = 365.25 * 24 * HOUR;
const service = { interval: 250 * HOUR, atMost: 500 * HOUR, calendar: YEAR, distance: 20e6, source: "the manual" };
const stated = { distance: 20e6, calendar: YEAR, source: "the manual" };
const next = (system: object, change: object | null = null) =>
  nextOf(system as System, { change } as unknown as LifeAnswer);

test("nextOf(system, life) is by life where that says", () => {
  const change = { time: 120 * HOUR, by: "restriction", burnt: 1, date: null };
  expect(next({ service }, change)).toEqual({ ...stated, change: { time: 120 * HOUR, by: "restriction" } });
});

test("nextOf(system, life) is by the manual's rules where life cannot say, a year counted in the hours of the duty", () => {
  const duty = (hoursADay: number, daysAYear: number) => ({ service, duty: { hoursADay, daysAYear } });
  // 2 hours on 100 days come to 200 hours a year, 3 hours to 300.
  expect(next(duty(2, 100)).change).toEqual({ time: 200 * HOUR, by: "calendar" });
  expect(next(duty(3, 100)).change).toEqual({ time: 250 * HOUR, by: "manual's interval" });
});

test("nextOf(system, life) is the interval alone where no duty says what a year comes to", () => {
  expect(next({ service })).toEqual({ ...stated, change: { time: 250 * HOUR, by: "manual's interval" } });
  expect(next({ service, duty: { hoursADay: 0, daysAYear: 100 } }).change).toEqual({
    time: 250 * HOUR,
    by: "manual's interval",
  });
});

test("nextOf(system, life) knows of no change where no service is stated", () => {
  expect(next({})).toEqual({ change: null, distance: null, calendar: null, source: null });
  expect(next({ service: { interval: 250 * HOUR } })).toMatchObject({ distance: null, calendar: null, source: null });
});
