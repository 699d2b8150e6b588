import { fuelState, line, solve } from "@thirstline/core";
import { expect, test } from "vitest";

const petrol = fuelState({ density: 750, kinematicViscosity: 6e-7 });

test("line({ length: 1, bore: 0.008 }) costs what Hagen–Poiseuille says in laminar flow", () => {
  // 128 mu L Q / (pi D^4), worked with 50 decimals; Re 796
  const { drop } = solve(line({ length: 1, bore: 0.008, roughness: 0 }), petrol);
  expect(drop(3e-6) / 13.428698323378669).toBeCloseTo(1, 14);
});

test("line(given) keeps its figures and its name, and has no name when none is given", () => {
  expect(line({ name: "tank line", length: 6, bore: 0.019, roughness: 1e-5 })).toEqual({
    kind: "line",
    name: "tank line",
    length: 6,
    bore: 0.019,
    roughness: 1e-5,
  });
  expect(line({ length: 6, bore: 0.019, roughness: 0 })).not.toHaveProperty("name");
});

test.each([
  [{ length: 0, bore: 0.01, roughness: 0 }, "line requires length to be more than 0 m, got 0"],
  [{ length: Infinity, bore: 0.01, roughness: 0 }, "line requires length to be more than 0 m, got Infinity"],
  [{ length: 1, bore: Number.NaN, roughness: 0 }, "line requires bore to be more than 0 m, got NaN"],
  [{ length: 1, bore: -0.01, roughness: 0 }, "line requires bore to be more than 0 m, got -0.01"],
  [{ length: 1, bore: 0.01, roughness: -1e-6 }, "line requires roughness to be between 0 and 0.0005 m, got -0.000001"],
  [{ length: 1, bore: 0.01, roughness: 0.001 }, "line requires roughness to be between 0 and 0.0005 m, got 0.001"],
])("line(%j) is refused", (given, message) => {
  expect(() => line(given)).toThrow(message);
});
