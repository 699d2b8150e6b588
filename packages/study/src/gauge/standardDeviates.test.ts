import { expect, test } from "vitest";
import { studentQuantile } from "./fit/studentQuantile.js";
import { standardDeviates } from "./standardDeviates.js";

test("standardDeviates(seed, dimensions, freedom, count) is Student's distribution in each dimension", () => {
  const draws = standardDeviates(1, 2, 5, 400);
  expect(draws).toHaveLength(400);
  for (const place of [0, 1]) {
    const own = draws.map((one) => one[place] as number).sort((one, other) => one - other);
    for (const share of [0.05, 0.25, 0.5, 0.75, 0.95]) {
      const below = own.filter((one) => one < studentQuantile(share, 5)).length / 400;
      expect(Math.abs(below - share)).toBeLessThan(0.02);
    }
  }
});

test("standardDeviates(seed, dimensions, freedom, count) is wide in all dimensions at once, and they are not correlated", () => {
  const draws = standardDeviates(1, 2, 5, 400);
  const mean = (of: (one: readonly number[]) => number) => draws.reduce((sum, one) => sum + of(one), 0) / 400;
  const at = (one: readonly number[], place: number) => one[place] as number;
  expect(Math.abs(mean((one) => at(one, 0) * at(one, 1)))).toBeLessThan(0.15);
  // One scale serves a whole draw: squares go together, which those of independent dimensions do not.
  const squares = mean((one) => Math.min(9, at(one, 0) ** 2) * Math.min(9, at(one, 1) ** 2));
  const apart = mean((one) => Math.min(9, at(one, 0) ** 2)) * mean((one) => Math.min(9, at(one, 1) ** 2));
  expect(squares).toBeGreaterThan(1.1 * apart);
});

test("standardDeviates(seed, dimensions, freedom, count) of much freedom is the normal distribution", () => {
  const own = standardDeviates(2, 1, 200, 400).map(([one = 0]) => one);
  const variance = own.reduce((sum, one) => sum + one * one, 0) / 400;
  expect(variance).toBeCloseTo(200 / 198, 1);
});

test("standardDeviates(seed, dimensions, freedom, count) is the same for the same asked, and another for any other", () => {
  const asked: readonly (readonly [number, number, number, number])[] = [
    [1, 2, 5, 20],
    [3, 2, 5, 20],
    [1, 3, 5, 20],
    [1, 2, 6, 20],
    [1, 2, 5, 21],
  ];
  const first = asked.map((one) => standardDeviates(...one));
  expect(new Set(first.map((one) => JSON.stringify(one))).size).toBe(asked.length);
  for (const [at, one] of asked.entries()) expect(standardDeviates(...one)).toBe(first[at]);
});

test("standardDeviates(seed, dimensions, freedom, count) keeps fifty tables, and then begins anew with the same figures", () => {
  const kept = standardDeviates(99, 1, 5, 3);
  for (let seed = 100; seed < 160; seed++) standardDeviates(seed, 1, 5, 1);
  const again = standardDeviates(99, 1, 5, 3);
  expect(again).not.toBe(kept);
  expect(again).toEqual(kept);
});
