import { expect, test } from "vitest";
import { type DensityLaw, densityAt } from "./densityAt.js";

const point = (temperature: number, density: number) => ({ temperature, density });

test("densityAt(volume correction, temperature) is the example", () => {
  expect(densityAt({ kind: "volume correction", densityAt15: 840 }, 313.15)).toBeCloseTo(822.173, 3);
});

test("densityAt(linear, temperature) runs along its line", () => {
  expect(densityAt({ kind: "linear", temperature: 288.15, density: 884.8, slope: -0.733 }, 278.15)).toBeCloseTo(
    892.13,
    10,
  );
});

test("densityAt(points, temperature) is straight between points and runs on beyond them", () => {
  const law: DensityLaw = { kind: "points", points: [point(300, 790), point(280, 800), point(320, 770)] };
  expect(densityAt(law, 280)).toBe(800);
  expect(densityAt(law, 290)).toBeCloseTo(795, 10);
  expect(densityAt(law, 310)).toBeCloseTo(780, 10);
  expect(densityAt(law, 270)).toBeCloseTo(805, 10);
  expect(densityAt(law, 330)).toBeCloseTo(760, 10);
});

test("densityAt(mixed, temperature) adds masses and volumes", () => {
  const parts = [
    { share: 0.5, law: { kind: "linear", temperature: 288.15, density: 800, slope: -0.8 } },
    { share: 0.5, law: { kind: "linear", temperature: 288.15, density: 900, slope: 0 } },
  ] as const;
  expect(densityAt({ kind: "mixed", parts }, 288.15)).toBeCloseTo(850, 10);
  // 400 kg at 784 kg/m3 and 450 kg at 900 kg/m3
  expect(densityAt({ kind: "mixed", parts }, 308.15)).toBeCloseTo(850 / (400 / 784 + 0.5), 10);
});

test("densityAt refuses what it cannot answer, naming the field", () => {
  expect(() => densityAt({ kind: "volume correction", densityAt15: 840 }, 0)).toThrow(
    "densityAt requires temperature to be more than 0 K, got 0",
  );
  const steep: DensityLaw = { kind: "linear", temperature: 288.15, density: 800, slope: -8 };
  expect(() => densityAt(steep, 400)).toThrow(
    "temperature to be one at which the law gives a density above 0, got 400",
  );
  expect(() => densityAt({ ...steep, slope: Number.NaN }, 300)).toThrow(
    "law.slope to be a finite number of kg/m3 per K, got NaN",
  );
  expect(() => densityAt({ ...steep, density: -1 }, 300)).toThrow("law.density to be more than 0 kg/m3, got -1");
  expect(() => densityAt({ kind: "points", points: [point(300, 800)] }, 300)).toThrow(
    "points to be two points or more",
  );
  expect(() => densityAt({ kind: "points", points: [point(300, 800), point(300, 790)] }, 300)).toThrow(
    "points[1].temperature to be another than 300 K, got 300",
  );
  expect(() => densityAt({ kind: "points", points: [point(300, 0), point(310, 790)] }, 300)).toThrow(
    "points[0].density to be more than 0 kg/m3, got 0",
  );
});
