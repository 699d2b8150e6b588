import { fuelState, orifice, solve } from "@thirstline/core";
import { expect, test } from "vitest";

const petrol = fuelState({ density: 750, kinematicViscosity: 6e-7 });

test("orifice({ diameter, dischargeCoefficient }) costs density/2 (flow/(Cd area))^2", () => {
  // 750/2 (1e-5 / (0.61 x pi/4 x 0.002^2))^2, worked with 50 decimals
  const { drop } = solve(orifice({ diameter: 0.002, dischargeCoefficient: 0.61 }), petrol);
  expect(drop(1e-5) / 10211.084081127832).toBeCloseTo(1, 14);
});

test("orifice({ diameter }) costs 16 times as much in half the diameter", () => {
  const dropOf = (diameter: number) => solve(orifice({ diameter, dischargeCoefficient: 0.61 }), petrol).drop(1e-5);
  expect(dropOf(0.001) / dropOf(0.002)).toBeCloseTo(16, 12);
});

test.each([
  [{ diameter: 0, dischargeCoefficient: 0.6 }, "orifice requires diameter to be more than 0 m, got 0"],
  [{ diameter: 1, dischargeCoefficient: 0 }, "orifice requires dischargeCoefficient to be more than 0, got 0"],
  [{ diameter: 1, dischargeCoefficient: 1.1 }, "orifice requires dischargeCoefficient to be between 0 and 1, got 1.1"],
])("orifice(%j) is refused", (given, message) => {
  expect(() => orifice(given)).toThrow(message);
});
