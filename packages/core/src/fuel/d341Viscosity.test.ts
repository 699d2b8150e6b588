import fc from "fast-check";
import { expect, test } from "vitest";
import { d341Viscosity } from "./d341Viscosity.js";
import { d341Z } from "./d341Z.js";

test("d341Viscosity(2.7007540891204935) is the example", () => {
  expect(d341Viscosity(2.7007540891204935)).toBeCloseTo(2e-6, 20);
});

test("d341Viscosity(d341Z(viscosity)) returns the viscosity to rounding, from 0.21 to 2e7 mm2/s", () => {
  fc.assert(
    fc.property(fc.double({ min: Math.log(0.21), max: Math.log(2e7), noNaN: true }), (logarithm) => {
      const viscosity = Math.max(Math.exp(logarithm), 0.21) * 1e-6;
      expect(Math.abs(d341Viscosity(d341Z(viscosity)) / viscosity - 1)).toBeLessThanOrEqual(2e-15);
    }),
    { numRuns: 2000 },
  );
});

test("d341Viscosity refuses a Z no liquid has", () => {
  expect(() => d341Viscosity(0.9)).toThrow("d341Viscosity requires z to be more than 0.929925");
  expect(() => d341Viscosity(Number.NaN)).toThrow("got NaN");
  expect(() => d341Viscosity(Infinity)).toThrow("got Infinity");
});
