import { filter, fuelState, line, orifice, parallel, rise, series, solve, valve } from "@thirstline/core";
import { expect, test } from "vitest";

const petrol = fuelState({ density: 750, kinematicViscosity: 6e-7 });
const hose = line({ length: 1, bore: 0.008, roughness: 0 });

test("solve(line, petrol).drop(3e-6) is the example, and flow undoes it", () => {
  const { drop, flow } = solve(hose, petrol);
  expect(drop(3e-6) / 13.428698323378669).toBeCloseTo(1, 14);
  expect(flow(13.428698323378669) / 3e-6).toBeCloseTo(1, 14);
});

test("solve(circuit, fuel).flow(p) is 0 at the head alone, and runs back below it", () => {
  const { drop, flow } = solve(series(hose, rise({ height: 1 })), petrol);
  expect(flow(drop(0))).toBe(0);
  expect(flow(drop(0) - 100)).toBeLessThan(0);
});

test("solve(rise, fuel).flow(p) of a path that does not resist is boundless, but for its own head", () => {
  const { drop, flow } = solve(rise({ height: 1 }), petrol);
  expect([flow(drop(0)), flow(drop(0) + 1), flow(drop(0) - 1)]).toEqual([0, Infinity, -Infinity]);
});

test("solve(circuit, fuel).profile(q) tells of each part its place, flow, drop, Reynolds number, regime and velocity", () => {
  const path = series(hose, parallel(orifice({ diameter: 0.002, dischargeCoefficient: 0.6 }), series(hose)));
  const [first, bank] = solve(path, petrol).profile(3e-6);
  // Re = 4 Q / (pi D nu), v = Q / (pi/4 D^2)
  expect(first).toMatchObject({ kind: "part", path: [0], flow: 3e-6, regime: "laminar" });
  expect(first?.kind === "part" ? first.reynolds : 0).toBeCloseTo(795.7747, 4);
  expect(first?.kind === "part" ? first.velocity : 0).toBeCloseTo(0.0596831, 7);
  const branches = bank?.kind === "bank" ? bank.branches.flat() : [];
  expect(branches.map((entry) => entry.path)).toEqual([
    [1, 0],
    [1, 1, 0],
  ]);
  expect(branches.map((entry) => (entry.kind === "part" ? entry.regime : ""))).toEqual([null, "laminar"]);
});

test("solve(check valve, fuel).profile(0) gives no drop to a valve that holds back", () => {
  const [entry] = solve(valve({ opening: 500, kv: 1e-4 }), petrol).profile(0);
  expect(entry?.drop).toBeNull();
});

test("solve(shut, fuel) says so: drop Infinity, flow 0, no drop in the profile", () => {
  const { drop, flow, profile, shut } = solve(
    series(hose, filter({ clean: { drop: 1, flow: 1, dynamicViscosity: 1 }, blocked: true })),
    petrol,
  );
  expect([drop(1e-9), drop(-1e-9), flow(1e9), shut]).toEqual([Infinity, -Infinity, 0, true]);
  expect(profile(1e-6)[1]?.drop).toBeNull();
});

test.each([Number.NaN, Infinity, -Infinity])("solve(circuit, fuel) refuses a flow or drop of %d", (value) => {
  const { drop, flow, profile } = solve(hose, petrol);
  expect(() => drop(value)).toThrow(`drop requires flow to be a finite number of m3/s, got ${value}`);
  expect(() => flow(value)).toThrow(`flow requires drop to be a finite number of Pa, got ${value}`);
  expect(() => profile(value)).toThrow(`profile requires flow to be a finite number of m3/s, got ${value}`);
});

test("solve(circuit, fuel, options) refuses a passage or an end that is none of its words", () => {
  // As plain JavaScript may hand them over.
  const given = (options: object) => () => solve(hose, petrol, options);
  expect(given({ passage: "late" })).toThrow('solve requires passage to be one of smooth, early, got "late"');
  expect(given({ end: "good" })).toThrow('solve requires end to be one of low, middle, high, got "good"');
});
