import { describe, expect, test } from "vitest";
import { fits, freeDrop } from "./freeDrop.js";

describe("fits(drop, free)", () => {
  test.each([
    [5, 6, "yes"],
    [5, 5.02, "yes"],
    [5, 5.005, "too close"],
    [5, 5, "too close"],
    [5, 4.995, "too close"],
    [5, 4.98, "no"],
    [0, -1, "no"],
    [1e8, Infinity, "yes"],
    [0, -Infinity, "no"],
    [Number.NaN, 5, "no"],
    [Infinity, 5, "no"],
  ] as const)("of %d Pa where %d are free is %s", (drop, free, told) => {
    expect(fits(drop, free)).toBe(told);
  });

  test("calls a hundredth of a Pa more too close to call, and a hundredth less still within", () => {
    expect([fits(0.01, 0), fits(0, 0.01)]).toEqual(["too close", "yes"]);
  });
});

describe("freeDrop(margin)", () => {
  /** A margin, and how often it was asked. */
  const counted = (margin: (drop: number) => number) => {
    let asked = 0;
    const free = freeDrop((drop) => {
      asked++;
      return margin(drop);
    });
    return { free, asked };
  };

  test("of a margin that gives way Pa for Pa is the margin, found at once", () => {
    const { free, asked } = counted((drop) => 7e3 - drop);
    expect(free).toBe(7e3);
    expect(asked).toBeLessThan(5);
  });

  test("of one that gives way otherwise is where it comes to 0, within a ten thousandth of a Pa", () => {
    for (const slope of [0.25, 3, 1 + 1e-6]) {
      const { free } = counted((drop) => 7e3 - slope * drop);
      expect(Math.abs(free - 7e3 / slope)).toBeLessThan(1.1e-4);
      expect(7e3 - slope * free).toBeGreaterThanOrEqual(0);
    }
  });

  test("of one that jumps is where it does, and the margin still holds there", () => {
    const jump = (drop: number) => (drop <= 1234.5 ? 1e3 : -1);
    const { free, asked } = counted(jump);
    expect(free).toBeLessThanOrEqual(1234.5);
    expect(free).toBeGreaterThan(1234.4998);
    expect(asked).toBeLessThan(60);
  });

  test("of one that stays at 0 for a while is where it ends to", () => {
    expect(freeDrop((drop) => Math.min(0, 50 - drop))).toBeCloseTo(50, 3);
    expect(freeDrop((drop) => (drop < 20 ? 20 - drop : Math.min(0, 50 - drop)))).toBeCloseTo(50, 3);
  });

  test("is 0 for one that is spent without any drop, and -Infinity for one that is broken, or no number", () => {
    expect(freeDrop((drop) => 0 - drop)).toBe(0);
    expect(freeDrop((drop) => -1 - drop)).toBe(-Infinity);
    expect(freeDrop(() => Number.NaN)).toBe(-Infinity);
  });

  test("is Infinity for one that no drop touches, even where nothing is left of it", () => {
    expect([freeDrop(() => 5), freeDrop(() => 0), freeDrop(() => Infinity)]).toEqual([Infinity, Infinity, Infinity]);
  });

  test("looks no further than a GPa", () => {
    expect(freeDrop((drop) => 5e8 - 0.6 * drop)).toBeCloseTo(5e8 / 0.6, 3);
    expect(freeDrop((drop) => 5e8 - 0.5 * drop)).toBe(Infinity);
    expect(freeDrop((drop) => 5e8 - 0.4 * drop)).toBe(Infinity);
  });
});
