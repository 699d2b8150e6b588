import { describe, expect, test } from "vitest";
import { MOST_DIMENSIONS, quasiRandom } from "./quasiRandom.js";
import { radicalInverse } from "./radicalInverse.js";

describe("radicalInverse(index, base)", () => {
  // The first points of Halton's sequence (Numer. Math. 2 (1960) 84), worked out by hand from its definition.
  test.each([
    [2, [0, 1 / 2, 1 / 4, 3 / 4, 1 / 8, 5 / 8, 3 / 8, 7 / 8, 1 / 16]],
    [3, [0, 1 / 3, 2 / 3, 1 / 9, 4 / 9, 7 / 9, 2 / 9, 5 / 9, 8 / 9, 1 / 27]],
    [5, [0, 1 / 5, 2 / 5, 3 / 5, 4 / 5, 1 / 25, 6 / 25]],
  ])("in base %i begins as worked out by hand", (base, points) => {
    expect(points.map((_, index) => radicalInverse(index, base))).toEqual(points);
  });
});

describe("quasiRandom(seed, dimensions)", () => {
  test("is Halton's sequence turned by one shift in each dimension", () => {
    const point = quasiRandom(7, 3);
    const shifts = [0, 1, 2, 50, 1000].map((index) =>
      [2, 3, 5].map((base, at) => ((point(index)[at] ?? 0) - radicalInverse(index + 409, base) + 1) % 1),
    );
    const [first = []] = shifts;
    for (const shift of shifts) {
      for (const [at, one] of shift.entries()) expect(one).toBeCloseTo(first[at] ?? -1, 12);
    }
  });

  test("stays within 0 and 1, and falls evenly: the mean of 2000 points is a half in every dimension", () => {
    const point = quasiRandom(3, MOST_DIMENSIONS);
    const points = Array.from({ length: 2000 }, (_, index) => point(index));
    for (let at = 0; at < MOST_DIMENSIONS; at++) {
      const own = points.map((one) => one[at] ?? Number.NaN);
      expect(Math.min(...own)).toBeGreaterThanOrEqual(0);
      expect(Math.max(...own)).toBeLessThan(1);
      expect(own.reduce((sum, one) => sum + one, 0) / own.length).toBeCloseTo(0.5, 1.5);
    }
  });

  test("turns otherwise for another seed", () => {
    expect(quasiRandom(1, 2)(0)).not.toEqual(quasiRandom(2, 2)(0));
  });
});

test("quasiRandom(seed, dimensions) is shifted by the generator's known first numbers", () => {
  // mulberry32 of seed 0 begins with these, as its author's page prints them (from memory).
  const known = [0.26642920868471265, 0.0003297457005828619, 0.2232720274478197];
  const first = quasiRandom(0, 3)(0);
  const wanted = known.map((shift, at) => (radicalInverse(409, [2, 3, 5][at] ?? 0) + shift) % 1);
  expect(first).toEqual(wanted.map((one) => expect.closeTo(one, 12)));
});

test("quasiRandom(seed, dimensions) takes any whole number for a seed", () => {
  const first = [-1, 0, 1, 2 ** 32 - 1, 2 ** 32].map((seed) => quasiRandom(seed, 1)(0)[0]);
  expect(first[0]).toBe(first[3]);
  expect(first[1]).toBe(first[4]);
  expect(new Set(first).size).toBe(3);
});

test("quasiRandom(seed, dimensions) uses each of its forty dimensions' own prime", () => {
  const point = quasiRandom(5, MOST_DIMENSIONS);
  expect(MOST_DIMENSIONS).toBe(40);
  // In the base of its own prime a coordinate moves on by one over it; no other base does that everywhere.
  const moved = point(0).map((one, at) => ((point(1)[at] ?? 0) - one + 1) % 1);
  const primes = Array.from({ length: 173 }, (_, at) => at + 1).filter(
    (one) => one > 1 && !Array.from({ length: one }, (_, by) => by).some((by) => by > 1 && one % by === 0),
  );
  for (const [at, prime] of primes.entries()) {
    const carries = 410 % prime === 0;
    if (!carries) expect(moved[at]).toBeCloseTo(1 / prime, 9);
  }
  expect(primes).toHaveLength(40);
});
