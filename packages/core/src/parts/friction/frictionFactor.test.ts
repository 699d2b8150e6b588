import { colebrook, frictionFactor, LAMINAR_END, regimeOf, TURBULENT_START } from "@thirstline/core";
import { expect, test } from "vitest";

test("frictionFactor(1000, 0) is the example: 64/Re", () => {
  expect(frictionFactor(1000, 0)).toBeCloseTo(0.064, 16);
});

test("frictionFactor(reynolds, roughness) is Colebrook–White from Re 4000 up", () => {
  for (const reynolds of [4000, 1e5, 1e8]) {
    expect(frictionFactor(reynolds, 0.01) / colebrook(reynolds, 0.01)).toBeCloseTo(1, 14);
  }
});

test("colebrook(1e5, 0) is the example to its 12 digits, and undoes the equation it solves", () => {
  expect(colebrook(1e5, 0)).toBeCloseTo(0.0179897730843, 13);
  const root = 1 / Math.sqrt(colebrook(3e4, 0.002));
  expect(-2 * Math.log10(0.002 / 3.7 + (2.51 * root) / 3e4)).toBeCloseTo(root, 13);
});

test("regimeOf(reynolds) changes above 2300 and at 4000, and takes no notice of the sign", () => {
  expect([LAMINAR_END, 2300.1, 3999.9, TURBULENT_START].map(regimeOf)).toEqual([
    "laminar",
    "transitional",
    "transitional",
    "turbulent",
  ]);
  expect(regimeOf(-5000)).toBe("turbulent");
});

test.each([
  [() => frictionFactor(0, 0), "frictionFactor requires reynolds to be more than 0, got 0"],
  [() => frictionFactor(Number.NaN, 0), "frictionFactor requires reynolds to be more than 0, got NaN"],
  [() => frictionFactor(1e5, 0.06), "frictionFactor requires relativeRoughness to be between 0 and 0.05, got 0.06"],
  [() => colebrook(2000, 0), "colebrook requires reynolds to be between 2300 and 10000000000000, got 2000"],
  [() => colebrook(1e5, -1), "colebrook requires relativeRoughness to be between 0 and 0.05, got -1"],
])("%o is refused", (call, message) => {
  expect(call).toThrow(message);
});
