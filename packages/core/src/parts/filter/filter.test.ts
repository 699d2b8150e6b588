import { type BandEnd, type Filter, fibreLaws, filter, fuelState, solve } from "@thirstline/core";
import { expect, test } from "vitest";

// Dynamic viscosity 0.0035 Pa s, that of the tests below; half of it in the thin fuel.
const diesel = fuelState({ density: 875, kinematicViscosity: 4e-6 });
const thin = fuelState({ density: 875, kinematicViscosity: 2e-6 });

function drop(part: Filter, flow: number, end: BandEnd = "middle", fuel = diesel): number {
  return solve(part, fuel, { end }).drop(flow);
}

const sheet = { area: 0.5, thickness: 6e-4, permeability: 2e-13 };
const clean = { drop: 1500, flow: 5e-5, dynamicViscosity: 0.0035 };

test("filter({ clean }) costs at the test's point what was measured, and half of it in fuel half as thick", () => {
  expect(drop(filter({ clean }), 5e-5)).toBeCloseTo(1500, 9);
  expect(drop(filter({ clean }), 5e-5, "middle", thin)).toBeCloseTo(750, 9);
});

const points = [
  { drop: 3000, flow: 1e-4 },
  { drop: 8000, flow: 2e-4 },
] as const;

test("filter({ test }) costs at both points what was measured; viscosity halves its linear part only", () => {
  // drop/flow is 3e7 and 4e7, a line that starts at 2e7: at 1e-4 m3/s 2000 Pa are linear and 1000 quadratic
  const part = filter({ test: { points, density: 875, dynamicViscosity: 0.0035 } });
  expect(drop(part, 1e-4)).toBeCloseTo(3000, 9);
  expect(drop(part, 2e-4)).toBeCloseTo(8000, 9);
  expect(drop(part, 1e-4, "middle", thin)).toBeCloseTo(2000, 9);
});

test("filter({ test }) does not care which point comes first", () => {
  const test = { density: 875, dynamicViscosity: 0.0035 };
  const turned = filter({ test: { ...test, points: [points[1], points[0]] } });
  expect(turned).toEqual(filter({ test: { ...test, points } }));
});

test("filter({ test }) refuses a drop that lags behind the flow: its quadratic term would be negative", () => {
  const lagging = [points[0], { drop: 5000, flow: 2e-4 }] as const;
  expect(() => filter({ test: { points: lagging, density: 875, dynamicViscosity: 0.0035 } })).toThrow(
    /^filter requires test\.points to be a drop that grows at least in step with flow \(quadratic term\), got -/,
  );
});

test("filter({ test }) refuses a drop that outruns the flow squared: its linear term would be negative", () => {
  const running = [points[0], { drop: 13000, flow: 2e-4 }] as const;
  expect(() => filter({ test: { points: running, density: 875, dynamicViscosity: 0.0035 } })).toThrow(
    /^filter requires test\.points to be a drop that grows less than with flow squared \(linear term\), got -/,
  );
});

test("filter({ test }) takes a test that is linear, or quadratic, but for rounding", () => {
  const test = { density: 875, dynamicViscosity: 0.0035 };
  const linear = filter({ test: { ...test, points: [points[0], { drop: 3000 * 3, flow: 1e-4 * 3 }] } });
  expect(linear.medium.quadratic).toBeLessThan(1e-9);
  const quadratic = filter({ test: { ...test, points: [points[0], { drop: 3000 * 9, flow: 1e-4 * 3 }] } });
  expect(quadratic.medium.linear.middle * 0.0035 * 1e-4).toBeLessThan(1e-9);
});

test("filter({ media }) costs viscosity thickness flow over permeability and area, and Forchheimer's term", () => {
  // 0.0035 x 6e-4 / (2e-13 x 0.5) x 1e-4; 875 x 1e8 x 6e-4 / 0.5^2 x 1e-8
  expect(drop(filter({ media: sheet }), 1e-4)).toBeCloseTo(2100, 9);
  expect(drop(filter({ media: { ...sheet, inertia: 1e8 } }), 1e-4)).toBeCloseTo(2102.1, 9);
});

test("filter({ airTest }) takes permeability over thickness from the air that passed", () => {
  // 1.81e-5 x 1e-3 / (2e-3 x 200) = 4.525e-8 m; 0.0035 / (4.525e-8 x 0.5) x 1e-4
  const airTest = { flow: 1e-3, sampleArea: 2e-3, pressure: 200, area: 0.5 };
  expect(drop(filter({ airTest }), 1e-4)).toBeCloseTo(15.469613259668508, 12);
});

test("filter({ fibre }) spans the published laws, with their geometric mean between", () => {
  const fibre = { diameter: 2e-5, solidity: 0.1, area: 0.5, thickness: 6e-4 };
  const laws = Object.values(fibreLaws).map((law) => (0.0035 * 6e-4 * 1e-4) / (law(0.1) * 1e-10 * 0.5));
  const [low, middle, high] = (["low", "middle", "high"] as const).map((end) => drop(filter({ fibre }), 1e-4, end));
  expect((low ?? 0) / Math.min(...laws)).toBeCloseTo(1, 13);
  expect((high ?? 0) / Math.max(...laws)).toBeCloseTo(1, 13);
  expect((middle ?? 0) / Math.sqrt((low ?? 0) * (high ?? 0))).toBeCloseTo(1, 13);
});

test("filter({ rating }) spans pores of once to twice the size, to four times when nominal", () => {
  // 32 T^2 t / (porosity D^2 A): D 20 um, 0.95, T 1 below; D 10 um, 0.6, T 1.5 above
  const rating = { size: 1e-5, area: 0.5, thickness: 6e-4 };
  const dropOf = (kind: "nominal" | "beta 75", end: BandEnd) =>
    drop(filter({ rating: { ...rating, kind } }), 1e-4, end);
  expect(dropOf("beta 75", "low")).toBeCloseTo(35.36842105263158, 10);
  expect(dropOf("beta 75", "middle")).toBeCloseTo(133.512861592156, 10);
  expect(dropOf("beta 75", "high")).toBeCloseTo(504, 10);
  expect(dropOf("nominal", "low")).toBeCloseTo(8.84210526315789, 10);
});

test("filter({ housing, pleats }) adds a constant K on the port and the resistance of the folds", () => {
  // 2 x 875/2 (1e-4/(pi/4 x 0.012^2))^2 = 684.0743; 12 x 0.02^2/((5e-4)^3 x 0.5) x 0.0035 x 1e-4 = 26.88
  const pleats = { depth: 0.02, gap: 5e-4, area: 0.5 };
  const bare = drop(filter({ media: sheet }), 1e-4);
  const port = 875 * (1e-4 / ((Math.PI / 4) * 0.012 ** 2)) ** 2;
  expect(drop(filter({ media: sheet, housing: { k: 2, port: 0.012 } }), 1e-4) - bare).toBeCloseTo(port, 9);
  expect(drop(filter({ media: sheet, pleats }), 1e-4) - bare).toBeCloseTo(26.88, 9);
});

test("filter({ restriction: 3 }) triples the medium's linear term and leaves body, folds and inertia alone", () => {
  const given = {
    media: { ...sheet, inertia: 1e8 },
    housing: { k: 2, port: 0.012 },
    pleats: { depth: 0.02, gap: 5e-4, area: 0.5 },
  };
  const more = drop(filter({ ...given, restriction: 3 }), 1e-4) - drop(filter(given), 1e-4);
  expect(more).toBeCloseTo(2 * 2100, 9);
});

test("filter({ reversed: true }) costs what it costs the right way round", () => {
  expect(drop(filter({ clean, reversed: true }), 5e-5)).toBe(drop(filter({ clean }), 5e-5));
});

test("filter({ blocked: true }) and filter({ restriction: Infinity }) let nothing pass", () => {
  for (const part of [filter({ clean, blocked: true }), filter({ clean, restriction: Infinity })]) {
    const { drop: dropAt, flow, shut } = solve(part, diesel);
    expect([dropAt(1e-9), flow(1e9), shut]).toEqual([Infinity, 0, true]);
  }
});

test("filter({ housing }) keeps its own figures when the caller's object changes later", () => {
  const housing = { k: 2, port: 0.01 };
  const part = filter({ clean, housing });
  housing.k = 100;
  expect(part.housing).toEqual({ k: 2, port: 0.01 });
});
