import { expect, test } from "vitest";
import { water } from "./water.js";

test("water(20 degC) is the example", () => {
  expect(water({ temperature: 293.15 }).kinematicViscosity).toBeCloseTo(1.0034e-6, 10);
});

test("water(given) is heaviest near 4 degC", () => {
  const density = (celsius: number) => water({ temperature: celsius + 273.15 }).density;
  expect(density(3.98)).toBeGreaterThan(density(0));
  expect(density(3.98)).toBeGreaterThan(density(8));
  expect(density(3.983035)).toBeCloseTo(999.97495, 8);
});

test("water refuses ice and hot water", () => {
  expect(() => water({ temperature: 268 })).toThrow(
    "water requires temperature to be between 273.15 and 313.15 K, got 268",
  );
  expect(() => water({ temperature: 350 })).toThrow("got 350");
});
