import { fuelState, SupplyModel, series, tank } from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6 });

/** Vacuum at the pick-up of a tank, Pa. */
function vacuumOf(one: ReturnType<typeof tank>): number {
  const supply = {
    ambientPressure: 101325,
    tanks: [one],
    suction: series(),
    pump: { kind: "none" },
    delivery: null,
  } as const;
  return new SupplyModel(supply, { fuel: diesel, passage: "smooth", end: "middle" }).vacuum(0);
}

test("tank({ depth: 0.2 }) is open to the air and has no path of its own", () => {
  expect(tank({ depth: 0.2 })).toStrictEqual({ depth: 0.2, vent: { kind: "open" }, path: null });
  expect(tank({ depth: 0.2, name: "port tank" }).name).toBe("port tank");
});

test("tank({ depth }) helps by the head of its fuel, and a vent that cracks at a vacuum takes that away", () => {
  // 830 x 9.80665 x 0.2 = 1627.9039
  expect(vacuumOf(tank({ depth: 0.2 }))).toBeCloseTo(-1627.9039, 8);
  expect(vacuumOf(tank({ depth: 0.2, vent: { kind: "spring", opening: 2000 } }))).toBeCloseTo(2000 - 1627.9039, 8);
  expect(vacuumOf(tank({ depth: 0.2, vent: { kind: "blocked" } }))).toBe(Infinity);
});

test("tank refuses a depth below 0 and a vent that cracks below 0", () => {
  expect(() => tank({ depth: -0.1 })).toThrow("tank requires depth to be at least 0 m, got -0.1");
  expect(() => tank({ depth: 0, vent: { kind: "spring", opening: Number.NaN } })).toThrow(
    "tank requires vent.opening to be at least 0 Pa, got NaN",
  );
});
