import { fuelState, line, solve, sweep } from "@thirstline/core";
import { expect, test } from "vitest";

const solved = solve(
  line({ length: 1, bore: 0.008, roughness: 0 }),
  fuelState({ density: 750, kinematicViscosity: 6e-7 }),
);
const flows = Float64Array.of(-1e-5, 0, 1e-5, 2e-4);

test("sweep(solved, flows, into) fills and returns `into`", () => {
  const into = new Float64Array(4);
  expect(sweep(solved, flows, into)).toBe(into);
  expect(into).toEqual(Float64Array.from(flows, (flow) => solved.drop(flow)));
});

test("sweep refuses an array of another length, and a flow that is no number", () => {
  expect(() => sweep(solved, flows, new Float64Array(3))).toThrow("sweep requires into to be 4 long, got 3");
  expect(() => sweep(solved, Float64Array.of(1e-5, Number.NaN))).toThrow(/finite number of m3\/s, got NaN$/);
});
