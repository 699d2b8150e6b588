import { expect, test } from "vitest";
import { volumeCorrection } from "./volumeCorrection.js";
import { volumeCorrection60F } from "./volumeCorrection60F.js";

test("volumeCorrection60F(given) is the example", () => {
  expect(volumeCorrection60F({ densityAt60F: 850, temperature: 310.927777777778 })).toBeCloseTo(0.98144, 5);
});

test.each([
  ["fuel oil", 850],
  ["jet fuel", 805],
  ["transition", 780],
  ["petrol", 745],
] as const)("volumeCorrection60F(given) agrees with the 15 degC basis for %s", (group, densityAt15) => {
  const sixty = 288.7055555555556;
  const densityAt60F = densityAt15 * volumeCorrection({ densityAt15, temperature: sixty });
  for (const temperature of [260, 300, 320]) {
    const by15 = densityAt15 * volumeCorrection({ densityAt15, temperature });
    expect(
      Math.abs((densityAt60F * volumeCorrection60F({ densityAt60F, temperature, group })) / by15 - 1),
    ).toBeLessThan(2e-4);
    expect(volumeCorrection60F({ densityAt60F, temperature })).toBe(
      volumeCorrection60F({ densityAt60F, temperature, group }),
    );
  }
});

test("volumeCorrection60F takes crude when asked", () => {
  const temperature = 313.15;
  const crude = volumeCorrection60F({ densityAt60F: 860, temperature, group: "crude" });
  expect(crude).toBeCloseTo(volumeCorrection({ densityAt15: 860.4, temperature, group: "crude" }) / 0.99954, 3);
});

test.each([
  [838.3, "fuel oil"],
  [787.5, "jet fuel"],
  [770.4, "transition"],
] as const)("volumeCorrection60F(%d kg/m3, where a group begins) counts as %s", (densityAt60F, group) => {
  const given = { densityAt60F, temperature: 320 };
  expect(volumeCorrection60F(given)).toBe(volumeCorrection60F({ ...given, group }));
});

test("volumeCorrection60F refuses what the tables do not cover", () => {
  expect(() => volumeCorrection60F({ densityAt60F: Number.NaN, temperature: 300 })).toThrow("got NaN");
  expect(() => volumeCorrection60F({ densityAt60F: 850, temperature: 0 })).toThrow(
    "temperature to be more than 0 K, got 0",
  );
  expect(() => volumeCorrection60F({ densityAt60F: 850, temperature: 300, group: "tar" as "crude" })).toThrow(
    'got "tar"',
  );
});
