import { type ViscosityLaw, viscosityAt } from "@thirstline/core";
import { dynamicViscosity } from "../formulas/flow.js";
import * as formulas from "../formulas/viscosity.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, searched, worked } from "../worked.js";
import { fuelDensity, shareOf } from "./density.js";
import { fuelSource } from "./fuelSources.js";
import { knownTemperature, oneKelvin, temperature } from "./temperature.js";

type Points = Extract<ViscosityLaw, { kind: "points" }>;

/** One mm2/s, in which ASTM D341 counts. */
const unit = fromSource("definition", { name: "one mm²/s", value: 1e-6, unit: "m2/s", kind: "viscosity" });

/** Kinematic viscosity of the fuel at its temperature. */
export function fuelViscosity(scene: Scene): Step {
  return scene.step("viscosity", () => ({
    ...viscosityBy(scene, scene.built.fuel.viscosity, "viscosity of the fuel"),
    name: "fuel viscosity",
    value: scene.fuel.kinematicViscosity,
  }));
}

/** Dynamic viscosity of the fuel. */
export function fuelDynamicViscosity(scene: Scene): Step {
  return scene.step("dynamic viscosity", () =>
    worked(dynamicViscosity, { rho: fuelDensity(scene), nu: fuelViscosity(scene) }),
  );
}

function viscosityBy(scene: Scene, law: ViscosityLaw, name: string): Step {
  const value = viscosityAt(law, scene.temperature);
  if (law.kind === "mixed") {
    return worked(
      formulas.grunbergNissan,
      {
        nu_1: unit,
        x: law.parts.map(({ share }, at) => shareOf(share, at)),
        nu: law.parts.map((part, at) => viscosityBy(scene, part.law, `viscosity of part ${at + 1}`)),
      },
      { name, value },
    );
  }
  const line = law.kind === "points" ? lineOf(scene, law) : publishedLine(scene, law);
  const z = worked(
    formulas.d341Line,
    { ...line, T: temperature(scene), T_0: oneKelvin },
    { name: "number Z at the temperature" },
  );
  const plain = { name, value, unit: "m2/s", kind: "viscosity" } as const;
  const itself = searchedFor(plain);
  return searched("the viscosity whose number Z that is, found by Newton's method in a bracket", plain, [
    {
      words: "put back into ASTM D341, the viscosity has that number Z",
      left: worked(formulas.d341Z, { nu: itself, nu_1: unit }, { name: "number Z of the viscosity" }),
      relation: "=",
      right: z,
    },
  ]);
}

/** The figure that a search found, as it is put back into what it must satisfy. */
function searchedFor(plain: { readonly name: string; readonly value: number; readonly unit: string }): Step {
  return { ...plain, kind: "viscosity", origin: { by: "words", words: "as found", from: [] } };
}

function publishedLine(scene: Scene, { a, b }: { readonly a: number; readonly b: number }) {
  const constant = (name: string, value: number) =>
    fromSource(fuelSource(scene, "viscosity"), { name, value, unit: "1", kind: "plain" });
  return { a: constant("start of the viscosity line", a), b: constant("slope of the viscosity line", b) };
}

interface Placed {
  readonly temperature: number;
  readonly kinematicViscosity: number;
  readonly at: number;
}

function lineOf(scene: Scene, { points: given, slope }: Points): { readonly a: Step; readonly b: Step } {
  const points = given
    .map((point, at): Placed => ({ ...point, at }))
    .sort((one, two) => one.temperature - two.temperature);
  const warmer = points.findIndex((point, at) => at > 0 && point.temperature >= scene.temperature);
  const upper = warmer === -1 ? points.length - 1 : warmer;
  const to = points[upper] as Placed;
  const from = points[upper - 1] ?? to;
  const first = zOf(scene, from);
  const b =
    points.length === 1
      ? fromSource(`the slope of ${scene.built.fuel.name} about that point, within 10 K of it`, {
          name: "slope of the viscosity line",
          value: slope ?? Number.NaN,
          unit: "1",
          kind: "plain",
        })
      : slopeBetween(scene, from, to);
  const a = worked(formulas.d341Start, { Z_1: first, b, T_1: heatOf(scene, from), T_0: oneKelvin });
  return { a, b };
}

function slopeBetween(scene: Scene, from: Placed, to: Placed): Step {
  return worked(formulas.d341Slope, {
    Z_1: zOf(scene, from),
    Z_2: zOf(scene, to),
    T_2: heatOf(scene, to),
    T_1: heatOf(scene, from),
  });
}

function zOf(scene: Scene, { at, kinematicViscosity }: Placed): Step {
  const plain = { name: "viscosity of the point", value: kinematicViscosity, unit: "m2/s", kind: "viscosity" } as const;
  const nu = isMeasured(scene)
    ? fromFile(pointPlace(scene, at), plain)
    : fromSource(fuelSource(scene, "viscosity"), plain);
  return worked(formulas.d341Z, { nu, nu_1: unit }, { name: "number Z of the point" });
}

function heatOf(scene: Scene, { at, temperature: value }: Placed): Step {
  const name = "temperature of the point";
  return isMeasured(scene)
    ? fromFile(pointPlace(scene, at), { name, value, unit: "K", kind: "temperature" })
    : knownTemperature(fuelSource(scene, "viscosity"), name, value);
}

function isMeasured({ system }: Scene): boolean {
  return system.fuel.measured?.viscosity !== undefined;
}

/** One point is written without a list. */
function pointPlace({ system }: Scene, at: number): string {
  return (system.fuel.measured?.viscosity?.length ?? 0) > 1 ? `fuel.viscosity[${at}]` : "fuel.viscosity";
}
