import fc from "fast-check";
import { expect, test } from "vitest";
import { type MixingRule, mixViscosity } from "./mixViscosity.js";

const rules: MixingRule[] = ["Grunberg-Nissan", "Kendall-Monroe", "Refutas"];
const pair = (share: number, first: number, second: number) => [
  { share, kinematicViscosity: first },
  { share: 1 - share, kinematicViscosity: second },
];

test("mixViscosity(parts) is the example: half and half by the log rule is the geometric mean", () => {
  expect(mixViscosity(pair(0.5, 1e-6, 4e-6))).toBeCloseTo(2e-6, 18);
});

test.each(rules)("mixViscosity(parts, %s) lies between its parts and keeps a single one", (rule) => {
  const viscosity = fc.double({ min: 0.3e-6, max: 500e-6, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), viscosity, viscosity, (share, first, second) => {
      const mixed = mixViscosity(pair(share, first, second), rule);
      const slack = 1e-12;
      expect(mixed).toBeGreaterThanOrEqual(Math.min(first, second) * (1 - slack));
      expect(mixed).toBeLessThanOrEqual(Math.max(first, second) * (1 + slack));
      expect(mixViscosity([{ share: 1, kinematicViscosity: first }], rule) / first).toBeCloseTo(1, 12);
    }),
  );
});

test("mixViscosity refuses what it cannot mix, naming the field", () => {
  expect(() => mixViscosity([])).toThrow("mixViscosity requires parts to be one part or more, got a list of 0");
  expect(() => mixViscosity([{ share: 0.9, kinematicViscosity: 1e-6 }])).toThrow(
    "the shares of parts to be 1 in all, got 0.9",
  );
  expect(() => mixViscosity(pair(1.5, 1e-6, 1e-6))).toThrow("parts[0].share to be between 0 and 1, got 1.5");
  expect(() => mixViscosity(pair(0.5, 1e-6, 0))).toThrow("parts[1].kinematicViscosity to be more than 0 m2/s, got 0");
  expect(() => mixViscosity(pair(0.5, 0.2e-6, 1e-6), "Refutas")).toThrow(
    "parts[0].kinematicViscosity to be more than 2e-7 m2/s",
  );
  expect(() => mixViscosity(pair(0.5, 1e-6, 1e-6), "best" as MixingRule)).toThrow(
    'rule to be one of Grunberg-Nissan, Kendall-Monroe, Refutas, got "best"',
  );
});
