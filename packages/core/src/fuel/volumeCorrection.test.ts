import fc from "fast-check";
import { expect, test } from "vitest";
import { volumeCorrection } from "./volumeCorrection.js";

test("volumeCorrection(given) is the example", () => {
  expect(volumeCorrection({ densityAt15: 840, temperature: 313.15 })).toBeCloseTo(0.978778, 6);
});

test("volumeCorrection(given) hardly jumps where the product groups meet", () => {
  // At 45 degC off the base. The groups were fitted apart and meet to 2e-4.
  for (const border of [770.5, 788, 839]) {
    const at = (densityAt15: number) => volumeCorrection({ densityAt15, temperature: 333.15 });
    expect(Math.abs(at(border) - at(border - 1e-9))).toBeLessThan(2e-4);
  }
});

test("volumeCorrection(given) is 1 at 15 degC and falls as the fuel warms", () => {
  const density = fc.double({ min: 610, max: 1164, noNaN: true });
  fc.assert(
    fc.property(density, fc.double({ min: 220, max: 350, noNaN: true }), (densityAt15, temperature) => {
      expect(volumeCorrection({ densityAt15, temperature: 288.15 })).toBe(1);
      const warmer = volumeCorrection({ densityAt15, temperature: temperature + 1 });
      expect(warmer).toBeLessThan(volumeCorrection({ densityAt15, temperature }));
    }),
  );
});

test("volumeCorrection refuses what the tables do not cover", () => {
  expect(() => volumeCorrection({ densityAt15: 0.84, temperature: 300 })).toThrow(
    "volumeCorrection requires densityAt15 to be between 610 and 1164 kg/m3, got 0.84",
  );
  expect(() => volumeCorrection({ densityAt15: 840, temperature: -5 })).toThrow(
    "temperature to be more than 0 K, got -5",
  );
  expect(() => volumeCorrection({ densityAt15: 840, temperature: 300, group: "tar" as "crude" })).toThrow(
    'group to be one of fuel oil, jet fuel, transition, petrol, crude, got "tar"',
  );
});
