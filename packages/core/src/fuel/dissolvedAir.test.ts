import { expect, test } from "vitest";
import { dissolvedAir } from "./dissolvedAir.js";

const diesel = { densityAt15: 840, temperature: 293.15, pressure: 101325 };

test("dissolvedAir(diesel at 20 degC) is the example", () => {
  const { ostwald, bunsen } = dissolvedAir(diesel);
  expect(ostwald).toBeCloseTo(0.1199, 4);
  expect(bunsen).toBeCloseTo(0.112, 3);
});

test("dissolvedAir(given) is in proportion to the pressure, 0 in a vacuum", () => {
  expect(dissolvedAir({ ...diesel, pressure: 202650 }).bunsen).toBeCloseTo(2 * dissolvedAir(diesel).bunsen, 12);
  expect(dissolvedAir({ ...diesel, pressure: 0 }).bunsen).toBe(0);
});

test("dissolvedAir refuses what the method does not cover", () => {
  expect(() => dissolvedAir({ ...diesel, densityAt15: 950 })).toThrow(
    "dissolvedAir requires densityAt15 to be between 630 and 900 kg/m3, got 950",
  );
  expect(() => dissolvedAir({ ...diesel, temperature: 20 })).toThrow("temperature to be between 228 and 423 K, got 20");
  expect(() => dissolvedAir({ ...diesel, pressure: -1 })).toThrow("pressure to be at least 0 Pa, got -1");
});
