import { fuelState, solve, valve } from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 4e-6 });

test("valve({ opening, kv }) costs its opening pressure and 1 bar at Kv, as its density is to water's", () => {
  // 0.36 m3/h through Kv 1.2 m3/h: 2000 + 1e5 x 0.83 x (0.36/1.2)^2
  const { drop } = solve(valve({ opening: 2000, kv: 1.2 / 3600 }), diesel);
  expect(drop(1e-4)).toBeCloseTo(9470, 9);
});

test("valve({ kv }) passes nothing backward and nothing below its opening pressure", () => {
  const { drop, flow } = solve(valve({ opening: 2000, kv: 1.2 / 3600 }), diesel);
  expect(drop(-1e-9)).toBe(-Infinity);
  expect([flow(-1e5), flow(0), flow(2000)]).toEqual([0, 0, 0]);
  expect(flow(2000.001)).toBeGreaterThan(0);
});

test("valve({ oneWay: false }) costs four times the drop at twice the flow, either way", () => {
  const { drop } = solve(valve({ kv: 1.2 / 3600, oneWay: false }), diesel);
  expect(drop(2e-4) / drop(1e-4)).toBeCloseTo(4, 14);
  expect(drop(-1e-4)).toBe(-drop(1e-4));
});

test.each([
  [{ kv: 0 }, "valve requires kv to be more than 0 m3/s, got 0"],
  [{ kv: Number.NaN }, "valve requires kv to be more than 0 m3/s, got NaN"],
  [{ kv: 1, opening: -1 }, "valve requires opening to be at least 0 Pa, got -1"],
  [{ kv: 1, opening: 10, oneWay: false }, "valve requires opening to be 0 Pa in a two-way valve, got 10"],
])("valve(%j) is refused", (given, message) => {
  expect(() => valve(given)).toThrow(message);
});
