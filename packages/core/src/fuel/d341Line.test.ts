import { expect, test } from "vitest";
import { d341Line } from "./d341Line.js";

const cold = { temperature: 253.15, kinematicViscosity: 4.5e-6 };
const warm = { temperature: 313.15, kinematicViscosity: 1.31e-6 };

test("d341Line(first, second) is the example, whichever point comes first", () => {
  const line = d341Line(cold, warm);
  expect(line.a).toBeCloseTo(9.4956073947, 9);
  expect(line.b).toBeCloseTo(4.0113093396, 9);
  expect(d341Line(warm, cold).b).toBeCloseTo(line.b, 13);
});

test("d341Line refuses points no fuel has and names the field", () => {
  expect(() => d341Line({ ...cold, temperature: 0 }, warm)).toThrow(
    "d341Line requires first.temperature to be more than 0 K, got 0",
  );
  expect(() => d341Line(cold, { ...warm, kinematicViscosity: 1e-7 })).toThrow(
    "d341Line requires second.kinematicViscosity to be at least 2.1e-7 m2/s, got 1e-7",
  );
  expect(() => d341Line(cold, { ...warm, temperature: 253.15 })).toThrow(
    "d341Line requires second.temperature to be another than 253.15 K, got 253.15",
  );
  expect(() => d341Line(cold, { ...warm, kinematicViscosity: 5e-6 })).toThrow(
    "second.kinematicViscosity to be less than 0.0000045 m2/s, fuel being thinner when warmer, got 0.000005",
  );
  expect(() => d341Line(warm, { ...cold, kinematicViscosity: 1e-6 })).toThrow(
    "second.kinematicViscosity to be more than 0.00000131 m2/s, fuel being thinner when warmer, got 0.000001",
  );
});
