import { expect, test } from "vitest";
import { waterSolubility } from "./waterSolubility.js";

const dodecane = { hydrogenToCarbon: 0.181833, molarMass: 0.17033 };

test("waterSolubility(n-dodecane at 20 degC) is the example", () => {
  expect(waterSolubility({ ...dodecane, temperature: 293.15 })).toBeCloseTo(54.9e-6, 7);
});

test("waterSolubility(given) falls to less than half from 20 to 0 degC", () => {
  const at = (temperature: number) => waterSolubility({ ...dodecane, temperature });
  expect(at(273.15)).toBeLessThan(at(293.15) / 2);
});

test("waterSolubility refuses what is no hydrocarbon", () => {
  expect(() => waterSolubility({ ...dodecane, hydrogenToCarbon: 1.9, temperature: 293 })).toThrow(
    "waterSolubility requires hydrogenToCarbon to be between 0.05 and 0.35, got 1.9",
  );
  expect(() => waterSolubility({ ...dodecane, molarMass: 0, temperature: 293 })).toThrow(
    "molarMass to be more than 0 kg/mol",
  );
  expect(() => waterSolubility({ ...dodecane, temperature: 20 })).toThrow(
    "temperature to be between 233 and 373 K, got 20",
  );
});
