import { filter, fuelState, line, rise, series, solve } from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6 });

test("series(line, rise, filter) costs what the three cost one by one", () => {
  // 128 mu L Q/(pi D^4) = 1167.647 Pa at Re 2010; 830 x 9.80665 x 0.9 = 7325.56755 Pa; 1500 Pa at the test's own point
  const path = series(
    line({ length: 2, bore: 0.01, roughness: 0 }),
    rise({ height: 0.9 }),
    filter({ clean: { drop: 1500, flow: 5e-5, dynamicViscosity: 830 * 3e-6 } }),
  );
  const ofLine = (128 * 830 * 3e-6 * 2 * 5e-5) / (Math.PI * 0.01 ** 4);
  expect(solve(path, diesel).drop(5e-5)).toBeCloseTo(ofLine + 7325.56755 + 1500, 8);
});

test("series() is a path that costs nothing", () => {
  expect(solve(series(), diesel).drop(1e-3)).toBe(0);
  expect(solve(series(), diesel).profile(1e-3)).toEqual([]);
});
