import type { SystemFilter, SystemRatingKind } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { reachesRating } from "./betaAt.js";

const um = 1e-6;
const filter = (more: object) => ({ medium: { by: "flow test", points: [] }, ...more }) as unknown as SystemFilter;
const tested = (...betas: [size: number, beta: number][]) =>
  filter({ betas: betas.map(([size, beta]) => ({ size: size * um, beta })) });
const rated = (kind: SystemRatingKind, size: number) => filter({ statedRating: { kind, size: size * um } });
const reaches = (own: SystemFilter, beta: number, size: number) => reachesRating(own, { beta, size: size * um });

describe("reachesRating(filter, asked) of tested betas", () => {
  const own = tested([10, 20], [25, 200]);
  test.each([
    ["that beta at that size", 20, 10, true],
    ["less at that size", 19, 10, true],
    ["more at that size", 21, 10, false],
    ["more at a smaller one", 21, 5, false],
    ["that at a smaller one, which may be", 20, 5, null],
    ["that at a larger one", 20, 12, true],
    ["more at one between, which may be", 75, 15, null],
    ["more than the largest size's at its own", 201, 25, false],
    ["that beyond the largest", 200, 40, true],
    ["more beyond the largest, which may be", 300, 40, null],
  ] as const)("asked for %s", (_, beta, size, expected) => expect(reaches(own, beta, size)).toBe(expected));

  test("is true where any point shows it, and false where any shows the contrary", () => {
    expect(reaches(tested([4, 2], [10, 75]), 75, 10)).toBe(true);
    expect(reaches(tested([4, 2], [10, 75]), 75, 4)).toBe(false);
    expect(reaches(tested(), 75, 4)).toBeNull();
  });

  test("takes sizes that differ by rounding alone for one", () => {
    const close = tested([10 * (1 + 1e-12), 75]);
    expect(reaches(close, 75, 10)).toBe(true);
    expect(reaches(tested([10 * (1 - 1e-12), 20]), 75, 10)).toBe(false);
    expect(reaches(tested([10.001, 75]), 75, 10)).toBeNull();
    expect(reaches(tested([9.999, 20]), 75, 10)).toBeNull();
  });

  test("takes all beyond 1000 for 1000, which is as far as a sheet goes", () => {
    expect(reaches(tested([10, 1000]), 5000, 10)).toBe(true);
    expect(reaches(tested([10, 999]), 5000, 10)).toBe(false);
    expect(reaches(tested([10, 2000]), 1500, 10)).toBe(true);
  });
});

describe("reachesRating(filter, asked) of a rating", () => {
  test.each([
    ["absolute", 75],
    ["beta 75", 75],
    ["beta 200", 200],
    ["beta 1000", 1000],
  ] as const)("takes %s for a beta of %i", (kind, beta) => {
    const own = rated(kind, 10);
    expect([reaches(own, beta, 10), reaches(own, beta, 12), reaches(own, beta, 8)]).toEqual([true, true, null]);
    if (beta < 1000) expect([reaches(own, beta + 1, 10), reaches(own, beta + 1, 8)]).toEqual([false, false]);
  });

  test("cannot say of a nominal one, nor of none", () => {
    expect(reaches(rated("nominal", 10), 2, 10)).toBeNull();
    expect(reaches(filter({}), 2, 10)).toBeNull();
  });

  test("goes by the medium's own where it comes of one, by what is stated beside it first, and by tests before all", () => {
    const medium = { by: "rating", kind: "beta 200", size: 10 * um };
    expect(reaches(filter({ medium }), 200, 10)).toBe(true);
    expect(reaches(filter({ medium, statedRating: { kind: "beta 75", size: 10 * um } }), 200, 10)).toBe(false);
    expect(reaches(filter({ medium, betas: [{ beta: 20, size: 10 * um }] }), 200, 10)).toBe(false);
    expect(reaches(filter({ medium: { ...medium, by: "fibre" } }), 200, 10)).toBeNull();
  });
});
