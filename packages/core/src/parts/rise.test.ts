import { fuelState, rise, solve } from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 4e-6 });

test("rise({ height: 0.9 }) costs density times free fall times height, at any flow", () => {
  // 830 x 9.80665 x 0.9
  const { drop } = solve(rise({ height: 0.9 }), diesel);
  expect(drop(0)).toBeCloseTo(7325.56755, 9);
  expect(drop(-1e-3)).toBe(drop(1e-3));
});

test("rise({ height: -h }) gives back what rise({ height: h }) costs", () => {
  expect(solve(rise({ height: -1.7 }), diesel).drop(1e-4)).toBe(-solve(rise({ height: 1.7 }), diesel).drop(1e-4));
});

test.each([Number.NaN, Infinity])("rise({ height: %d }) is refused", (height) => {
  expect(() => rise({ height })).toThrow(`rise requires height to be a finite number of m, got ${height}`);
});
