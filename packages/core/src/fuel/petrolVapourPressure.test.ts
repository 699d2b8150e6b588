import { expect, test } from "vitest";
import { petrolVapourPressure } from "./petrolVapourPressure.js";

test("petrolVapourPressure(given) is the example", () => {
  expect(petrolVapourPressure({ reid: 60e3, slope: 3, temperature: 293.15 })).toBeCloseTo(35784.17, 2);
});

test("petrolVapourPressure(given) is about the Reid value at 37.8 degC, a little more", () => {
  for (const reid of [45e3, 60e3, 90e3]) {
    const ratio = petrolVapourPressure({ reid, slope: 3, temperature: 310.93 }) / reid;
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.08);
  }
});

test("petrolVapourPressure rises with temperature", () => {
  const at = (temperature: number) => petrolVapourPressure({ reid: 70e3, slope: 3, temperature });
  for (let kelvin = 250; kelvin < 340; kelvin += 5) expect(at(kelvin + 5)).toBeGreaterThan(at(kelvin));
});

test("petrolVapourPressure refuses a Reid value in the wrong unit, an odd slope, and no temperature", () => {
  expect(() => petrolVapourPressure({ reid: 60, slope: 3, temperature: 293 })).toThrow(
    "petrolVapourPressure requires reid to be between 1000 and 200000 Pa, got 60",
  );
  expect(() => petrolVapourPressure({ reid: 60e3, slope: 0, temperature: 293 })).toThrow(
    "slope to be between 1 and 4 degF per %",
  );
  expect(() => petrolVapourPressure({ reid: 60e3, slope: 3, temperature: 0 })).toThrow(
    "temperature to be more than 0 K, got 0",
  );
});
