import { expect, test } from "vitest";
import { ticks } from "./ticks.js";

test.each([
  [0, 100, 4, [0, 50, 100]],
  [58.3, 103.1, 4, [60, 80, 100]],
  [-40, 60, 8, [-40, -20, 0, 20, 40, 60]],
  [0.1, 0.35, 4, [0.1, 0.2, 0.3]],
])("ticks(%d, %d, %d) are round figures between the ends", (low, high, wanted, due) => {
  expect(ticks(low, high, wanted)).toEqual(due);
});

test("ticks(low, high) of no stretch are none", () => {
  expect(ticks(5, 5)).toEqual([]);
  expect(ticks(Number.NaN, 1)).toEqual([]);
});
