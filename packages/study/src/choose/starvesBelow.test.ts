import { fuelState } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { elementOf, litresAnHour, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import { starvesBelow } from "./starvesBelow.js";

const HEAD = 9.80665;
const { viscosity: _, ...measured } = plainSystem.fuel.measured ?? {};
const points = [
  { temperature: 258.15, kinematicViscosity: 12e-6 },
  { temperature: 293.15, kinematicViscosity: 2.5e-6 },
];
/** Fuel that thickens as two measured points say, through an element of this drop, Pa, at 3 mm2/s. */
const machine = (drop: number): System => ({
  ...plainSystem,
  fuel: { ...plainSystem.fuel, measured: { ...measured, viscosity: points } } as System["fuel"],
  suction: [...plainSystem.suction.slice(0, 1), elementOf("own", { drop }).filter],
});

/** Vacuum at a temperature: what the metre and an element whose drop grows with viscosity come to. */
function vacuumAt(system: System, drop: number, temperature: number): number {
  const { density, kinematicViscosity } = fuelState(build(system).fuel, { temperature });
  return density * HEAD + (drop * density * kinematicViscosity) / (830 * 3e-6);
}

test.each([6e3, 9e3])(
  "starvesBelow(system, warmest) is where metre and element come to the limit at change, %d Pa when warm",
  (drop) => {
    const system = machine(drop);
    const found = starvesBelow(system, WARM);
    expect(found.code).toBe("below");
    expect(vacuumAt(system, drop, found.temperature)).toBeLessThanOrEqual(30e3);
    expect(vacuumAt(system, drop, found.temperature - 0.006)).toBeGreaterThan(30e3);
  },
);

test("starvesBelow(system, warmest) is always where even the warmest fuel does not come through", () => {
  expect(starvesBelow(machine(40e3), WARM)).toEqual({ code: "always", temperature: WARM });
});

test("starvesBelow(system, warmest) ends at the cloud point where it does not starve down to it", () => {
  const found = starvesBelow(machine(10), WARM);
  expect(found.code).toBe("not above");
  expect(found.temperature).toBeGreaterThanOrEqual(253.15);
  expect(found.temperature).toBeLessThan(253.156);
  const heron = starvesBelow(demoSystem("heron"), WARM);
  expect(heron).toMatchObject({ code: "not above", temperature: expect.closeTo(257.15, 1) });
});

test("starvesBelow(system, warmest) ends where no data back a fuel that has no cloud point", () => {
  const petrol: System = {
    ...plainSystem,
    fuel: { kind: "petrol", class: "EN 228 A", ethanol: 0 },
    demand: { burn: 1 * litresAnHour, return: 0 },
    suction: [elementOf("own", { drop: 100 }).filter],
  };
  const found = starvesBelow(petrol, WARM);
  expect(found.code).toBe("not above");
  const isBacked = (temperature: number) =>
    fuelState(build(petrol).fuel, { temperature }).cautions.every(({ code }) => code !== "below range");
  expect(isBacked(found.temperature)).toBe(true);
  expect(found.temperature === 213.15 || !isBacked(found.temperature - 0.006)).toBe(true);
});
