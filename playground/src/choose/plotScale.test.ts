import { expect, test } from "vitest";
import { scaleOf, ticksBetween } from "./plotScale.js";

test("ticksBetween(low, high, about) are round figures within the bounds", () => {
  expect(ticksBetween(0, 41, 4)).toEqual([0, 20, 40]);
  expect(ticksBetween(8.2, 20.9, 5)).toEqual([10, 15, 20]);
  expect(ticksBetween(-0.31, 0.29, 3)).toEqual([-0.2, 0, 0.2]);
  expect(ticksBetween(3, 3, 5)).toEqual([3]);
});

test("scaleOf(low, high, from, to) puts the ends where they belong", () => {
  const place = scaleOf(10, 20, 300, 0);
  expect([place(10), place(15), place(20)]).toEqual([300, 150, 0]);
});
