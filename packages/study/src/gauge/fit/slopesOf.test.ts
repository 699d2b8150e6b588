import { expect, test } from "vitest";
import { slopesOf } from "./slopesOf.js";

test("slopesOf(misses, parameters, scale) has a row a miss and a column a parameter", () => {
  const misses = ([a = 0, b = 0]: readonly number[]) => Float64Array.of(a * a, 3 * a + b, b ** 3);
  const rows = slopesOf(misses, [2, -3], [1, 1]);
  const wanted = [
    [4, 0],
    [3, 1],
    [0, 27],
  ];
  expect(rows.map((row) => [...row])).toEqual(wanted.map((row) => row.map((one) => expect.closeTo(one, 8))));
});

test("slopesOf(misses, [], []) has no rows: nothing was asked", () => {
  expect(slopesOf(() => Float64Array.of(1, 2), [], [])).toEqual([]);
});

/** Where a function of one parameter is asked. */
function askedAt(value: number, scale: readonly number[]): number[] {
  const asked: number[] = [];
  slopesOf(
    ([one = 0]) => {
      asked.push(one);
      return Float64Array.of(one);
    },
    [value],
    scale,
  );
  return asked;
}

// The cube root of the last figure's worth of 1.
const STEP = 2 ** (-52 / 3);

test.each([
  ["a share of its size to either side", 4, [1], 4 * STEP],
  ["the same below zero", -4, [1], 4 * STEP],
  ["of zero, a millionth of such a share of its scale", 0, [500], 5e-4 * STEP],
  ["the same where it is too small to count", 1e-9, [1], 1e-6 * STEP],
  ["as of scale 1 where none is given", 0, [], 1e-6 * STEP],
] as const)("slopesOf(misses, parameters, scale) moves a parameter by %s", (_, value, scale, step) => {
  const asked = askedAt(value, scale).map((one) => (one - value) / step);
  expect(asked).toEqual([expect.closeTo(1, 6), expect.closeTo(-1, 6)]);
});
