import { expect, test } from "vitest";
import { closeBracket } from "./closeBracket.js";

/** Closes the bracket from low to high, and counts how often it asks. */
function closed(fall: (x: number) => number, low: number, high: number, relative = 0) {
  let asked = 0;
  const counted = (x: number) => {
    asked++;
    return fall(x);
  };
  const ends = closeBracket(counted, { at: low, value: fall(low) }, { at: high, value: fall(high) }, relative);
  return { ...ends, asked };
}

test.each<[string, (x: number) => number, high: number, asked: number]>([
  ["2 - x²", (x) => 2 - x * x, 2, 7],
  ["3 - x - x²", (x) => 3 - x - x * x, 5, 8],
  ["3 - x - x^1.75", (x) => 3 - x - x ** 1.75, 5, 8],
  ["30 - x - x^1.75", (x) => 30 - x - x ** 1.75, 50, 10],
  ["1.2 - √x", (x) => 1.2 - Math.sqrt(x), 40, 5],
])(
  "closeBracket(%s, …, 0) leaves neighbours or nearly about the root, within ten evaluations",
  (_, fall, high, asked) => {
    const ends = closed(fall, 0, high);
    expect(fall(ends.low)).toBeGreaterThanOrEqual(0);
    expect(fall(ends.high)).toBeLessThan(0);
    expect(ends.high - ends.low).toBeGreaterThan(0);
    expect(ends.high - ends.low).toBeLessThanOrEqual(2 ** -50 * ends.high);
    expect(ends.asked).toBeLessThanOrEqual(asked);
  },
);

test("closeBracket(fall, low, high, 0.01) stops at a width of a hundredth of the larger end", () => {
  const ends = closed((x) => 2 - x ** 3, 0, 2, 0.01);
  expect(ends.high - ends.low).toBeLessThanOrEqual(0.01 * ends.high);
  expect([ends.low ** 3 <= 2, ends.high ** 3 > 2]).toEqual([true, true]);
  expect(ends.asked).toBeLessThan(closed((x) => 2 - x ** 3, 0, 2).asked);
});

test("closeBracket(fall, below 0, above 0) closes on a root below 0 as on one above", () => {
  const ends = closed((x) => -3 - x, -8, 1, 1e-12);
  expect(ends.low).toBeLessThanOrEqual(-3);
  expect(ends.high).toBeGreaterThan(-3);
  expect(ends.high - ends.low).toBeLessThanOrEqual(8e-12);
});

test("closeBracket(fall that steps, …) closes on the step, be the values infinite", () => {
  for (const jump of [1, Infinity]) {
    const ends = closed((x) => (x <= 0.3 ? jump : -jump), 0, 1);
    expect(ends.low).toBeLessThanOrEqual(0.3);
    expect(ends.high).toBeGreaterThan(0.3);
    expect(ends.high - ends.low).toBeLessThanOrEqual(2 ** -51);
    expect(ends.asked).toBeLessThan(60);
  }
});

test("closeBracket(fall of two neighbours, …) hands them back without asking", () => {
  const ends = closed((x) => 1 - x, 1, 1 + Number.EPSILON);
  expect(ends).toEqual({ low: 1, high: 1 + Number.EPSILON, asked: 0 });
});
