import { expect, test } from "vitest";
import { solveDamped } from "./solveDamped.js";

const rowsOf = (...rows: readonly (readonly number[])[]) => rows.map((row) => Float64Array.from(row));

test("solveDamped(slopes, misses, 0) takes linear misses to their least", () => {
  // The straight line through (0, 1), (1, 3), (2, 5), (3, 8), from 0: 0.8 + 2.3 x, worked out by hand.
  const move = solveDamped(rowsOf([1, 0], [1, 1], [1, 2], [1, 3]), Float64Array.of(-1, -3, -5, -8), 0);
  expect(move).toEqual([expect.closeTo(0.8, 12), expect.closeTo(2.3, 12)]);
});

test("solveDamped(slopes, misses, damping) goes 1/(1 + damping) of the way, whatever the column's length", () => {
  for (const length of [0.01, 1, 300]) {
    const move = solveDamped(rowsOf([length, 0], [0, 1]), Float64Array.of(-6, -2), 0.5);
    expect(move).toEqual([expect.closeTo(6 / length / 1.5, 9), expect.closeTo(2 / 1.5, 9)]);
  }
});

test("solveDamped(slopes, misses, damping) says null where columns are alike, and shares between them when held back", () => {
  const alike = rowsOf([1, 1], [2, 2]);
  expect(solveDamped(alike, Float64Array.of(-5, -10), 0)).toBeNull();
  // Each column is as long as the root of 5; alike, they do as one that is twice as long and held half as much.
  const share = 5 / (2 + 0.1);
  expect(solveDamped(alike, Float64Array.of(-5, -10), 0.1)).toEqual([
    expect.closeTo(share, 12),
    expect.closeTo(share, 12),
  ]);
});

test("solveDamped(slopes, misses, damping) leaves a parameter alone that moves nothing", () => {
  const still = rowsOf([2, 0], [0, 0]);
  expect(solveDamped(still, Float64Array.of(-6, 1), 0)).toBeNull();
  expect(solveDamped(still, Float64Array.of(-6, 1), 1)).toEqual([expect.closeTo(1.5, 12), expect.closeTo(0, 12)]);
});

test("solveDamped(slopes, misses, damping) says null where a figure is not a number", () => {
  expect(solveDamped(rowsOf([1], [1]), Float64Array.of(Number.NaN, 1), 1e-3)).toBeNull();
});
