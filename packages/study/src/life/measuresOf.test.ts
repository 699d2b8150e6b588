import type { Life } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import type { Duty } from "./dutyOf.js";
import { measuresOf } from "./measuresOf.js";

const HOUR = 3600;
const duty = { year: 1000 * HOUR } as Duty;
const momentsAt = (...moments: [time: number, burnt: number][]) => moments.map(([time, burnt]) => ({ time, burnt }));
const lifeOf = (moments: readonly object[], end: object | null = null) => ({ moments, end }) as unknown as Life;
const found = lifeOf(momentsAt([0, 0], [100, 1], [300, 7]), { time: 400, burnt: 8 });
const measures = (system: object, time: number, life = found) => measuresOf(system as System, duty, life, time);
const burnt = (time: number, life = found) => measures({}, time, life).burnt;

test("measuresOf(system, duty, found, time).burnt goes straight between the moments known", () => {
  expect([0, 50, 100, 200, 300, 350, 400].map((time) => burnt(time))).toEqual([0, 0.5, 1, 4, 7, 7.5, 8]);
});

test("measuresOf(system, duty, found, time).burnt goes on at the mean beyond the last, and takes the first before it", () => {
  expect(burnt(800)).toBe(16);
  expect(burnt(600, lifeOf(momentsAt([0, 0], [300, 6])))).toBe(12);
  expect(burnt(5, lifeOf(momentsAt([10, 2], [20, 3])))).toBe(2);
  expect(burnt(10, lifeOf(momentsAt([10, 2], [10, 3])))).toBe(2);
});

test("measuresOf(system, duty, found, time).burnt is 0 where nothing was followed", () => {
  expect(burnt(100, lifeOf([]))).toBe(0);
  expect(burnt(100, lifeOf(momentsAt([0, 0])))).toBe(0);
});

test("measuresOf(system, duty, found, time) counts the date from the last change, else from the first day of the duty", () => {
  const half = 500 * HOUR;
  const last = { date: "2026-01-01", hours: 10 * HOUR, distance: 5e6 };
  const known = { duty: { starts: "2025-01-01", distance: 40e6 }, service: { last } };
  expect(measures(known, half)).toMatchObject({
    time: half,
    years: 0.5,
    date: "2026-07-02",
    distance: 20e6,
    hourMeter: 510 * HOUR,
    distanceMeter: 25e6,
  });
  expect(measures({ duty: { starts: "2025-01-01" } }, half).date).toBe("2025-07-02");
});

test("measuresOf(system, duty, found, time) leaves open what the file does not tell", () => {
  const open = { date: null, distance: null, hourMeter: null, distanceMeter: null };
  expect(measures({}, HOUR)).toMatchObject(open);
  expect(measures({ duty: {}, service: {} }, HOUR)).toMatchObject(open);
  expect(measures({ duty: {}, service: { last: { distance: 5e6 } } }, HOUR)).toMatchObject(open);
  expect(measures({ duty: { distance: 1 }, service: { last: {} } }, HOUR)).toMatchObject({ distanceMeter: null });
});

test("measuresOf(system, duty, found, time) has no date beyond what a calendar holds", () => {
  expect(measures({ duty: { starts: "2026-01-01" } }, 1e6 * duty.year).date).toBeNull();
});
