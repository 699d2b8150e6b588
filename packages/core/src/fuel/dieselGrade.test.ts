import { expect, test } from "vitest";
import { dieselGrade } from "./dieselGrade.js";

test("dieselGrade(standard, grade) finds the grade", () => {
  expect(dieselGrade("EN 590", "F").coldFilterPluggingPointAtMost).toBe(253.15);
  expect(dieselGrade("ASTM D975", "No. 2-D").kinematicViscosity).toEqual({ from: 1.9e-6, to: 4.1e-6 });
});

test("dieselGrade refuses a grade that does not exist and names those that do", () => {
  expect(() => dieselGrade("EN 590", "G")).toThrow(
    'dieselGrade requires grade to be one of A, B, C, D, E, F, 0, 1, 2, 3, 4 (EN 590), got "G"',
  );
  expect(() => dieselGrade("EN 591" as "EN 590", "A")).toThrow('standard to be one of EN 590, ASTM D975, got "EN 591"');
});
