import { type FilterGiven, filter } from "@thirstline/core";
import { expect, test } from "vitest";

const sheet = { area: 0.5, thickness: 6e-4, permeability: 2e-13 };
const clean = { drop: 1500, flow: 5e-5, dynamicViscosity: 0.0035 };
const air = { flow: 1e-4, sampleArea: 2e-3, pressure: 200, area: 0.5 };
const mat = { diameter: 1e-5, solidity: 0.1, area: 1, thickness: 1e-3 };
const rated = { size: 1e-5, kind: "nominal", area: 1, thickness: 1e-3 } as const;
const points = [
  { drop: 3000, flow: 1e-4 },
  { drop: 8000, flow: 2e-4 },
] as const;

const once = "filter requires the medium to be given once: clean, test, media, airTest, fibre or rating, got";

test.each<[string, FilterGiven, string]>([
  ["no source", {}, `${once} "none"`],
  ["two sources", { clean, media: sheet }, `${once} "one-point flow test and geometry"`],
  ["a drop of 0", { clean: { ...clean, drop: 0 } }, "filter requires clean.drop to be more than 0 Pa, got 0"],
  ["no flow", { clean: { ...clean, flow: 0 } }, "filter requires clean.flow to be more than 0 m3/s, got 0"],
  [
    "no viscosity",
    { clean: { ...clean, dynamicViscosity: Number.NaN } },
    "filter requires clean.dynamicViscosity to be more than 0 Pa s, got NaN",
  ],
  [
    "one flow twice",
    { test: { points: [points[0], points[0]], density: 1, dynamicViscosity: 1 } },
    "filter requires test.points' larger flow to be more than 0.0001 m3/s, got 0.0001",
  ],
  [
    "a point without flow",
    { test: { points: [points[0], { drop: 1, flow: -1 }], density: 1, dynamicViscosity: 1 } },
    "filter requires test.points[1].flow to be more than 0 m3/s, got -1",
  ],
  [
    "no density",
    { test: { points, density: 0, dynamicViscosity: 1 } },
    "filter requires test.density to be more than 0 kg/m3, got 0",
  ],
  ["no area", { media: { ...sheet, area: 0 } }, "filter requires media.area to be more than 0 m2, got 0"],
  ["no thickness", { media: { ...sheet, thickness: 0 } }, "filter requires media.thickness to be more than 0 m, got 0"],
  [
    "no permeability",
    { media: { ...sheet, permeability: 0 } },
    "filter requires media.permeability to be more than 0 m2, got 0",
  ],
  [
    "negative inertia",
    { media: { ...sheet, inertia: -1 } },
    "filter requires media.inertia to be at least 0 1/m, got -1",
  ],
  [
    "no air",
    { airTest: { flow: 0, sampleArea: 1, pressure: 1, area: 1 } },
    "filter requires airTest.flow to be more than 0 m3/s, got 0",
  ],
  [
    "too dense a mat",
    { fibre: { diameter: 1e-5, solidity: 0.5, area: 1, thickness: 1e-3 } },
    "filter requires fibre.solidity to be between 0.006 and 0.3, got 0.5",
  ],
  [
    "no rated size",
    { rating: { size: 0, kind: "nominal", area: 1, thickness: 1e-3 } },
    "filter requires rating.size to be more than 0 m, got 0",
  ],
  [
    "a sheet without area",
    { airTest: { ...air, area: 0 } },
    "filter requires airTest.area to be more than 0 m2, got 0",
  ],
  [
    "a sample without area",
    { airTest: { ...air, sampleArea: 0 } },
    "filter requires airTest.sampleArea to be more than 0 m2, got 0",
  ],
  [
    "air without pressure",
    { airTest: { ...air, pressure: 0 } },
    "filter requires airTest.pressure to be more than 0 Pa, got 0",
  ],
  [
    "fibres without thickness",
    { fibre: { ...mat, diameter: 0 } },
    "filter requires fibre.diameter to be more than 0 m, got 0",
  ],
  ["a mat without area", { fibre: { ...mat, area: 0 } }, "filter requires fibre.area to be more than 0 m2, got 0"],
  [
    "a mat without thickness",
    { fibre: { ...mat, thickness: 0 } },
    "filter requires fibre.thickness to be more than 0 m, got 0",
  ],
  [
    "a rating without area",
    { rating: { ...rated, area: 0 } },
    "filter requires rating.area to be more than 0 m2, got 0",
  ],
  [
    "a rating without thickness",
    { rating: { ...rated, thickness: 0 } },
    "filter requires rating.thickness to be more than 0 m, got 0",
  ],
  [
    "two points without viscosity",
    { test: { points, density: 830, dynamicViscosity: 0 } },
    "filter requires test.dynamicViscosity to be more than 0 Pa s, got 0",
  ],
  [
    "folds without depth",
    { clean, pleats: { depth: 0, gap: 1, area: 1 } },
    "filter requires pleats.depth to be more than 0 m, got 0",
  ],
  [
    "folds without area",
    { clean, pleats: { depth: 1, gap: 1, area: 0 } },
    "filter requires pleats.area to be more than 0 m2, got 0",
  ],
  ["restriction below 1", { clean, restriction: 0.9 }, "filter requires restriction to be at least 1, got 0.9"],
  ["no restriction", { clean, restriction: Number.NaN }, "filter requires restriction to be at least 1, got NaN"],
  [
    "a port of no bore",
    { clean, housing: { k: 1, port: 0 } },
    "filter requires housing.port to be more than 0 m, got 0",
  ],
  ["negative K", { clean, housing: { k: -1, port: 1 } }, "filter requires housing.k to be at least 0, got -1"],
  [
    "folds without gap",
    { clean, pleats: { depth: 1, gap: 0, area: 1 } },
    "filter requires pleats.gap to be more than 0 m, got 0",
  ],
])("filter(given) refuses %s", (_, given, message) => {
  expect(() => filter(given)).toThrow(message);
});

test("filter(every source there is) is refused, naming each", () => {
  const test = { points, density: 830, dynamicViscosity: 0.0025 };
  expect(() => filter({ clean, test, media: sheet, airTest: air, fibre: mat, rating: rated })).toThrow(
    `${once} "one-point flow test and two-point flow test and geometry and air test and fibre law and rating estimate"`,
  );
});

test("filter({ clean }) is not reversed, unless it is said to be", () => {
  expect([filter({ clean }), filter({ clean, reversed: true })].map(({ reversed }) => reversed)).toEqual([false, true]);
});
