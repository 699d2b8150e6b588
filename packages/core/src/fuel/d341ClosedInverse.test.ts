import { expect, test } from "vitest";
import { d341ClosedInverse } from "./d341ClosedInverse.js";

test("d341ClosedInverse(2.7007540891204935) is the example: not quite 2e-6", () => {
  expect(d341ClosedInverse(2.7007540891204935)).toBeCloseTo(2.000172082726817e-6, 18);
});

test("d341ClosedInverse refuses a Z of 0.7 or less", () => {
  expect(() => d341ClosedInverse(0.7)).toThrow("d341ClosedInverse requires z to be more than 0.7, got 0.7");
});
