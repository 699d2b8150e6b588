import { expect, test } from "vitest";
import { spreadOf } from "./spreadOf.js";

const lives = Float64Array.from([100, 200, 300, 400, 500, 600, 700, 800, 900, Number.NaN]);

test("spreadOf(lives, interval) counts draws that made a system, and how many end before the interval", () => {
  const { draws, low, middle, high, chance, atMost } = spreadOf(lives, { time: 300, atMost: 300 });
  expect({ draws, low, middle, high, atMost }).toEqual({ draws: 9, low: 100, middle: 500, high: 900, atMost: null });
  expect(chance).toBeGreaterThan(0.1);
  expect(chance).toBeLessThan(0.4);
});

test("spreadOf(lives, interval) does not count a life as long as the interval as ended before it", () => {
  expect(spreadOf(Float64Array.of(300, 300), { time: 300, atMost: 300 }).chance).toBe(0);
  expect(spreadOf(Float64Array.of(300, 300), { time: 300.1, atMost: 300.1 }).chance).toBe(1);
});

test("spreadOf(lives, interval) gives a chance of its own for the longest interval where that is longer", () => {
  const { chance, atMost } = spreadOf(Float64Array.of(200, 200), { time: 100, atMost: 300 });
  expect([chance, atMost?.chance]).toEqual([0, 1]);
});

test("spreadOf(lives, null) has no chance of anything", () => {
  expect(spreadOf(lives, null)).toMatchObject({ chance: 0, chanceError: 0, atMost: null });
});

test("spreadOf(lives, interval) asks for the longest interval only where it is longer than the usual", () => {
  expect(spreadOf(Float64Array.of(200, 200), { time: 300, atMost: 300 }).atMost).toBeNull();
  expect(spreadOf(Float64Array.of(200, 200), { time: 300, atMost: 200 }).atMost).toBeNull();
  expect(spreadOf(Float64Array.of(200, 200), { time: 100, atMost: 100.1 }).atMost).toEqual({
    chance: 0,
    chanceError: 0,
  });
});
