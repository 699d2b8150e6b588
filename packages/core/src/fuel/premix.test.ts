import { expect, test } from "vitest";
import { fuelState } from "./FuelState.js";
import { fuels } from "./fuels.js";
import { premix } from "./premix.js";

test("premix(petrol, 50) is the example, named by its ratio, as volatile as the petrol", () => {
  const fifty = premix(fuels.petrol, 50);
  const at = { temperature: 293.15 };
  expect(fifty.name).toBe("petrol with oil 50:1");
  expect(fuelState(fifty, at).kinematicViscosity).toBeCloseTo(0.612e-6, 9);
  expect(fuelState(fifty, at).vapourPressure).toBe(fuelState(fuels.petrol, at).vapourPressure);
  expect(fifty.range).toEqual(fuels.petrol.range);
});

test("premix(petrol E10, 25) keeps the lift of the ethanol", () => {
  const law = premix(fuels.petrolE10, 25).vapourPressure;
  expect(law).toMatchObject({ kind: "Reid", reid: 60e3 });
  expect(law.kind === "Reid" ? law.ethanol?.share : undefined).toBeCloseTo(0.1, 12);
});

test("premix refuses a ratio that is mostly oil", () => {
  expect(() => premix(fuels.petrol, 1 / 50)).toThrow("premix requires ratio to be at least 4, got 0.02");
});
