import { expect, test } from "vitest";
import { neighboursOf, quantileOf } from "./quantileOf.js";

const values = [
  { value: 30, weight: 1 },
  { value: 10, weight: 1 },
  { value: 20, weight: 2 },
];

// In order the middles of the weights lie at an eighth, a half and seven eighths.
test.each([
  [0, 10],
  [0.125, 10],
  [0.3125, 15],
  [0.5, 20],
  [0.6875, 25],
  [0.875, 30],
  [0.95, 30],
  [1, 30],
])("quantileOf(values, %d) is %d, straight between the middles of the weights", (share, value) => {
  expect(quantileOf(values, share)).toBeCloseTo(value, 12);
});

test("quantileOf(values, share) is the same for weights of another sum", () => {
  const heavier = values.map(({ value, weight }) => ({ value, weight: 7 * weight }));
  expect(quantileOf(heavier, 0.4)).toBeCloseTo(quantileOf(values, 0.4), 12);
});

test("quantileOf(values, share) leaves out what has no weight, and is no number without any", () => {
  expect(quantileOf([...values, { value: 15, weight: 0 }], 0.3125)).toBeCloseTo(15, 12);
  expect(quantileOf([{ value: 1, weight: 0 }], 0.5)).toBeNaN();
  expect(quantileOf([], 0.5)).toBeNaN();
});

test("quantileOf(values, share) does not go part of the way to what has no end", () => {
  const open = [
    { value: 10, weight: 1 },
    { value: Infinity, weight: 1 },
  ];
  expect([0.2, 0.25, 0.3, 0.9].map((share) => quantileOf(open, share))).toEqual([10, 10, Infinity, Infinity]);
});

test("neighboursOf(values, share) says on which values a share lies, by their places as given", () => {
  const least = { place: 1, value: 10, at: 0.125 };
  const middle = { place: 2, value: 20, at: 0.5 };
  const most = { place: 0, value: 30, at: 0.875 };
  expect(neighboursOf(values, 0.1)).toEqual({ before: null, after: least });
  expect(neighboursOf(values, 0.4)).toEqual({ before: least, after: middle });
  expect(neighboursOf(values, 0.9)).toEqual({ before: most, after: null });
});
