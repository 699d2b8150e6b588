import { blend, type Fuel, fuelState, fuels } from "@thirstline/core";
import { expect, test } from "vitest";
import { bench } from "../../../../../tests/properties/working/benches.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { type Scene, sceneOf } from "../scene/Scene.js";
import { fuelDensity } from "./density.js";
import { fuelSource } from "./fuelSources.js";
import { vapourPressure } from "./vapour.js";
import { fuelViscosity } from "./viscosity.js";

// What core's laws of fuel allow and no system file can ask for, so that a fuel added to core is told from the first day.

/** A scene that burns another fuel. */
function burning(fuel: Fuel): Scene {
  const scene = sceneOf(bench({}), {});
  const own = { built: { ...scene.built, fuel }, fuel: fuelState(fuel, { temperature: scene.temperature }) };
  return Object.create(scene, {
    built: { value: own.built },
    fuel: { value: own.fuel },
    temperature: { value: scene.temperature },
  }) as Scene;
}

const inputsOf = ({ origin }: Step) =>
  origin.by === "formula" ? origin.inputs.map(({ letter, steps }) => [letter, steps.map(({ value }) => value)]) : [];

test("vapourPressure(scene) of petrol in diesel is the higher of both, each by its own law", () => {
  const fuel = blend([
    { fuel: fuels.petrol, share: 0.5 },
    { fuel: fuels.dieselWinter, share: 0.5 },
  ]);
  const scene = burning(fuel);
  const step = vapourPressure(scene);
  expect(step.origin).toMatchObject({ by: "formula", formula: { id: "vapour-highest" } });
  const [[letter, both] = []] = inputsOf(step) as [string, number[]][];
  expect(letter).toBe("p");
  expect(both).toHaveLength(2);
  expect(step.value).toBe(Math.max(...(both ?? [])));
  expect(proofOf({ step }).misses).toEqual([]);
});

test("fuelViscosity(scene) by the two constants of a line is told with the fuel's sources, and comes out", () => {
  // Through 4 mm2/s at 20 °C and 2.5 at 40 °C, near enough: log log (ν + 0.7) = a - b log T.
  const z = (nu: number) => Math.log10(Math.log10(nu + 0.7));
  const b = (z(4) - z(2.5)) / Math.log10(313.15 / 293.15);
  const a = z(4) + b * Math.log10(293.15);
  const scene = burning({ ...fuels.dieselWinter, viscosity: { kind: "D341", a, b }, sources: ["viscosity: a sheet"] });
  const step = fuelViscosity(scene);
  expect(proofOf({ step })).toMatchObject({ misses: [], checks: 1 });
  const check = step.origin.by === "search" ? step.origin.checks[0] : undefined;
  const line = check?.right.origin.by === "formula" ? check.right.origin.inputs : [];
  const told = line.slice(0, 2).map(({ letter, steps: [own] }) => [letter, own?.name, own?.value, own?.origin]);
  const origin = { by: "source", source: "viscosity: a sheet" };
  expect(told).toEqual([
    ["a", "start of the viscosity line", a, origin],
    ["b", "slope of the viscosity line", b, origin],
  ]);
});

test("fuelDensity(scene) of a mixture names each part's share and its densities, in order", () => {
  const fuel = blend([
    { fuel: fuels.petrol, share: 0.25 },
    { fuel: fuels.dieselWinter, share: 0.75 },
  ]);
  const step = fuelDensity(burning(fuel));
  expect(inputsOf(step).slice(0, 2)).toEqual([
    ["x", [0.25, 0.75]],
    ["rho_15", [745, 830]],
  ]);
  expect(proofOf({ step }).misses).toEqual([]);
});

test.each([
  [["density: A", "viscosity and DENSITY: B", "colour: C"], "density: A; viscosity and DENSITY: B"],
  [["colour: C", "smell: D"], "colour: C; smell: D"],
  [[], "common practice, no source"],
])("fuelSource of sources %j is %j for density", (sources, said) => {
  expect(fuelSource(burning({ ...fuels.dieselWinter, sources }), "density")).toBe(said);
});
