import { expect, test } from "vitest";
import type { LeastSquares, Misses } from "./LeastSquares.js";
import { placeAt, polish } from "./polish.js";

/** A curved valley whose least, 0, lies at (1, 1); H. H. Rosenbrock, Comput. J. 3 (1960) 175. */
const valley: Misses = ([a = 0, b = 0]) => Float64Array.of(10 * (b - a * a), 1 - a);
const line: Misses = ([a = 0, b = 0]) => Float64Array.of(a - 1, a + b - 3, a + 2 * b - 5, a + 3 * b - 8);

/** Misses that count how often they are asked for. */
function counting(misses: Misses) {
  const count = { asked: 0 };
  const counted: Misses = (parameters) => {
    count.asked++;
    return misses(parameters);
  };
  return { count, counted };
}

const from = (misses: Misses, start: readonly number[], toTheLast = true, bounds: Partial<LeastSquares> = {}) =>
  polish(
    { misses, starts: [start], ...bounds },
    placeAt(misses, start),
    start.map(() => 1),
    toTheLast,
  );

test("placeAt(misses, parameters) adds up squares, and says Infinity where one is no number", () => {
  const given = (...misses: number[]) => placeAt(() => Float64Array.from(misses), [7]);
  expect(given(3, -4)).toEqual({ parameters: [7], misses: Float64Array.of(3, -4), sum: 25 });
  expect([given(3, Number.NaN).sum, given(3, -Infinity).sum, given().sum]).toEqual([Infinity, Infinity, 0]);
});

test("polish(problem, from, scale) comes down a curved valley to its least", () => {
  const place = from(valley, [-1.2, 1]);
  expect(place.parameters).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
  expect(place.sum).toBeLessThan(1e-24);
  expect(place.misses).toEqual(valley(place.parameters));
});

test("polish(problem, from, scale) gives linear misses their last figures", () => {
  const place = from(line, [100, -40]);
  expect(place.parameters).toEqual([expect.closeTo(0.8, 13), expect.closeTo(2.3, 13)]);
  expect(place.sum).toBeCloseTo(0.3, 13);
});

test("polish(problem, from, scale) stays at the least, and asks little there", () => {
  const { count, counted } = counting(line);
  const place = from(counted, [0.8, 2.3]);
  expect(place.parameters).toEqual([expect.closeTo(0.8, 13), expect.closeTo(2.3, 13)]);
  expect(count.asked).toBeLessThan(60);
});

test("polish(problem, from, scale) with a sum of nothing ends at once", () => {
  const { count, counted } = counting(([a = 0]) => Float64Array.of(a - 2));
  expect(from(counted, [5]).parameters[0]).toBeCloseTo(2, 14);
  expect(count.asked).toBeLessThan(40);
});

test("polish(problem, from, scale, not to the last) tries eight moves at most, each better than the last", () => {
  const { count, counted } = counting(valley);
  const place = from(counted, [-1.2, 1], false);
  // The start, four for slopes at each of nine places, and eight tries.
  expect(count.asked).toBeLessThanOrEqual(1 + 4 * 9 + 8);
  expect(place.sum).toBeLessThan(placeAt(valley, [-1.2, 1]).sum);
  expect(place.sum).toBeGreaterThan(1e-6);
});

test("polish(problem, from, scale, not to the last) ends where a move wins less than a part in ten thousand", () => {
  const { count, counted } = counting(line);
  const place = from(counted, [0.81, 2.295], false);
  expect(place.sum).toBeCloseTo(0.3, 6);
  // The start, slopes, one move and no more slopes.
  expect(count.asked).toBeLessThanOrEqual(1 + 4 + 1 + 4 + 1);
});

test("polish(problem, from, scale) holds parameters within their bounds", () => {
  const apart: Misses = ([a = 0, b = 0]) => Float64Array.of(a - 5, b + 5);
  const bounds = { lower: [-1, -2], upper: [3, 4] };
  for (const toTheLast of [true, false]) expect(from(apart, [0, 0], toTheLast, bounds).parameters).toEqual([3, -2]);
  expect(from(apart, [0, 0], true, { upper: [3] }).parameters).toEqual([3, expect.closeTo(-5, 12)]);
});

test("polish(problem, from, scale) never takes a place where a miss is no number, nor a worse one", () => {
  const walled: Misses = ([a = 0]) => Float64Array.of(a < 1 ? Number.NaN : Math.sqrt(a));
  const place = from(walled, [9]);
  expect(place.sum).toBeLessThan(9);
  expect(place.parameters[0]).toBeGreaterThanOrEqual(1);
  const away: Misses = ([a = 0]) => Float64Array.of(Math.abs(a) + 1);
  expect(from(away, [0]).parameters).toEqual([0]);
});

const alike: Misses = ([a = 0, b = 0]) => Float64Array.of(a + b - 1, a + b - 3);
const walled: Misses = ([a = 0]) => Float64Array.of(a < 1 ? Number.NaN : Math.sqrt(a));
const away: Misses = ([a = 0]) => Float64Array.of(Math.abs(a) + 1);
const one: Misses = ([a = 0]) => Float64Array.of(a - 2);

// As kept: nothing but a run tells how often each asks. A way of stepping that asks more, or ends before, shows here.
test.each([
  ["a line at its least", line, [0.8, 2.3], 28, 13],
  ["a line from afar", line, [100, -40], 31, 16],
  ["a line from nearby", line, [0.81, 2.295], 60, 11],
  ["a curved valley", valley, [-1.2, 1], 125, 25],
  ["a sum that vanishes", one, [5], 16, 13],
  ["a wall beyond which nothing is known", walled, [9], 95, 15],
  ["a place that every move makes worse", away, [0], 23, 11],
  ["two parameters that do the same", alike, [1, 5], 46, 11],
] as const)(
  "polish(problem, from, scale) asks so often of %s, to the last figures and not",
  (_, misses, start, ...asked) => {
    const counts = [true, false].map((toTheLast) => {
      const { count, counted } = counting(misses);
      from(counted, start, toTheLast);
      return count.asked;
    });
    expect(counts).toEqual(asked);
  },
);

test("polish(problem, from, scale) gives two parameters that do the same their common best", () => {
  const [a = 0, b = 0] = from(alike, [1, 5]).parameters;
  expect(a + b).toBeCloseTo(2, 12);
});
