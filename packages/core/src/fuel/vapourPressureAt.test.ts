import { expect, test } from "vitest";
import { type VapourPressureLaw, vapourPressureAt } from "./vapourPressureAt.js";

const petrol: VapourPressureLaw = { kind: "Reid", reid: 60e3, slope: 3 };
const water: VapourPressureLaw = { kind: "two constants", a: 25, b: 5000 };

test("vapourPressureAt(Reid, temperature) is the example, higher with ethanol", () => {
  expect(vapourPressureAt(petrol, 313.15)).toBeCloseTo(68299.9, 0);
  const mixed: VapourPressureLaw = { ...petrol, ethanol: { share: 0.05, rule: "EU waiver" } };
  expect(vapourPressureAt(mixed, 313.15)).toBeCloseTo(vapourPressureAt({ ...petrol, reid: 68e3 }, 313.15), 6);
});

test("vapourPressureAt(two constants, temperature) is exp(a - b/T)", () => {
  expect(vapourPressureAt(water, 300)).toBeCloseTo(Math.exp(25 - 5000 / 300), 6);
});

test("vapourPressureAt(highest of, temperature) is the most volatile part's, 0 for none", () => {
  expect(vapourPressureAt({ kind: "highest of", parts: [petrol, water] }, 313.15)).toBe(
    vapourPressureAt(petrol, 313.15),
  );
  expect(vapourPressureAt({ kind: "highest of", parts: [{ kind: "none" }] }, 300)).toBe(0);
  expect(vapourPressureAt({ kind: "none" }, 300)).toBe(0);
});

test("vapourPressureAt refuses no temperature and constants that are none", () => {
  expect(() => vapourPressureAt(petrol, -1)).toThrow(
    "vapourPressureAt requires temperature to be more than 0 K, got -1",
  );
  expect(() => vapourPressureAt({ ...water, b: Number.NaN }, 300)).toThrow("law.b to be a finite number of K, got NaN");
});
