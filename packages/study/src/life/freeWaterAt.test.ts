import { freeWater, fuelState, typicalHydrocarbons, waterSolubility } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { freeWaterAt } from "./freeWaterAt.js";

const ICE = 273.15;
const WATER = 0.3; // kg/m3, more than any of these dissolves
const wet = (name: string, fuel: object = {}): System => {
  const system = demoSystem(name);
  return {
    ...system,
    fuel: { ...system.fuel, ...fuel } as System["fuel"],
    deliveredFuel: { ...system.deliveredFuel, water: WATER } as NonNullable<System["deliveredFuel"]>,
  };
};
const state = fuelState(build(demoSystem("heron")).fuel, { temperature: ICE + 15 });
const at = (system: System, temperature = ICE + 15) => freeWaterAt(system, state, temperature);
const dissolvedIn = (kind: keyof typeof typicalHydrocarbons, temperature: number) =>
  freeWater({
    total: WATER,
    solubility: waterSolubility({ ...typicalHydrocarbons[kind], temperature }),
    density: state.density,
  });

test("freeWaterAt(diesel) is what is over what light diesel dissolves", () => {
  expect(at(wet("heron"))).toEqual(dissolvedIn("light diesel", ICE + 15));
});

test.each([
  ["paraffinic", "light diesel"],
  ["kerosene", "light diesel"],
  ["petrol", "petrol"],
  ["premix", "petrol"],
] as const)("freeWaterAt(%s) takes the make-up of %s", (kind, like) => {
  const expected = dissolvedIn(like, ICE + 15);
  expect(at(wet("heron", { kind, ethanol: 0 }))).toEqual(expected);
  expect(at(wet("heron", { kind: "measured", like: kind, ethanol: 0 }))).toEqual(expected);
});

test("freeWaterAt(fuel that takes up far more) tells no dissolved water and counts all of it", () => {
  const unknown = { dissolved: null, free: WATER };
  expect(at(wet("heron", { kind: "biodiesel" }))).toEqual(unknown);
  expect(at(wet("heron", { kind: "petrol", ethanol: 0.1 }))).toEqual(unknown);
  expect(at(wet("heron", { kind: "premix", ethanol: 0.05 }))).toEqual(unknown);
});

test("freeWaterAt(system, fuel, temperature) tells no dissolved water outside 233 to 373 K", () => {
  for (const known of [233, 373]) expect(at(wet("heron"), known)).toEqual(dissolvedIn("light diesel", known));
  for (const outside of [232.9, 373.1]) expect(at(wet("heron"), outside)).toEqual({ dissolved: null, free: WATER });
});

test("freeWaterAt(system without stated water) is none", () => {
  const { deliveredFuel: _, ...dry } = demoSystem("heron");
  expect(at(dry as System).free).toBe(0);
});
