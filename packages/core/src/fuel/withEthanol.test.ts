import { expect, test } from "vitest";
import { fuelState } from "./FuelState.js";
import { fuels } from "./fuels.js";
import { petrolVapourPressure } from "./petrolVapourPressure.js";
import { withEthanol } from "./withEthanol.js";

test("withEthanol(petrol, 0.1) has 7.8 kPa more Reid vapour pressure", () => {
  const e10 = fuelState(withEthanol(fuels.petrol, 0.1), { temperature: 303.15 });
  expect(e10.vapourPressure).toBeCloseTo(petrolVapourPressure({ reid: 67.8e3, slope: 3, temperature: 303.15 }), 6);
});

test("withEthanol(petrol, share) says that viscosity, and above 10 % vapour pressure, are estimates", () => {
  expect(withEthanol(fuels.petrol, 0.1).estimated).toEqual(["viscosity"]);
  expect(withEthanol(fuels.petrol, 0.85).estimated).toEqual(["viscosity", "vapour pressure"]);
});
