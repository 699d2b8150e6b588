import { type DensityLaw, densityAt, type ProductGroup } from "@thirstline/core";
import * as formulas from "../formulas/density.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, inWords, renamed, searched, worked } from "../worked.js";
import { fuelSource } from "./fuelSources.js";
import { knownTemperature, temperature } from "./temperature.js";

const TABLE = "API Standard 2540 / ASTM D1250-80, table 54B; from memory";
const REFERENCE = 288.15;

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

function correctedBy(
  scene: Scene,
  law: Extract<DensityLaw, { kind: "volume correction" }>,
  T: Step,
  more: { readonly name: string; readonly value: number },
): Step {
  const rho = densityOf15(scene, law.densityAt15);
  return worked(
    formulas.correctedDensity,
    {
      rho_15: rho,
      a: expansionOf(law.group ?? groupOf(law.densityAt15), rho),
      T,
      T_15: knownTemperature("definition", "15 °C", REFERENCE),
    },
    more,
  );
}

/** A measured density is carried to 15 degC first: the density there that the table turns into the measured one. */
function densityOf15(scene: Scene, value: number): Step {
  const [point] = scene.system.fuel.measured?.density ?? [];
  const plain = { name: "density at 15 °C", value, unit: "kg/m3", kind: "density" } as const;
  if (point === undefined) return fromSource(fuelSource(scene, "density"), plain);
  if (Math.abs(point.temperature - REFERENCE) < 1e-9) return fromFile("fuel.density", plain);
  const itself = inWords("as found", plain);
  const carried = worked(
    formulas.correctedDensity,
    {
      rho_15: itself,
      a: expansionOf(groupOf(value), itself),
      T: fromFile("fuel.density", {
        name: "temperature it was measured at",
        value: point.temperature,
        unit: "K",
        kind: "temperature",
      }),
      T_15: knownTemperature("definition", "15 °C", REFERENCE),
    },
    { name: "density at the measured temperature" },
  );
  const right = fromFile("fuel.density", {
    name: "measured density",
    value: point.density,
    unit: "kg/m3",
    kind: "density",
  });
  const words = "carried to the temperature it was measured at, it is the measured density";
  return searched("found by putting the correction in again until it no longer moves", plain, [
    { words, left: carried, relation: "=", right },
  ]);
}

/** Constants of the groups as printed. */
const constants: Readonly<Record<Exclude<ProductGroup, "transition">, readonly [number, number]>> = {
  "fuel oil": [186.9696, 0.4862],
  "jet fuel": [594.5418, 0],
  petrol: [346.4228, 0.4388],
  crude: [613.9723, 0],
};

function expansionOf(group: ProductGroup, rho_15: Step): Step {
  const constant = (name: string, value: number, unit: string) => fromSource(TABLE, { name, value, unit });
  if (group === "transition") {
    return worked(formulas.transitionExpansion, {
      A: constant("constant of the group", -0.00336312, "1/K"),
      K_0: constant("constant over density squared", 2680.3206, "kg2/(m6 K)"),
      rho_15,
    });
  }
  const [first, second] = constants[group];
  return worked(formulas.expansion, {
    K_0: constant(`first constant of the group "${group}"`, first, "kg2/(m6 K)"),
    K_1: constant(`second constant of the group "${group}"`, second, "kg/(m3 K)"),
    rho_15,
  });
}

/** Density breaks of the table, kg/m3 at 15 degC. */
function groupOf(density: number): ProductGroup {
  if (density >= 839) return "fuel oil";
  if (density >= 788) return "jet fuel";
  return density >= 770.5 ? "transition" : "petrol";
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
