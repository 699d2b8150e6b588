import { expect, test } from "vitest";
import { specificHeat } from "./specificHeat.js";

test("specificHeat(given) is the example, and rises as the fuel warms", () => {
  expect(specificHeat({ densityAt15: 840, temperature: 288.15 })).toBeCloseTo(1891.8, 1);
  expect(specificHeat({ densityAt15: 1000, temperature: 283.15 })).toBeCloseTo(1683 + 33.9, 9);
});

test("specificHeat refuses a density and a temperature not above 0", () => {
  expect(() => specificHeat({ densityAt15: 0, temperature: 288 })).toThrow(
    "specificHeat requires densityAt15 to be more than 0 kg/m3",
  );
  expect(() => specificHeat({ densityAt15: 840, temperature: 0 })).toThrow("temperature to be more than 0 K, got 0");
});
