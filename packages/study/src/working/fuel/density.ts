import { type DensityLaw, densityAt } from "@thirstline/core";
import * as formulas from "../formulas/density.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, renamed, worked } from "../worked.js";
import { fuelSource } from "./fuelSources.js";
import { knownTemperature, temperature } from "./temperature.js";
import { correctedBy, REFERENCE } from "./volumeCorrection.js";

/** Density of the fuel at its temperature. */
export function fuelDensity(scene: Scene): Step {
  return scene.step("density", () => {
    const step = densityBy(scene, scene.built.fuel.density, temperature(scene), "density of the fuel");
    return { ...step, name: "fuel density", value: scene.fuel.density };
  });
}

/** Density at 15 degC, to which tables refer. */
export function densityAt15(scene: Scene): Step {
  return scene.step("density at 15", () => {
    const at = knownTemperature("definition", "15 °C", REFERENCE);
    return renamed(densityBy(scene, scene.built.fuel.density, at, "fuel"), "density at 15 °C");
  });
}

function densityBy(scene: Scene, law: DensityLaw, T: Step, name: string): Step {
  const value = densityAt(law, T.value);
  switch (law.kind) {
    case "volume correction":
      return correctedBy(scene, law, T, { name, value });
    case "linear":
      return worked(
        formulas.linearDensity,
        {
          rho_1: published(scene, "density at a known temperature", law.density, "kg/m3"),
          s: published(scene, "slope of density over temperature", law.slope, "kg/(m3 K)"),
          T,
          T_1: knownTemperature(fuelSource(scene, "density"), "the known temperature", law.temperature),
        },
        { name, value },
      );
    case "points":
      return betweenPoints(scene, law.points, T, { name, value });
    case "mixed": {
      const at15 = knownTemperature("definition", "15 °C", REFERENCE);
      return worked(
        formulas.mixedDensity,
        {
          x: law.parts.map(({ share }, at) => shareOf(share, at)),
          rho_15: law.parts.map((part, at) => densityBy(scene, part.law, at15, `density at 15 °C of part ${at + 1}`)),
          rho: law.parts.map((part, at) => densityBy(scene, part.law, T, `density of part ${at + 1}`)),
        },
        { name, value },
      );
    }
  }
}

/** Share of a part in the blend the file asks for. */
export function shareOf(share: number, at: number): Step {
  return fromFile("fuel", { name: `share of part ${at + 1} of the blend`, value: share, unit: "1", kind: "ratio" });
}

function betweenPoints(
  scene: Scene,
  given: Extract<DensityLaw, { kind: "points" }>["points"],
  T: Step,
  more: { readonly name: string; readonly value: number },
): Step {
  const points = given.map((point, at) => ({ ...point, at })).sort((a, b) => a.temperature - b.temperature);
  const warmer = points.findIndex((point, at) => at > 0 && point.temperature >= T.value);
  const upper = warmer === -1 ? points.length - 1 : warmer;
  const [from, to] = [points[upper - 1], points[upper]] as [(typeof points)[number], (typeof points)[number]];
  const read = ({ at, density }: (typeof points)[number], name: string) => point(scene, at, name, density, "kg/m3");
  const heat = ({ at, temperature: own }: (typeof points)[number], name: string) => point(scene, at, name, own, "K");
  return worked(
    formulas.densityBetween,
    {
      rho_1: read(from, "density at the colder point"),
      T,
      T_1: heat(from, "temperature of the colder point"),
      T_2: heat(to, "temperature of the warmer point"),
      rho_2: read(to, "density at the warmer point"),
    },
    more,
  );
}

function point(scene: Scene, at: number, name: string, value: number, unit: string): Step {
  const kind = unit === "K" ? "temperature" : "density";
  const plain = { name, value, unit, kind } as const;
  return scene.system.fuel.measured?.density
    ? fromFile(`fuel.density[${at}]`, plain)
    : fromSource(fuelSource(scene, "density"), plain);
}

function published(scene: Scene, name: string, value: number, unit: string): Step {
  return fromSource(fuelSource(scene, "density"), { name, value, unit });
}
