import { expect, test } from "vitest";
import { d341Z } from "./d341Z.js";

test("d341Z(2e-6) is the example", () => {
  expect(d341Z(2e-6)).toBeCloseTo(2.7007540891204935, 14);
});

test("d341Z(viscosity) tends to the viscosity in mm2/s plus 0.7 for thick fuel", () => {
  expect(d341Z(100e-6)).toBeCloseTo(100.7, 12);
});

test("d341Z refuses what is thinner than the equation holds", () => {
  expect(() => d341Z(0.2e-6)).toThrow("d341Z requires kinematicViscosity to be at least 2.1e-7 m2/s, got 2e-7");
  expect(() => d341Z(Number.NaN)).toThrow("got NaN");
});
