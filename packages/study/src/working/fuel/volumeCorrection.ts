import type { DensityLaw, ProductGroup } from "@thirstline/core";
import * as formulas from "../formulas/density.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, inWords, searched, worked } from "../worked.js";
import { fuelSource } from "./fuelSources.js";
import { knownTemperature } from "./temperature.js";

const TABLE = "API Standard 2540 / ASTM D1250-80, table 54B; from memory";
/** 15 degC, to which the table refers, K. */
export const REFERENCE = 288.15;

/** Density carried from 15 degC to a temperature by the table. */
export function correctedBy(
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
